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

import org.pollex.model.catalogue.Catalogue;
import org.pollex.model.catalogue.CataloguePackage;
import org.pollex.model.catalogue.Family;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.Method;
import org.pollex.model.catalogue.Product;
import org.pollex.model.catalogue.Setting;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Catalogue</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.catalogue.impl.CatalogueImpl#getFormat <em>Format</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.CatalogueImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.CatalogueImpl#getFamilies <em>Families</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.CatalogueImpl#getProducts <em>Products</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.CatalogueImpl#getMaterials <em>Materials</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.CatalogueImpl#getInks <em>Inks</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.CatalogueImpl#getMethods <em>Methods</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.CatalogueImpl#getSettings <em>Settings</em>}</li>
 * </ul>
 *
 * @generated
 */
public class CatalogueImpl extends MinimalEObjectImpl.Container implements Catalogue {
    /**
     * The default value of the '{@link #getFormat() <em>Format</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getFormat()
     * @generated
     * @ordered
     */
    protected static final int FORMAT_EDEFAULT = 0;

    /**
     * The cached value of the '{@link #getFormat() <em>Format</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getFormat()
     * @generated
     * @ordered
     */
    protected int format = FORMAT_EDEFAULT;

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
     * The cached value of the '{@link #getFamilies() <em>Families</em>}' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getFamilies()
     * @generated
     * @ordered
     */
    protected EList<Family> families;

    /**
     * The cached value of the '{@link #getProducts() <em>Products</em>}' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getProducts()
     * @generated
     * @ordered
     */
    protected EList<Product> products;

    /**
     * The cached value of the '{@link #getMaterials() <em>Materials</em>}' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getMaterials()
     * @generated
     * @ordered
     */
    protected EList<Material> materials;

    /**
     * The cached value of the '{@link #getInks() <em>Inks</em>}' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getInks()
     * @generated
     * @ordered
     */
    protected EList<Ink> inks;

    /**
     * The cached value of the '{@link #getMethods() <em>Methods</em>}' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getMethods()
     * @generated
     * @ordered
     */
    protected EList<Method> methods;

