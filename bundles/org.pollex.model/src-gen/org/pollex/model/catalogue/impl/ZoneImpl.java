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
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.pollex.model.catalogue.CataloguePackage;
import org.pollex.model.catalogue.Zone;
import org.pollex.model.catalogue.ZoneKind;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Zone</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.catalogue.impl.ZoneImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.ZoneImpl#getInset <em>Inset</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.ZoneImpl#getLevel <em>Level</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.ZoneImpl#getStrength <em>Strength</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ZoneImpl extends MinimalEObjectImpl.Container implements Zone {
    /**
     * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getKind()
     * @generated
     * @ordered
     */
    protected static final ZoneKind KIND_EDEFAULT = ZoneKind.SAFE;

    /**
     * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getKind()
     * @generated
     * @ordered
     */
    protected ZoneKind kind = KIND_EDEFAULT;

    /**
     * The default value of the '{@link #getInset() <em>Inset</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getInset()
     * @generated
     * @ordered
     */
    protected static final double INSET_EDEFAULT = 0.0;

    /**
     * The cached value of the '{@link #getInset() <em>Inset</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getInset()
     * @generated
     * @ordered
     */
    protected double inset = INSET_EDEFAULT;

    /**
     * The default value of the '{@link #getLevel() <em>Level</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getLevel()
     * @generated
     * @ordered
     */
    protected static final double LEVEL_EDEFAULT = 0.0;

    /**
     * The cached value of the '{@link #getLevel() <em>Level</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getLevel()
     * @generated
     * @ordered
     */
    protected double level = LEVEL_EDEFAULT;

    /**
     * The default value of the '{@link #getStrength() <em>Strength</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getStrength()
     * @generated
     * @ordered
     */
    protected static final double STRENGTH_EDEFAULT = 1.0;

    /**
     * The cached value of the '{@link #getStrength() <em>Strength</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getStrength()
     * @generated
     * @ordered
     */
    protected double strength = STRENGTH_EDEFAULT;

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    protected ZoneImpl() {
        super();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    protected EClass eStaticClass() {
        return CataloguePackage.Literals.ZONE;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public ZoneKind getKind() {
        return kind;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setKind(ZoneKind newKind) {
        ZoneKind oldKind = kind;
        kind = newKind == null ? KIND_EDEFAULT : newKind;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.ZONE__KIND, oldKind, kind));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getInset() {
        return inset;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setInset(double newInset) {
        double oldInset = inset;
        inset = newInset;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.ZONE__INSET, oldInset, inset));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getLevel() {
        return level;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setLevel(double newLevel) {
        double oldLevel = level;
        level = newLevel;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.ZONE__LEVEL, oldLevel, level));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getStrength() {
        return strength;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setStrength(double newStrength) {
        double oldStrength = strength;
        strength = newStrength;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.ZONE__STRENGTH, oldStrength, strength));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Object eGet(int featureID, boolean resolve, boolean coreType) {
        switch (featureID) {
            case CataloguePackage.ZONE__KIND:
                return getKind();
            case CataloguePackage.ZONE__INSET:
                return getInset();
            case CataloguePackage.ZONE__LEVEL:
                return getLevel();
            case CataloguePackage.ZONE__STRENGTH:
                return getStrength();
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
            case CataloguePackage.ZONE__KIND:
                setKind((ZoneKind)newValue);
                return;
            case CataloguePackage.ZONE__INSET:
                setInset((Double)newValue);
                return;
            case CataloguePackage.ZONE__LEVEL:
                setLevel((Double)newValue);
                return;
            case CataloguePackage.ZONE__STRENGTH:
                setStrength((Double)newValue);
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
            case CataloguePackage.ZONE__KIND:
                setKind(KIND_EDEFAULT);
                return;
            case CataloguePackage.ZONE__INSET:
                setInset(INSET_EDEFAULT);
                return;
            case CataloguePackage.ZONE__LEVEL:
                setLevel(LEVEL_EDEFAULT);
                return;
            case CataloguePackage.ZONE__STRENGTH:
                setStrength(STRENGTH_EDEFAULT);
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
            case CataloguePackage.ZONE__KIND:
                return kind != KIND_EDEFAULT;
            case CataloguePackage.ZONE__INSET:
                return inset != INSET_EDEFAULT;
            case CataloguePackage.ZONE__LEVEL:
                return level != LEVEL_EDEFAULT;
            case CataloguePackage.ZONE__STRENGTH:
                return strength != STRENGTH_EDEFAULT;
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
        result.append(" (kind: ");
        result.append(kind);
        result.append(", inset: ");
        result.append(inset);
        result.append(", level: ");
        result.append(level);
        result.append(", strength: ");
        result.append(strength);
        result.append(')');
        return result.toString();
    }

} //ZoneImpl
