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

import org.pollex.model.design.Assignment;
import org.pollex.model.design.DesignPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Assignment</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.design.impl.AssignmentImpl#getColour <em>Colour</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.AssignmentImpl#getInk <em>Ink</em>}</li>
 * </ul>
 *
 * @generated
 */
public class AssignmentImpl extends MinimalEObjectImpl.Container implements Assignment {
    /**
     * The default value of the '{@link #getColour() <em>Colour</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getColour()
     * @generated
     * @ordered
     */
    protected static final String COLOUR_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getColour() <em>Colour</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getColour()
     * @generated
     * @ordered
     */
    protected String colour = COLOUR_EDEFAULT;

    /**
     * The default value of the '{@link #getInk() <em>Ink</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getInk()
     * @generated
     * @ordered
     */
    protected static final String INK_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getInk() <em>Ink</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getInk()
     * @generated
     * @ordered
     */
    protected String ink = INK_EDEFAULT;

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    protected AssignmentImpl() {
        super();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    protected EClass eStaticClass() {
        return DesignPackage.Literals.ASSIGNMENT;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getColour() {
        return colour;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setColour(String newColour) {
        String oldColour = colour;
        colour = newColour;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.ASSIGNMENT__COLOUR, oldColour, colour));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getInk() {
        return ink;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setInk(String newInk) {
        String oldInk = ink;
        ink = newInk;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.ASSIGNMENT__INK, oldInk, ink));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Object eGet(int featureID, boolean resolve, boolean coreType) {
        switch (featureID) {
            case DesignPackage.ASSIGNMENT__COLOUR:
                return getColour();
            case DesignPackage.ASSIGNMENT__INK:
                return getInk();
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
            case DesignPackage.ASSIGNMENT__COLOUR:
                setColour((String)newValue);
                return;
            case DesignPackage.ASSIGNMENT__INK:
                setInk((String)newValue);
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
            case DesignPackage.ASSIGNMENT__COLOUR:
                setColour(COLOUR_EDEFAULT);
                return;
            case DesignPackage.ASSIGNMENT__INK:
                setInk(INK_EDEFAULT);
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
            case DesignPackage.ASSIGNMENT__COLOUR:
                return COLOUR_EDEFAULT == null ? colour != null : !COLOUR_EDEFAULT.equals(colour);
            case DesignPackage.ASSIGNMENT__INK:
                return INK_EDEFAULT == null ? ink != null : !INK_EDEFAULT.equals(ink);
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
        result.append(" (colour: ");
        result.append(colour);
        result.append(", ink: ");
        result.append(ink);
        result.append(')');
        return result.toString();
    }

} //AssignmentImpl
