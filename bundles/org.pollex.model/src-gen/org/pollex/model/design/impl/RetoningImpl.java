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
import org.pollex.model.design.Retoning;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Retoning</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.design.impl.RetoningImpl#getMark <em>Mark</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.RetoningImpl#getSha256 <em>Sha256</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.RetoningImpl#getMade <em>Made</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.RetoningImpl#getChoices <em>Choices</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.RetoningImpl#getKeyline <em>Keyline</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.RetoningImpl#isGrow <em>Grow</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.RetoningImpl#isApart <em>Apart</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.RetoningImpl#getX <em>X</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.RetoningImpl#getY <em>Y</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.RetoningImpl#getScale <em>Scale</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.RetoningImpl#getTurn <em>Turn</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.RetoningImpl#isMirror <em>Mirror</em>}</li>
 * </ul>
 *
 * @generated
 */
public class RetoningImpl extends MinimalEObjectImpl.Container implements Retoning {
    /**
     * The default value of the '{@link #getMark() <em>Mark</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getMark()
     * @generated
     * @ordered
     */
    protected static final String MARK_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getMark() <em>Mark</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getMark()
     * @generated
     * @ordered
     */
    protected String mark = MARK_EDEFAULT;

    /**
     * The default value of the '{@link #getSha256() <em>Sha256</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getSha256()
     * @generated
     * @ordered
     */
    protected static final String SHA256_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getSha256() <em>Sha256</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getSha256()
     * @generated
     * @ordered
     */
    protected String sha256 = SHA256_EDEFAULT;

    /**
     * The default value of the '{@link #getMade() <em>Made</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getMade()
     * @generated
     * @ordered
     */
    protected static final String MADE_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getMade() <em>Made</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getMade()
     * @generated
     * @ordered
     */
    protected String made = MADE_EDEFAULT;

    /**
     * The default value of the '{@link #getChoices() <em>Choices</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getChoices()
     * @generated
     * @ordered
     */
    protected static final String CHOICES_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getChoices() <em>Choices</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getChoices()
     * @generated
     * @ordered
     */
    protected String choices = CHOICES_EDEFAULT;

    /**
     * The default value of the '{@link #getKeyline() <em>Keyline</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getKeyline()
     * @generated
     * @ordered
     */
    protected static final String KEYLINE_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getKeyline() <em>Keyline</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getKeyline()
     * @generated
     * @ordered
     */
    protected String keyline = KEYLINE_EDEFAULT;

    /**
     * The default value of the '{@link #isGrow() <em>Grow</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #isGrow()
     * @generated
     * @ordered
     */
    protected static final boolean GROW_EDEFAULT = false;

    /**
     * The cached value of the '{@link #isGrow() <em>Grow</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #isGrow()
     * @generated
     * @ordered
     */
    protected boolean grow = GROW_EDEFAULT;

    /**
     * The default value of the '{@link #isApart() <em>Apart</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #isApart()
     * @generated
     * @ordered
     */
    protected static final boolean APART_EDEFAULT = false;

