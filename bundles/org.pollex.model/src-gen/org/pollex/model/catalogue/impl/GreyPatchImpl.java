/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.catalogue.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.pollex.model.catalogue.CataloguePackage;
import org.pollex.model.catalogue.GreyPatch;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Grey Patch</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.catalogue.impl.GreyPatchImpl#getLightness <em>Lightness</em>}</li>
 * </ul>
 *
 * @generated
 */
public class GreyPatchImpl extends PhotoAreaImpl implements GreyPatch {
    /**
     * The default value of the '{@link #getLightness() <em>Lightness</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getLightness()
     * @generated
     * @ordered
     */
    protected static final double LIGHTNESS_EDEFAULT = 0.0;

    /**
     * The cached value of the '{@link #getLightness() <em>Lightness</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getLightness()
     * @generated
     * @ordered
     */
    protected double lightness = LIGHTNESS_EDEFAULT;

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    protected GreyPatchImpl() {
        super();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    protected EClass eStaticClass() {
        return CataloguePackage.Literals.GREY_PATCH;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getLightness() {
        return lightness;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setLightness(double newLightness) {
        double oldLightness = lightness;
        lightness = newLightness;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.GREY_PATCH__LIGHTNESS, oldLightness, lightness));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Object eGet(int featureID, boolean resolve, boolean coreType) {
        switch (featureID) {
            case CataloguePackage.GREY_PATCH__LIGHTNESS:
                return getLightness();
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
            case CataloguePackage.GREY_PATCH__LIGHTNESS:
                setLightness((Double)newValue);
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
            case CataloguePackage.GREY_PATCH__LIGHTNESS:
                setLightness(LIGHTNESS_EDEFAULT);
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
            case CataloguePackage.GREY_PATCH__LIGHTNESS:
                return lightness != LIGHTNESS_EDEFAULT;
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
        result.append(" (lightness: ");
        result.append(lightness);
        result.append(')');
        return result.toString();
    }

} //GreyPatchImpl
