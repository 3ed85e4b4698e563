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
import org.pollex.model.design.Guide;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Guide</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.design.impl.GuideImpl#isUpright <em>Upright</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.GuideImpl#getAt <em>At</em>}</li>
 * </ul>
 *
 * @generated
 */
public class GuideImpl extends MinimalEObjectImpl.Container implements Guide {
    /**
     * The default value of the '{@link #isUpright() <em>Upright</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #isUpright()
     * @generated
     * @ordered
     */
    protected static final boolean UPRIGHT_EDEFAULT = false;

    /**
     * The cached value of the '{@link #isUpright() <em>Upright</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #isUpright()
     * @generated
     * @ordered
     */
    protected boolean upright = UPRIGHT_EDEFAULT;

    /**
     * The default value of the '{@link #getAt() <em>At</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getAt()
     * @generated
     * @ordered
     */
    protected static final double AT_EDEFAULT = 0.0;

    /**
     * The cached value of the '{@link #getAt() <em>At</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getAt()
     * @generated
     * @ordered
     */
    protected double at = AT_EDEFAULT;

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    protected GuideImpl() {
        super();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    protected EClass eStaticClass() {
        return DesignPackage.Literals.GUIDE;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public boolean isUpright() {
        return upright;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setUpright(boolean newUpright) {
        boolean oldUpright = upright;
        upright = newUpright;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.GUIDE__UPRIGHT, oldUpright, upright));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getAt() {
        return at;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setAt(double newAt) {
        double oldAt = at;
        at = newAt;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.GUIDE__AT, oldAt, at));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Object eGet(int featureID, boolean resolve, boolean coreType) {
        switch (featureID) {
            case DesignPackage.GUIDE__UPRIGHT:
                return isUpright();
            case DesignPackage.GUIDE__AT:
                return getAt();
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
            case DesignPackage.GUIDE__UPRIGHT:
                setUpright((Boolean)newValue);
                return;
            case DesignPackage.GUIDE__AT:
                setAt((Double)newValue);
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
            case DesignPackage.GUIDE__UPRIGHT:
                setUpright(UPRIGHT_EDEFAULT);
                return;
            case DesignPackage.GUIDE__AT:
                setAt(AT_EDEFAULT);
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
            case DesignPackage.GUIDE__UPRIGHT:
                return upright != UPRIGHT_EDEFAULT;
            case DesignPackage.GUIDE__AT:
                return at != AT_EDEFAULT;
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
        result.append(" (upright: ");
        result.append(upright);
        result.append(", at: ");
        result.append(at);
        result.append(')');
        return result.toString();
    }

} //GuideImpl