    /**
     * The cached value of the '{@link #isApart() <em>Apart</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #isApart()
     * @generated
     * @ordered
     */
    protected boolean apart = APART_EDEFAULT;

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
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    protected RetoningImpl() {
        super();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    protected EClass eStaticClass() {
        return DesignPackage.Literals.RETONING;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getMark() {
        return mark;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setMark(String newMark) {
        String oldMark = mark;
        mark = newMark;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.RETONING__MARK, oldMark, mark));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getSha256() {
        return sha256;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setSha256(String newSha256) {
        String oldSha256 = sha256;
        sha256 = newSha256;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.RETONING__SHA256, oldSha256, sha256));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getMade() {
        return made;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setMade(String newMade) {
        String oldMade = made;
        made = newMade;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.RETONING__MADE, oldMade, made));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getChoices() {
        return choices;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setChoices(String newChoices) {
        String oldChoices = choices;
        choices = newChoices;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.RETONING__CHOICES, oldChoices, choices));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getKeyline() {
        return keyline;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setKeyline(String newKeyline) {
        String oldKeyline = keyline;
        keyline = newKeyline;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.RETONING__KEYLINE, oldKeyline, keyline));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public boolean isGrow() {
        return grow;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setGrow(boolean newGrow) {
        boolean oldGrow = grow;
        grow = newGrow;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.RETONING__GROW, oldGrow, grow));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public boolean isApart() {
        return apart;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setApart(boolean newApart) {
        boolean oldApart = apart;
        apart = newApart;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.RETONING__APART, oldApart, apart));
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
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.RETONING__X, oldX, x));
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
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.RETONING__Y, oldY, y));
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
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.RETONING__SCALE, oldScale, scale));
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
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.RETONING__TURN, oldTurn, turn));
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
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.RETONING__MIRROR, oldMirror, mirror));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Object eGet(int featureID, boolean resolve, boolean coreType) {
        switch (featureID) {
            case DesignPackage.RETONING__MARK:
                return getMark();
            case DesignPackage.RETONING__SHA256:
                return getSha256();
            case DesignPackage.RETONING__MADE:
                return getMade();
            case DesignPackage.RETONING__CHOICES:
                return getChoices();
            case DesignPackage.RETONING__KEYLINE:
                return getKeyline();
            case DesignPackage.RETONING__GROW:
                return isGrow();
            case DesignPackage.RETONING__APART:
                return isApart();
            case DesignPackage.RETONING__X:
                return getX();
            case DesignPackage.RETONING__Y:
                return getY();
            case DesignPackage.RETONING__SCALE:
                return getScale();
            case DesignPackage.RETONING__TURN:
                return getTurn();
            case DesignPackage.RETONING__MIRROR:
                return isMirror();
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
            case DesignPackage.RETONING__MARK:
                setMark((String)newValue);
                return;
            case DesignPackage.RETONING__SHA256:
                setSha256((String)newValue);
                return;
            case DesignPackage.RETONING__MADE:
                setMade((String)newValue);
                return;
            case DesignPackage.RETONING__CHOICES:
                setChoices((String)newValue);
                return;
            case DesignPackage.RETONING__KEYLINE:
                setKeyline((String)newValue);
                return;
            case DesignPackage.RETONING__GROW:
                setGrow((Boolean)newValue);
                return;
            case DesignPackage.RETONING__APART:
                setApart((Boolean)newValue);
                return;
            case DesignPackage.RETONING__X:
                setX((Double)newValue);
                return;
            case DesignPackage.RETONING__Y:
                setY((Double)newValue);
                return;
            case DesignPackage.RETONING__SCALE:
                setScale((Double)newValue);
                return;
            case DesignPackage.RETONING__TURN:
                setTurn((Double)newValue);
                return;
            case DesignPackage.RETONING__MIRROR:
                setMirror((Boolean)newValue);
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
            case DesignPackage.RETONING__MARK:
                setMark(MARK_EDEFAULT);
                return;
            case DesignPackage.RETONING__SHA256:
                setSha256(SHA256_EDEFAULT);
                return;
            case DesignPackage.RETONING__MADE:
                setMade(MADE_EDEFAULT);
                return;
            case DesignPackage.RETONING__CHOICES:
                setChoices(CHOICES_EDEFAULT);
                return;
            case DesignPackage.RETONING__KEYLINE:
                setKeyline(KEYLINE_EDEFAULT);
                return;
            case DesignPackage.RETONING__GROW:
                setGrow(GROW_EDEFAULT);
                return;
            case DesignPackage.RETONING__APART:
                setApart(APART_EDEFAULT);
                return;
            case DesignPackage.RETONING__X:
                setX(X_EDEFAULT);
                return;
            case DesignPackage.RETONING__Y:
                setY(Y_EDEFAULT);
                return;
            case DesignPackage.RETONING__SCALE:
                setScale(SCALE_EDEFAULT);
                return;
            case DesignPackage.RETONING__TURN:
                setTurn(TURN_EDEFAULT);
                return;
            case DesignPackage.RETONING__MIRROR:
                setMirror(MIRROR_EDEFAULT);
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
            case DesignPackage.RETONING__MARK:
                return MARK_EDEFAULT == null ? mark != null : !MARK_EDEFAULT.equals(mark);
            case DesignPackage.RETONING__SHA256:
                return SHA256_EDEFAULT == null ? sha256 != null : !SHA256_EDEFAULT.equals(sha256);
            case DesignPackage.RETONING__MADE:
                return MADE_EDEFAULT == null ? made != null : !MADE_EDEFAULT.equals(made);
            case DesignPackage.RETONING__CHOICES:
                return CHOICES_EDEFAULT == null ? choices != null : !CHOICES_EDEFAULT.equals(choices);
            case DesignPackage.RETONING__KEYLINE:
                return KEYLINE_EDEFAULT == null ? keyline != null : !KEYLINE_EDEFAULT.equals(keyline);
            case DesignPackage.RETONING__GROW:
                return grow != GROW_EDEFAULT;
            case DesignPackage.RETONING__APART:
                return apart != APART_EDEFAULT;
            case DesignPackage.RETONING__X:
                return x != X_EDEFAULT;
            case DesignPackage.RETONING__Y:
                return y != Y_EDEFAULT;
            case DesignPackage.RETONING__SCALE:
                return scale != SCALE_EDEFAULT;
            case DesignPackage.RETONING__TURN:
                return turn != TURN_EDEFAULT;
            case DesignPackage.RETONING__MIRROR:
                return mirror != MIRROR_EDEFAULT;
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
        result.append(" (mark: ");
        result.append(mark);
        result.append(", sha256: ");
        result.append(sha256);
        result.append(", made: ");
        result.append(made);
        result.append(", choices: ");
        result.append(choices);
        result.append(", keyline: ");
        result.append(keyline);
        result.append(", grow: ");
        result.append(grow);
        result.append(", apart: ");
        result.append(apart);
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
        result.append(')');
        return result.toString();
    }

} //RetoningImpl
