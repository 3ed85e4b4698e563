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

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.pollex.model.catalogue.CataloguePackage;
import org.pollex.model.catalogue.Face;
import org.pollex.model.catalogue.Product;
import org.pollex.model.catalogue.Setting;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Product</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.catalogue.impl.ProductImpl#getFamily <em>Family</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.ProductImpl#getThickness <em>Thickness</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.ProductImpl#getRegister <em>Register</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.ProductImpl#getDimensions <em>Dimensions</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.ProductImpl#getFaces <em>Faces</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ProductImpl extends EntryImpl implements Product {
    /**
     * The default value of the '{@link #getFamily() <em>Family</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getFamily()
     * @generated
     * @ordered
     */
    protected static final String FAMILY_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getFamily() <em>Family</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getFamily()
     * @generated
     * @ordered
     */
    protected String family = FAMILY_EDEFAULT;

    /**
     * The default value of the '{@link #getThickness() <em>Thickness</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getThickness()
     * @generated
     * @ordered
     */
    protected static final double THICKNESS_EDEFAULT = 0.0;

    /**
     * The cached value of the '{@link #getThickness() <em>Thickness</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getThickness()
     * @generated
     * @ordered
     */
    protected double thickness = THICKNESS_EDEFAULT;

    /**
     * The default value of the '{@link #getRegister() <em>Register</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getRegister()
     * @generated
     * @ordered
     */
    protected static final double REGISTER_EDEFAULT = 0.3;

    /**
     * The cached value of the '{@link #getRegister() <em>Register</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getRegister()
     * @generated
     * @ordered
     */
    protected double register = REGISTER_EDEFAULT;

    /**
     * The cached value of the '{@link #getDimensions() <em>Dimensions</em>}' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getDimensions()
     * @generated
     * @ordered
     */
    protected EList<Setting> dimensions;

    /**
     * The cached value of the '{@link #getFaces() <em>Faces</em>}' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getFaces()
     * @generated
     * @ordered
     */
    protected EList<Face> faces;

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    protected ProductImpl() {
        super();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    protected EClass eStaticClass() {
        return CataloguePackage.Literals.PRODUCT;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getFamily() {
        return family;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setFamily(String newFamily) {
        String oldFamily = family;
        family = newFamily;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.PRODUCT__FAMILY, oldFamily, family));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getThickness() {
        return thickness;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setThickness(double newThickness) {
        double oldThickness = thickness;
        thickness = newThickness;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.PRODUCT__THICKNESS, oldThickness, thickness));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getRegister() {
        return register;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setRegister(double newRegister) {
        double oldRegister = register;
        register = newRegister;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.PRODUCT__REGISTER, oldRegister, register));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public EList<Setting> getDimensions() {
        if (dimensions == null) {
            dimensions = new EObjectContainmentEList<Setting>(Setting.class, this, CataloguePackage.PRODUCT__DIMENSIONS);
        }
        return dimensions;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public EList<Face> getFaces() {
        if (faces == null) {
            faces = new EObjectContainmentEList<Face>(Face.class, this, CataloguePackage.PRODUCT__FACES);
        }
        return faces;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
        switch (featureID) {
            case CataloguePackage.PRODUCT__DIMENSIONS:
                return ((InternalEList<?>)getDimensions()).basicRemove(otherEnd, msgs);
            case CataloguePackage.PRODUCT__FACES:
                return ((InternalEList<?>)getFaces()).basicRemove(otherEnd, msgs);
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
            case CataloguePackage.PRODUCT__FAMILY:
                return getFamily();
            case CataloguePackage.PRODUCT__THICKNESS:
                return getThickness();
            case CataloguePackage.PRODUCT__REGISTER:
                return getRegister();
            case CataloguePackage.PRODUCT__DIMENSIONS:
                return getDimensions();
            case CataloguePackage.PRODUCT__FACES:
                return getFaces();
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
            case CataloguePackage.PRODUCT__FAMILY:
                setFamily((String)newValue);
                return;
            case CataloguePackage.PRODUCT__THICKNESS:
                setThickness((Double)newValue);
                return;
            case CataloguePackage.PRODUCT__REGISTER:
                setRegister((Double)newValue);
                return;
            case CataloguePackage.PRODUCT__DIMENSIONS:
                getDimensions().clear();
                getDimensions().addAll((Collection<? extends Setting>)newValue);
                return;
            case CataloguePackage.PRODUCT__FACES:
                getFaces().clear();
                getFaces().addAll((Collection<? extends Face>)newValue);
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
            case CataloguePackage.PRODUCT__FAMILY:
                setFamily(FAMILY_EDEFAULT);
                return;
            case CataloguePackage.PRODUCT__THICKNESS:
                setThickness(THICKNESS_EDEFAULT);
                return;
            case CataloguePackage.PRODUCT__REGISTER:
                setRegister(REGISTER_EDEFAULT);
                return;
            case CataloguePackage.PRODUCT__DIMENSIONS:
                getDimensions().clear();
                return;
            case CataloguePackage.PRODUCT__FACES:
                getFaces().clear();
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
            case CataloguePackage.PRODUCT__FAMILY:
                return FAMILY_EDEFAULT == null ? family != null : !FAMILY_EDEFAULT.equals(family);
            case CataloguePackage.PRODUCT__THICKNESS:
                return thickness != THICKNESS_EDEFAULT;
            case CataloguePackage.PRODUCT__REGISTER:
                return register != REGISTER_EDEFAULT;
            case CataloguePackage.PRODUCT__DIMENSIONS:
                return dimensions != null && !dimensions.isEmpty();
            case CataloguePackage.PRODUCT__FACES:
                return faces != null && !faces.isEmpty();
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
        result.append(" (family: ");
        result.append(family);
        result.append(", thickness: ");
        result.append(thickness);
        result.append(", register: ");
        result.append(register);
        result.append(')');
        return result.toString();
    }

} //ProductImpl
