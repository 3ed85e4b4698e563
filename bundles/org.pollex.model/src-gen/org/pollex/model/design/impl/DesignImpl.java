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
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EDataTypeEList;
import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.pollex.model.design.Design;
import org.pollex.model.design.DesignPackage;
import org.pollex.model.design.Side;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Design</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.design.impl.DesignImpl#getFormat <em>Format</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.DesignImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.DesignImpl#getProduct <em>Product</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.DesignImpl#getMaterial <em>Material</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.DesignImpl#getMethod <em>Method</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.DesignImpl#getInks <em>Inks</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.DesignImpl#getRetonedFrom <em>Retoned From</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.DesignImpl#getSides <em>Sides</em>}</li>
 * </ul>
 *
 * @generated
 */
public class DesignImpl extends MinimalEObjectImpl.Container implements Design {
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
     * The default value of the '{@link #getProduct() <em>Product</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getProduct()
     * @generated
     * @ordered
     */
    protected static final String PRODUCT_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getProduct() <em>Product</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getProduct()
     * @generated
     * @ordered
     */
    protected String product = PRODUCT_EDEFAULT;

    /**
     * The default value of the '{@link #getMaterial() <em>Material</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getMaterial()
     * @generated
     * @ordered
     */
    protected static final String MATERIAL_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getMaterial() <em>Material</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getMaterial()
     * @generated
     * @ordered
     */
    protected String material = MATERIAL_EDEFAULT;

    /**
     * The default value of the '{@link #getMethod() <em>Method</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getMethod()
     * @generated
     * @ordered
     */
    protected static final String METHOD_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getMethod() <em>Method</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getMethod()
     * @generated
     * @ordered
     */
    protected String method = METHOD_EDEFAULT;

    /**
     * The cached value of the '{@link #getInks() <em>Inks</em>}' attribute list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getInks()
     * @generated
     * @ordered
     */
    protected EList<String> inks;

    /**
     * The default value of the '{@link #getRetonedFrom() <em>Retoned From</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getRetonedFrom()
     * @generated
     * @ordered
     */
    protected static final String RETONED_FROM_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getRetonedFrom() <em>Retoned From</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getRetonedFrom()
     * @generated
     * @ordered
     */
    protected String retonedFrom = RETONED_FROM_EDEFAULT;