    /**
     * The cached value of the '{@link #getSettings() <em>Settings</em>}' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getSettings()
     * @generated
     * @ordered
     */
    protected EList<Setting> settings;

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    protected CatalogueImpl() {
        super();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    protected EClass eStaticClass() {
        return CataloguePackage.Literals.CATALOGUE;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public int getFormat() {
        return format;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setFormat(int newFormat) {
        int oldFormat = format;
        format = newFormat;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.CATALOGUE__FORMAT, oldFormat, format));
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
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.CATALOGUE__NAME, oldName, name));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public EList<Family> getFamilies() {
        if (families == null) {
            families = new EObjectContainmentEList<Family>(Family.class, this, CataloguePackage.CATALOGUE__FAMILIES);
        }
        return families;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public EList<Product> getProducts() {
        if (products == null) {
            products = new EObjectContainmentEList<Product>(Product.class, this, CataloguePackage.CATALOGUE__PRODUCTS);
        }
        return products;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public EList<Material> getMaterials() {
        if (materials == null) {
            materials = new EObjectContainmentEList<Material>(Material.class, this, CataloguePackage.CATALOGUE__MATERIALS);
        }
        return materials;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public EList<Ink> getInks() {
        if (inks == null) {
            inks = new EObjectContainmentEList<Ink>(Ink.class, this, CataloguePackage.CATALOGUE__INKS);
        }
        return inks;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public EList<Method> getMethods() {
        if (methods == null) {
            methods = new EObjectContainmentEList<Method>(Method.class, this, CataloguePackage.CATALOGUE__METHODS);
        }
        return methods;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public EList<Setting> getSettings() {
        if (settings == null) {
            settings = new EObjectContainmentEList<Setting>(Setting.class, this, CataloguePackage.CATALOGUE__SETTINGS);
        }
        return settings;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
        switch (featureID) {
            case CataloguePackage.CATALOGUE__FAMILIES:
                return ((InternalEList<?>)getFamilies()).basicRemove(otherEnd, msgs);
            case CataloguePackage.CATALOGUE__PRODUCTS:
                return ((InternalEList<?>)getProducts()).basicRemove(otherEnd, msgs);
            case CataloguePackage.CATALOGUE__MATERIALS:
                return ((InternalEList<?>)getMaterials()).basicRemove(otherEnd, msgs);
            case CataloguePackage.CATALOGUE__INKS:
                return ((InternalEList<?>)getInks()).basicRemove(otherEnd, msgs);
            case CataloguePackage.CATALOGUE__METHODS:
                return ((InternalEList<?>)getMethods()).basicRemove(otherEnd, msgs);
            case CataloguePackage.CATALOGUE__SETTINGS:
                return ((InternalEList<?>)getSettings()).basicRemove(otherEnd, msgs);
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
            case CataloguePackage.CATALOGUE__FORMAT:
                return getFormat();
            case CataloguePackage.CATALOGUE__NAME:
                return getName();
            case CataloguePackage.CATALOGUE__FAMILIES:
                return getFamilies();
            case CataloguePackage.CATALOGUE__PRODUCTS:
                return getProducts();
            case CataloguePackage.CATALOGUE__MATERIALS:
                return getMaterials();
            case CataloguePackage.CATALOGUE__INKS:
                return getInks();
            case CataloguePackage.CATALOGUE__METHODS:
                return getMethods();
            case CataloguePackage.CATALOGUE__SETTINGS:
                return getSettings();
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
            case CataloguePackage.CATALOGUE__FORMAT:
                setFormat((Integer)newValue);
                return;
            case CataloguePackage.CATALOGUE__NAME:
                setName((String)newValue);
                return;
            case CataloguePackage.CATALOGUE__FAMILIES:
                getFamilies().clear();
                getFamilies().addAll((Collection<? extends Family>)newValue);
                return;
            case CataloguePackage.CATALOGUE__PRODUCTS:
                getProducts().clear();
                getProducts().addAll((Collection<? extends Product>)newValue);
                return;
            case CataloguePackage.CATALOGUE__MATERIALS:
                getMaterials().clear();
                getMaterials().addAll((Collection<? extends Material>)newValue);
                return;
            case CataloguePackage.CATALOGUE__INKS:
                getInks().clear();
                getInks().addAll((Collection<? extends Ink>)newValue);
                return;
            case CataloguePackage.CATALOGUE__METHODS:
                getMethods().clear();
                getMethods().addAll((Collection<? extends Method>)newValue);
                return;
            case CataloguePackage.CATALOGUE__SETTINGS:
                getSettings().clear();
                getSettings().addAll((Collection<? extends Setting>)newValue);
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
            case CataloguePackage.CATALOGUE__FORMAT:
                setFormat(FORMAT_EDEFAULT);
                return;
            case CataloguePackage.CATALOGUE__NAME:
                setName(NAME_EDEFAULT);
                return;
            case CataloguePackage.CATALOGUE__FAMILIES:
                getFamilies().clear();
                return;
            case CataloguePackage.CATALOGUE__PRODUCTS:
                getProducts().clear();
                return;
            case CataloguePackage.CATALOGUE__MATERIALS:
                getMaterials().clear();
                return;
            case CataloguePackage.CATALOGUE__INKS:
                getInks().clear();
                return;
            case CataloguePackage.CATALOGUE__METHODS:
                getMethods().clear();
                return;
            case CataloguePackage.CATALOGUE__SETTINGS:
                getSettings().clear();
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
            case CataloguePackage.CATALOGUE__FORMAT:
                return format != FORMAT_EDEFAULT;
            case CataloguePackage.CATALOGUE__NAME:
                return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
            case CataloguePackage.CATALOGUE__FAMILIES:
                return families != null && !families.isEmpty();
            case CataloguePackage.CATALOGUE__PRODUCTS:
                return products != null && !products.isEmpty();
            case CataloguePackage.CATALOGUE__MATERIALS:
                return materials != null && !materials.isEmpty();
            case CataloguePackage.CATALOGUE__INKS:
                return inks != null && !inks.isEmpty();
            case CataloguePackage.CATALOGUE__METHODS:
                return methods != null && !methods.isEmpty();
            case CataloguePackage.CATALOGUE__SETTINGS:
                return settings != null && !settings.isEmpty();
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
        result.append(" (format: ");
        result.append(format);
        result.append(", name: ");
        result.append(name);
        result.append(')');
        return result.toString();
    }

} //CatalogueImpl
