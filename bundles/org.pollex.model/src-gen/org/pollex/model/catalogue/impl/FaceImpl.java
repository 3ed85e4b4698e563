/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.catalogue.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.pollex.model.catalogue.CataloguePackage;
import org.pollex.model.catalogue.Face;
import org.pollex.model.catalogue.Setting;
import org.pollex.model.catalogue.Zone;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Face</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.catalogue.impl.FaceImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.FaceImpl#isMirrored <em>Mirrored</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.FaceImpl#getZones <em>Zones</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.FaceImpl#getWear <em>Wear</em>}</li>
 * </ul>
 *
 * @generated
 */
public class FaceImpl extends MinimalEObjectImpl.Container implements Face {
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
     * The default value of the '{@link #isMirrored() <em>Mirrored</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #isMirrored()
     * @generated
     * @ordered
     */
    protected static final boolean MIRRORED_EDEFAULT = false;

    /**
     * The cached value of the '{@link #isMirrored() <em>Mirrored</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #isMirrored()
     * @generated
     * @ordered
     */
    protected boolean mirrored = MIRRORED_EDEFAULT;

    /**
     * The cached value of the '{@link #getZones() <em>Zones</em>}' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getZones()
     * @generated
     * @ordered
     */
    protected EList<Zone> zones;

    /**
     * The cached value of the '{@link #getWear() <em>Wear</em>}' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getWear()
     * @generated
     * @ordered
     */
    protected EList<Setting> wear;

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    protected FaceImpl() {
        super();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    protected EClass eStaticClass() {
        return CataloguePackage.Literals.FACE;
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
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.FACE__NAME, oldName, name));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public boolean isMirrored() {
        return mirrored;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setMirrored(boolean newMirrored) {
        boolean oldMirrored = mirrored;
        mirrored = newMirrored;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.FACE__MIRRORED, oldMirrored, mirrored));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public EList<Zone> getZones() {
        if (zones == null) {
            zones = new EObjectContainmentEList<Zone>(Zone.class, this, CataloguePackage.FACE__ZONES);
        }
        return zones;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public EList<Setting> getWear() {
        if (wear == null) {
            wear = new EObjectContainmentEList<Setting>(Setting.class, this, CataloguePackage.FACE__WEAR);
        }
        return wear;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
        switch (featureID) {
            case CataloguePackage.FACE__ZONES:
                return ((InternalEList<?>)getZones()).basicRemove(otherEnd, msgs);
            case CataloguePackage.FACE__WEAR:
                return ((InternalEList<?>)getWear()).basicRemove(otherEnd, msgs);
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
            case CataloguePackage.FACE__NAME:
                return getName();
            case CataloguePackage.FACE__MIRRORED:
                return isMirrored();
            case CataloguePackage.FACE__ZONES:
                return getZones();
            case CataloguePackage.FACE__WEAR:
                return getWear();
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
            case CataloguePackage.FACE__NAME:
                setName((String)newValue);
                return;
            case CataloguePackage.FACE__MIRRORED:
                setMirrored((Boolean)newValue);
                return;
            case CataloguePackage.FACE__ZONES:
                getZones().clear();
                getZones().addAll((Collection<? extends Zone>)newValue);
                return;
            case CataloguePackage.FACE__WEAR:
                getWear().clear();
                getWear().addAll((Collection<? extends Setting>)newValue);
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
            case CataloguePackage.FACE__NAME:
                setName(NAME_EDEFAULT);
                return;
            case CataloguePackage.FACE__MIRRORED:
                setMirrored(MIRRORED_EDEFAULT);
                return;
            case CataloguePackage.FACE__ZONES:
                getZones().clear();
                return;
            case CataloguePackage.FACE__WEAR:
                getWear().clear();
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
            case CataloguePackage.FACE__NAME:
                return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
            case CataloguePackage.FACE__MIRRORED:
                return mirrored != MIRRORED_EDEFAULT;
            case CataloguePackage.FACE__ZONES:
                return zones != null && !zones.isEmpty();
            case CataloguePackage.FACE__WEAR:
                return wear != null && !wear.isEmpty();
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
        result.append(" (name: ");
        result.append(name);
        result.append(", mirrored: ");
        result.append(mirrored);
        result.append(')');
        return result.toString();
    }

} //FaceImpl
