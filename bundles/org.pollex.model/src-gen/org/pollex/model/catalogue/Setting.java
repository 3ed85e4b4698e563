/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.catalogue;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Setting</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A named number with its unit.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.catalogue.Setting#getKey <em>Key</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Setting#getValue <em>Value</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Setting#getUnit <em>Unit</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Setting#getNote <em>Note</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.catalogue.CataloguePackage#getSetting()
 * @generated
 */
public interface Setting extends EObject {
    /**
     * Returns the value of the '<em><b>Key</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Name by which code asks for the number.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Key</em>' attribute.
     * @see #setKey(String)
     * @see org.pollex.model.catalogue.CataloguePackage#getSetting_Key()
     * @generated
     */
    String getKey();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Setting#getKey <em>Key</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Key</em>' attribute.
     * @see #getKey()
     * @generated
     */
    void setKey(String value);

    /**
     * Returns the value of the '<em><b>Value</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * The number, in the unit.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Value</em>' attribute.
     * @see #setValue(double)
     * @see org.pollex.model.catalogue.CataloguePackage#getSetting_Value()
     * @generated
     */
    double getValue();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Setting#getValue <em>Value</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Value</em>' attribute.
     * @see #getValue()
     * @generated
     */
    void setValue(double value);

    /**
     * Returns the value of the '<em><b>Unit</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * mm, L*, %, h; empty for a plain ratio.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Unit</em>' attribute.
     * @see #setUnit(String)
     * @see org.pollex.model.catalogue.CataloguePackage#getSetting_Unit()
     * @generated
     */
    String getUnit();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Setting#getUnit <em>Unit</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Unit</em>' attribute.
     * @see #getUnit()
     * @generated
     */
    void setUnit(String value);

    /**
     * Returns the value of the '<em><b>Note</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Why it is this number.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Note</em>' attribute.
     * @see #setNote(String)
     * @see org.pollex.model.catalogue.CataloguePackage#getSetting_Note()
     * @generated
     */
    String getNote();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Setting#getNote <em>Note</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Note</em>' attribute.
     * @see #getNote()
     * @generated
     */
    void setNote(String value);

} // Setting
