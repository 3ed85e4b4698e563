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

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.pollex.model.design.DesignPackage;
import org.pollex.model.design.Guide;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Side;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Side</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.design.impl.SideImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.SideImpl#getLayers <em>Layers</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.SideImpl#getGuides <em>Guides</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SideImpl extends MinimalEObjectImpl.Container implements Side {
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
     * The cached value of the '{@link #getLayers() <em>Layers</em>}' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getLayers()
     * @generated
     * @ordered
     */
    protected EList<Layer> layers;

    /**
     * The cached value of the '{@link #getGuides() <em>Guides</em>}' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getGuides()
     * @generated
     * @ordered
     */
    protected EList<Guide> guides;

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    protected SideImpl() {
        super();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    protected EClass eStaticClass() {
        return DesignPackage.Literals.SIDE;
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
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.SIDE__NAME, oldName, name));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public EList<Layer> getLayers() {
        if (layers == null) {
            layers = new EObjectContainmentEList<Layer>(Layer.class, this, DesignPackage.SIDE__LAYERS);
        }
        return layers;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public EList<Guide> getGuides() {
        if (guides == null) {
            guides = new EObjectContainmentEList<Guide>(Guide.class, this, DesignPackage.SIDE__GUIDES);
        }
        return guides;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
        switch (featureID) {
            case DesignPackage.SIDE__LAYERS:
                return ((InternalEList<?>)getLayers()).basicRemove(otherEnd, msgs);
            case DesignPackage.SIDE__GUIDES:
                return ((InternalEList<?>)getGuides()).basicRemove(otherEnd, msgs);
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
            case DesignPackage.SIDE__NAME:
                return getName();
            case DesignPackage.SIDE__LAYERS:
                return getLayers();
            case DesignPackage.SIDE__GUIDES:
                return getGuides();
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
            case DesignPackage.SIDE__NAME:
                setName((String)newValue);
                return;
            case DesignPackage.SIDE__LAYERS:
                getLayers().clear();
                getLayers().addAll((Collection<? extends Layer>)newValue);
                return;
            case DesignPackage.SIDE__GUIDES:
                getGuides().clear();
                getGuides().addAll((Collection<? extends Guide>)newValue);
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
            case DesignPackage.SIDE__NAME:
                setName(NAME_EDEFAULT);
                return;
            case DesignPackage.SIDE__LAYERS:
                getLayers().clear();
                return;
            case DesignPackage.SIDE__GUIDES:
                getGuides().clear();
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
            case DesignPackage.SIDE__NAME:
                return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
            case DesignPackage.SIDE__LAYERS:
                return layers != null && !layers.isEmpty();
            case DesignPackage.SIDE__GUIDES:
                return guides != null && !guides.isEmpty();
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
        result.append(')');
        return result.toString();
    }

} //SideImpl
