/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.design.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.pollex.model.design.DesignPackage;
import org.pollex.model.design.Mark;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Mark</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.design.impl.MarkImpl#getId <em>Id</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.MarkImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.MarkImpl#isHidden <em>Hidden</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.MarkImpl#isLocked <em>Locked</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.MarkImpl#getX <em>X</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.MarkImpl#getY <em>Y</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.MarkImpl#getScale <em>Scale</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.MarkImpl#getTurn <em>Turn</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.MarkImpl#isMirror <em>Mirror</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.MarkImpl#isOverprint <em>Overprint</em>}</li>
 * </ul>
 *
 * @generated
 */
public abstract class MarkImpl extends MinimalEObjectImpl.Container implements Mark {
    /**
     * The default value of the '{@link #getId() <em>Id</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getId()
     * @generated
     * @ordered
     */
    protected static final String ID_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getId() <em>Id</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getId()
     * @generated
     * @ordered
     */
    protected String id = ID_EDEFAULT;

    /**
     * The default value of the '{@link #getName() <em>Name</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getName()
     * @generated
     * @ordered
     */
    protected static final String NAME_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getName() <em>Name</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getName()
     * @generated
     * @ordered
     */
    protected String name = NAME_EDEFAULT;

    /**
     * The default value of the '{@link #isHidden() <em>Hidden</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #isHidden()
     * @generated
     * @ordered
     */
    protected static final boolean HIDDEN_EDEFAULT = false;

    /**
     * The cached value of the '{@link #isHidden() <em>Hidden</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #isHidden()
     * @generated
     * @ordered
     */
    protected boolean hidden = HIDDEN_EDEFAULT;

    /**
     * The default value of the '{@link #isLocked() <em>Locked</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #isLocked()
     * @generated
     * @ordered
     */
    protected static final boolean LOCKED_EDEFAULT = false;

    /**
     * The cached value of the '{@link #isLocked() <em>Locked</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #isLocked()
     * @generated
     * @ordered
     */
    protected boolean locked = LOCKED_EDEFAULT;

    /**
     * The default value of the '{@link #getX() <em>X</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getX()
     * @generated
     * @ordered
     */
    protected static final double X_EDEFAULT = 0.0;

    /**
     * The cached value of the '{@link #getX() <em>X</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getX()
     * @generated
     * @ordered
     */
    protected double x = X_EDEFAULT;

    /**
     * The default value of the '{@link #getY() <em>Y</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getY()
     * @generated
     * @ordered
     */
    protected static final double Y_EDEFAULT = 0.0;

    /**
     * The cached value of the '{@link #getY() <em>Y</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getY()
     * @generated
     * @ordered
     */
    protected double y = Y_EDEFAULT;

    /**
     * The default value of the '{@link #getScale() <em>Scale</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getScale()
     * @generated
     * @ordered
     */
    protected static final double SCALE_EDEFAULT = 1.0;

    /**
     * The cached value of the '{@link #getScale() <em>Scale</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getScale()
     * @generated
     * @ordered
     */
    protected double scale = SCALE_EDEFAULT;

    /**
     * The default value of the '{@link #getTurn() <em>Turn</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getTurn()
     * @generated
     * @ordered
     */
    protected static final double TURN_EDEFAULT = 0.0;

    /**
     * The cached value of the '{@link #getTurn() <em>Turn</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getTurn()
     * @generated
     * @ordered
     */
    protected double turn = TURN_EDEFAULT;

    /**
     * The default value of the '{@link #isMirror() <em>Mirror</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #isMirror()
     * @generated
     * @ordered
     */
    protected static final boolean MIRROR_EDEFAULT = false;

    /**
     * The cached value of the '{@link #isMirror() <em>Mirror</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #isMirror()
     * @generated
     * @ordered
     */
    protected boolean mirror = MIRROR_EDEFAULT;

    /**
     * The default value of the '{@link #isOverprint() <em>Overprint</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #isOverprint()
     * @generated
     * @ordered
     */
    protected static final boolean OVERPRINT_EDEFAULT = false;

