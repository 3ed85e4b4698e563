/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.design.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.pollex.model.design.Assignment;
import org.pollex.model.design.DesignPackage;
import org.pollex.model.design.Placement;
import org.pollex.model.design.Retoning;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Placement</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.design.impl.PlacementImpl#getArt <em>Art</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.PlacementImpl#getSha256 <em>Sha256</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.PlacementImpl#getGround <em>Ground</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.PlacementImpl#getLeaveOut <em>Leave Out</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.PlacementImpl#getAssignments <em>Assignments</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.PlacementImpl#getRetoning <em>Retoning</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PlacementImpl extends MarkImpl implements Placement {
    /**
     * The default value of the '{@link #getArt() <em>Art</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getArt()
     * @generated
     * @ordered
     */
    protected static final String ART_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getArt() <em>Art</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getArt()
     * @generated
     * @ordered
     */
    protected String art = ART_EDEFAULT;

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
     * The default value of the '{@link #getGround() <em>Ground</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getGround()
     * @generated
     * @ordered
     */
    protected static final String GROUND_EDEFAULT = "#ffffff";

    /**
     * The cached value of the '{@link #getGround() <em>Ground</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getGround()
     * @generated
     * @ordered
     */
    protected String ground = GROUND_EDEFAULT;

    /**
     * The default value of the '{@link #getLeaveOut() <em>Leave Out</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getLeaveOut()
     * @generated
     * @ordered
     */
    protected static final double LEAVE_OUT_EDEFAULT = 0.0;

    /**
     * The cached value of the '{@link #getLeaveOut() <em>Leave Out</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getLeaveOut()
     * @generated
     * @ordered
     */
    protected double leaveOut = LEAVE_OUT_EDEFAULT;

    /**
     * The cached value of the '{@link #getAssignments() <em>Assignments</em>}' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getAssignments()
     * @generated
     * @ordered
     */
    protected EList<Assignment> assignments;

    /**
     * The cached value of the '{@link #getRetoning() <em>Retoning</em>}' containment reference.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getRetoning()
     * @generated
     * @ordered
     */
    protected Retoning retoning;

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    protected PlacementImpl() {
        super();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    protected EClass eStaticClass() {
        return DesignPackage.Literals.PLACEMENT;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getArt() {
        return art;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setArt(String newArt) {
        String oldArt = art;
        art = newArt;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.PLACEMENT__ART, oldArt, art));
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
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.PLACEMENT__SHA256, oldSha256, sha256));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getGround() {
        return ground;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setGround(String newGround) {
        String oldGround = ground;
        ground = newGround;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.PLACEMENT__GROUND, oldGround, ground));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getLeaveOut() {
        return leaveOut;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setLeaveOut(double newLeaveOut) {
        double oldLeaveOut = leaveOut;
        leaveOut = newLeaveOut;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.PLACEMENT__LEAVE_OUT, oldLeaveOut, leaveOut));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public EList<Assignment> getAssignments() {
        if (assignments == null) {
            assignments = new EObjectContainmentEList<Assignment>(Assignment.class, this, DesignPackage.PLACEMENT__ASSIGNMENTS);
        }
        return assignments;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Retoning getRetoning() {
        return retoning;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    public NotificationChain basicSetRetoning(Retoning newRetoning, NotificationChain msgs) {
        Retoning oldRetoning = retoning;
        retoning = newRetoning;
        if (eNotificationRequired()) {
            ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, DesignPackage.PLACEMENT__RETONING, oldRetoning, newRetoning);
            if (msgs == null) msgs = notification; else msgs.add(notification);
        }
        return msgs;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setRetoning(Retoning newRetoning) {
        if (newRetoning != retoning) {
            NotificationChain msgs = null;
            if (retoning != null)
                msgs = ((InternalEObject)retoning).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - DesignPackage.PLACEMENT__RETONING, null, msgs);
            if (newRetoning != null)
                msgs = ((InternalEObject)newRetoning).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - DesignPackage.PLACEMENT__RETONING, null, msgs);
            msgs = basicSetRetoning(newRetoning, msgs);
            if (msgs != null) msgs.dispatch();
        }
        else if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.PLACEMENT__RETONING, newRetoning, newRetoning));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
        switch (featureID) {
            case DesignPackage.PLACEMENT__ASSIGNMENTS:
                return ((InternalEList<?>)getAssignments()).basicRemove(otherEnd, msgs);
            case DesignPackage.PLACEMENT__RETONING:
                return basicSetRetoning(null, msgs);
        }
        return super.eInverseRemove(otherEnd, featureID, msgs);
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Object eGet(int featureID, boolean resolve, boolean coreType) {
        switch (featureID) {
            case DesignPackage.PLACEMENT__ART:
                return getArt();
            case DesignPackage.PLACEMENT__SHA256:
                return getSha256();
            case DesignPackage.PLACEMENT__GROUND:
                return getGround();
            case DesignPackage.PLACEMENT__LEAVE_OUT:
                return getLeaveOut();
            case DesignPackage.PLACEMENT__ASSIGNMENTS:
                return getAssignments();
            case DesignPackage.PLACEMENT__RETONING:
                return getRetoning();
        }
        return super.eGet(featureID, resolve, coreType);
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @SuppressWarnings("unchecked")
    @Override
    public void eSet(int featureID, Object newValue) {
        switch (featureID) {
            case DesignPackage.PLACEMENT__ART:
                setArt((String)newValue);
                return;
            case DesignPackage.PLACEMENT__SHA256:
                setSha256((String)newValue);
                return;
            case DesignPackage.PLACEMENT__GROUND:
                setGround((String)newValue);
                return;
            case DesignPackage.PLACEMENT__LEAVE_OUT:
                setLeaveOut((Double)newValue);
                return;
            case DesignPackage.PLACEMENT__ASSIGNMENTS:
                getAssignments().clear();
                getAssignments().addAll((Collection<? extends Assignment>)newValue);
                return;
            case DesignPackage.PLACEMENT__RETONING:
                setRetoning((Retoning)newValue);
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
            case DesignPackage.PLACEMENT__ART:
                setArt(ART_EDEFAULT);
                return;
            case DesignPackage.PLACEMENT__SHA256:
                setSha256(SHA256_EDEFAULT);
                return;
            case DesignPackage.PLACEMENT__GROUND:
                setGround(GROUND_EDEFAULT);
                return;
            case DesignPackage.PLACEMENT__LEAVE_OUT:
                setLeaveOut(LEAVE_OUT_EDEFAULT);
                return;
            case DesignPackage.PLACEMENT__ASSIGNMENTS:
                getAssignments().clear();
                return;
            case DesignPackage.PLACEMENT__RETONING:
                setRetoning((Retoning)null);
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
            case DesignPackage.PLACEMENT__ART:
                return ART_EDEFAULT == null ? art != null : !ART_EDEFAULT.equals(art);
            case DesignPackage.PLACEMENT__SHA256:
                return SHA256_EDEFAULT == null ? sha256 != null : !SHA256_EDEFAULT.equals(sha256);
            case DesignPackage.PLACEMENT__GROUND:
                return GROUND_EDEFAULT == null ? ground != null : !GROUND_EDEFAULT.equals(ground);
            case DesignPackage.PLACEMENT__LEAVE_OUT:
                return leaveOut != LEAVE_OUT_EDEFAULT;
            case DesignPackage.PLACEMENT__ASSIGNMENTS:
                return assignments != null && !assignments.isEmpty();
            case DesignPackage.PLACEMENT__RETONING:
                return retoning != null;
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
        result.append(" (art: ");
        result.append(art);
        result.append(", sha256: ");
        result.append(sha256);
        result.append(", ground: ");
        result.append(ground);
        result.append(", leaveOut: ");
        result.append(leaveOut);
        result.append(')');
        return result.toString();
    }

} //PlacementImpl