    /**
     * The cached value of the '{@link #getSides() <em>Sides</em>}' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getSides()
     * @generated
     * @ordered
     */
    protected EList<Side> sides;

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    protected DesignImpl() {
        super();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    protected EClass eStaticClass() {
        return DesignPackage.Literals.DESIGN;
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
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.DESIGN__FORMAT, oldFormat, format));
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
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.DESIGN__NAME, oldName, name));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getProduct() {
        return product;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setProduct(String newProduct) {
        String oldProduct = product;
        product = newProduct;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.DESIGN__PRODUCT, oldProduct, product));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getMaterial() {
        return material;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setMaterial(String newMaterial) {
        String oldMaterial = material;
        material = newMaterial;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.DESIGN__MATERIAL, oldMaterial, material));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getMethod() {
        return method;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setMethod(String newMethod) {
        String oldMethod = method;
        method = newMethod;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.DESIGN__METHOD, oldMethod, method));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public EList<String> getInks() {
        if (inks == null) {
            inks = new EDataTypeEList<String>(String.class, this, DesignPackage.DESIGN__INKS);
        }
        return inks;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getRetonedFrom() {
        return retonedFrom;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setRetonedFrom(String newRetonedFrom) {
        String oldRetonedFrom = retonedFrom;
        retonedFrom = newRetonedFrom;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.DESIGN__RETONED_FROM, oldRetonedFrom, retonedFrom));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public EList<Side> getSides() {
        if (sides == null) {
            sides = new EObjectContainmentEList<Side>(Side.class, this, DesignPackage.DESIGN__SIDES);
        }
        return sides;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
        switch (featureID) {
            case DesignPackage.DESIGN__SIDES:
                return ((InternalEList<?>)getSides()).basicRemove(otherEnd, msgs);
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
            case DesignPackage.DESIGN__FORMAT:
                return getFormat();
            case DesignPackage.DESIGN__NAME:
                return getName();
            case DesignPackage.DESIGN__PRODUCT:
                return getProduct();
            case DesignPackage.DESIGN__MATERIAL:
                return getMaterial();
            case DesignPackage.DESIGN__METHOD:
                return getMethod();
            case DesignPackage.DESIGN__INKS:
                return getInks();
            case DesignPackage.DESIGN__RETONED_FROM:
                return getRetonedFrom();
            case DesignPackage.DESIGN__SIDES:
                return getSides();
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
            case DesignPackage.DESIGN__FORMAT:
                setFormat((Integer)newValue);
                return;
            case DesignPackage.DESIGN__NAME:
                setName((String)newValue);
                return;
            case DesignPackage.DESIGN__PRODUCT:
                setProduct((String)newValue);
                return;
            case DesignPackage.DESIGN__MATERIAL:
                setMaterial((String)newValue);
                return;
            case DesignPackage.DESIGN__METHOD:
                setMethod((String)newValue);
                return;
            case DesignPackage.DESIGN__INKS:
                getInks().clear();
                getInks().addAll((Collection<? extends String>)newValue);
                return;
            case DesignPackage.DESIGN__RETONED_FROM:
                setRetonedFrom((String)newValue);
                return;
            case DesignPackage.DESIGN__SIDES:
                getSides().clear();
                getSides().addAll((Collection<? extends Side>)newValue);
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
            case DesignPackage.DESIGN__FORMAT:
                setFormat(FORMAT_EDEFAULT);
                return;
            case DesignPackage.DESIGN__NAME:
                setName(NAME_EDEFAULT);
                return;
            case DesignPackage.DESIGN__PRODUCT:
                setProduct(PRODUCT_EDEFAULT);
                return;
            case DesignPackage.DESIGN__MATERIAL:
                setMaterial(MATERIAL_EDEFAULT);
                return;
            case DesignPackage.DESIGN__METHOD:
                setMethod(METHOD_EDEFAULT);
                return;
            case DesignPackage.DESIGN__INKS:
                getInks().clear();
                return;
            case DesignPackage.DESIGN__RETONED_FROM:
                setRetonedFrom(RETONED_FROM_EDEFAULT);
                return;
            case DesignPackage.DESIGN__SIDES:
                getSides().clear();
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
            case DesignPackage.DESIGN__FORMAT:
                return format != FORMAT_EDEFAULT;
            case DesignPackage.DESIGN__NAME:
                return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
            case DesignPackage.DESIGN__PRODUCT:
                return PRODUCT_EDEFAULT == null ? product != null : !PRODUCT_EDEFAULT.equals(product);
            case DesignPackage.DESIGN__MATERIAL:
                return MATERIAL_EDEFAULT == null ? material != null : !MATERIAL_EDEFAULT.equals(material);
            case DesignPackage.DESIGN__METHOD:
                return METHOD_EDEFAULT == null ? method != null : !METHOD_EDEFAULT.equals(method);
            case DesignPackage.DESIGN__INKS:
                return inks != null && !inks.isEmpty();
            case DesignPackage.DESIGN__RETONED_FROM:
                return RETONED_FROM_EDEFAULT == null ? retonedFrom != null : !RETONED_FROM_EDEFAULT.equals(retonedFrom);
            case DesignPackage.DESIGN__SIDES:
                return sides != null && !sides.isEmpty();
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
        result.append(", product: ");
        result.append(product);
        result.append(", material: ");
        result.append(material);
        result.append(", method: ");
        result.append(method);
        result.append(", inks: ");
        result.append(inks);
        result.append(", retonedFrom: ");
        result.append(retonedFrom);
        result.append(')');
        return result.toString();
    }

} //DesignImpl
