/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.catalogue;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Entry</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What every catalogue entry has.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.catalogue.Entry#getId <em>Id</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Entry#getName <em>Name</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Entry#getDescription <em>Description</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Entry#getSource <em>Source</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Entry#getSettings <em>Settings</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.catalogue.CataloguePackage#getEntry()
 * @generated
 */
public interface Entry extends EObject {
    /**
     * Returns the value of the '<em><b>Id</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Stable id by which designs refer to the entry.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Id</em>' attribute.
     * @see #setId(String)
     * @see org.pollex.model.catalogue.CataloguePackage#getEntry_Id()
     * @generated
     */
    String getId();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Entry#getId <em>Id</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Id</em>' attribute.
     * @see #getId()
     * @generated
     */
    void setId(String value);

    /**
     * Returns the value of the '<em><b>Name</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Name shown to people.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Name</em>' attribute.
     * @see #setName(String)
     * @see org.pollex.model.catalogue.CataloguePackage#getEntry_Name()
     * @generated
     */
    String getName();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Entry#getName <em>Name</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Name</em>' attribute.
     * @see #getName()
     * @generated
     */
    void setName(String value);

    /**
     * Returns the value of the '<em><b>Description</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Description</em>' attribute.
     * @see #setDescription(String)
     * @see org.pollex.model.catalogue.CataloguePackage#getEntry_Description()
     * @generated
     */
    String getDescription();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Entry#getDescription <em>Description</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Description</em>' attribute.
     * @see #getDescription()
     * @generated
     */
    void setDescription(String value);

    /**
     * Returns the value of the '<em><b>Source</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Where the numbers come from; common practice when no publication stands behind them.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Source</em>' attribute.
     * @see #setSource(String)
     * @see org.pollex.model.catalogue.CataloguePackage#getEntry_Source()
     * @generated
     */
    String getSource();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Entry#getSource <em>Source</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Source</em>' attribute.
     * @see #getSource()
     * @generated
     */
    void setSource(String value);

    /**
     * Returns the value of the '<em><b>Settings</b></em>' containment reference list.
     * The list contents are of type {@link org.pollex.model.catalogue.Setting}.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Further numbers that checks of this entry read, by key.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Settings</em>' containment reference list.
     * @see org.pollex.model.catalogue.CataloguePackage#getEntry_Settings()
     * @generated
     */
    EList<Setting> getSettings();

} // Entry