    /**
     * The cached value of the '{@link #isOverprint() <em>Overprint</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #isOverprint()
     * @generated
     * @ordered
     */
    protected boolean overprint = OVERPRINT_EDEFAULT;

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    protected MarkImpl() {
        super();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    protected EClass eStaticClass() {
        return DesignPackage.Literals.MARK;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getId() {
        return id;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setId(String newId) {
        String oldId = id;
        id = newId;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.MARK__ID, oldId, id));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getName() {
        return name;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setName(String newName) {
        String oldName = name;
        name = newName;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.MARK__NAME, oldName, name));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public boolean isHidden() {
        return hidden;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setHidden(boolean newHidden) {
        boolean oldHidden = hidden;
        hidden = newHidden;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.MARK__HIDDEN, oldHidden, hidden));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public boolean isLocked() {
        return locked;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setLocked(boolean newLocked) {
        boolean oldLocked = locked;
        locked = newLocked;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.MARK__LOCKED, oldLocked, locked));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getX() {
        return x;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setX(double newX) {
        double oldX = x;
        x = newX;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.MARK__X, oldX, x));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getY() {
        return y;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setY(double newY) {
        double oldY = y;
        y = newY;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.MARK__Y, oldY, y));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getScale() {
        return scale;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setScale(double newScale) {
        double oldScale = scale;
        scale = newScale;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.MARK__SCALE, oldScale, scale));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getTurn() {
        return turn;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setTurn(double newTurn) {
        double oldTurn = turn;
        turn = newTurn;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.MARK__TURN, oldTurn, turn));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public boolean isMirror() {
        return mirror;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setMirror(boolean newMirror) {
        boolean oldMirror = mirror;
        mirror = newMirror;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.MARK__MIRROR, oldMirror, mirror));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public boolean isOverprint() {
        return overprint;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setOverprint(boolean newOverprint) {
        boolean oldOverprint = overprint;
        overprint = newOverprint;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.MARK__OVERPRINT, oldOverprint, overprint));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Object eGet(int featureID, boolean resolve, boolean coreType) {
        switch (featureID) {
            case DesignPackage.MARK__ID:
                return getId();
            case DesignPackage.MARK__NAME:
                return getName();
            case DesignPackage.MARK__HIDDEN:
                return isHidden();
            case DesignPackage.MARK__LOCKED:
                return isLocked();
            case DesignPackage.MARK__X:
                return getX();
            case DesignPackage.MARK__Y:
                return getY();
            case DesignPackage.MARK__SCALE:
                return getScale();
            case DesignPackage.MARK__TURN:
                return getTurn();
            case DesignPackage.MARK__MIRROR:
                return isMirror();
            case DesignPackage.MARK__OVERPRINT:
                return isOverprint();
        }
        return super.eGet(featureID, resolve, coreType);
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void eSet(int featureID, Object newValue) {
        switch (featureID) {
            case DesignPackage.MARK__ID:
                setId((String)newValue);
                return;
            case DesignPackage.MARK__NAME:
                setName((String)newValue);
                return;
            case DesignPackage.MARK__HIDDEN:
                setHidden((Boolean)newValue);
                return;
            case DesignPackage.MARK__LOCKED:
                setLocked((Boolean)newValue);
                return;
            case DesignPackage.MARK__X:
                setX((Double)newValue);
                return;
            case DesignPackage.MARK__Y:
                setY((Double)newValue);
                return;
            case DesignPackage.MARK__SCALE:
                setScale((Double)newValue);
                return;
            case DesignPackage.MARK__TURN:
                setTurn((Double)newValue);
                return;
            case DesignPackage.MARK__MIRROR:
                setMirror((Boolean)newValue);
                return;
            case DesignPackage.MARK__OVERPRINT:
                setOverprint((Boolean)newValue);
                return;
        }
        super.eSet(featureID, newValue);
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void eUnset(int featureID) {
        switch (featureID) {
            case DesignPackage.MARK__ID:
                setId(ID_EDEFAULT);
                return;
            case DesignPackage.MARK__NAME:
                setName(NAME_EDEFAULT);
                return;
            case DesignPackage.MARK__HIDDEN:
                setHidden(HIDDEN_EDEFAULT);
                return;
            case DesignPackage.MARK__LOCKED:
                setLocked(LOCKED_EDEFAULT);
                return;
            case DesignPackage.MARK__X:
                setX(X_EDEFAULT);
                return;
            case DesignPackage.MARK__Y:
                setY(Y_EDEFAULT);
                return;
            case DesignPackage.MARK__SCALE:
                setScale(SCALE_EDEFAULT);
                return;
            case DesignPackage.MARK__TURN:
                setTurn(TURN_EDEFAULT);
                return;
            case DesignPackage.MARK__MIRROR:
                setMirror(MIRROR_EDEFAULT);
                return;
            case DesignPackage.MARK__OVERPRINT:
                setOverprint(OVERPRINT_EDEFAULT);
                return;
        }
        super.eUnset(featureID);
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public boolean eIsSet(int featureID) {
        switch (featureID) {
            case DesignPackage.MARK__ID:
                return ID_EDEFAULT == null ? id != null : !ID_EDEFAULT.equals(id);
            case DesignPackage.MARK__NAME:
                return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
            case DesignPackage.MARK__HIDDEN:
                return hidden != HIDDEN_EDEFAULT;
            case DesignPackage.MARK__LOCKED:
                return locked != LOCKED_EDEFAULT;
            case DesignPackage.MARK__X:
                return x != X_EDEFAULT;
            case DesignPackage.MARK__Y:
                return y != Y_EDEFAULT;
            case DesignPackage.MARK__SCALE:
                return scale != SCALE_EDEFAULT;
            case DesignPackage.MARK__TURN:
                return turn != TURN_EDEFAULT;
            case DesignPackage.MARK__MIRROR:
                return mirror != MIRROR_EDEFAULT;
            case DesignPackage.MARK__OVERPRINT:
                return overprint != OVERPRINT_EDEFAULT;
        }
        return super.eIsSet(featureID);
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String toString() {
        if (eIsProxy()) return super.toString();

        StringBuilder result = new StringBuilder(super.toString());
        result.append(" (id: ");
        result.append(id);
        result.append(", name: ");
        result.append(name);
        result.append(", hidden: ");
        result.append(hidden);
        result.append(", locked: ");
        result.append(locked);
        result.append(", x: ");
        result.append(x);
        result.append(", y: ");
        result.append(y);
        result.append(", scale: ");
        result.append(scale);
        result.append(", turn: ");
        result.append(turn);
        result.append(", mirror: ");
        result.append(mirror);
        result.append(", overprint: ");
        result.append(overprint);
        result.append(')');
        return result.toString();
    }

} //MarkImpl
