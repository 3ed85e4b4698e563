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
 * A representation of the model object '<em><b>Face</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One printed face of a product.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.catalogue.Face#getName <em>Name</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Face#isMirrored <em>Mirrored</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Face#getZones <em>Zones</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Face#getWear <em>Wear</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.catalogue.CataloguePackage#getFace()
 * @generated
 */
public interface Face extends EObject {
    /**
     * Returns the value of the '<em><b>Name</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * front, back, or a name of the family.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Name</em>' attribute.
     * @see #setName(String)
     * @see org.pollex.model.catalogue.CataloguePackage#getFace_Name()
     * @generated
     */
    String getName();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Face#getName <em>Name</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Name</em>' attribute.
     * @see #getName()
     * @generated
     */
    void setName(String value);

    /**
     * Returns the value of the '<em><b>Mirrored</b></em>' attribute.
     * The default value is <code>"false"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * True where the outline is seen from behind.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Mirrored</em>' attribute.
     * @see #setMirrored(boolean)
     * @see org.pollex.model.catalogue.CataloguePackage#getFace_Mirrored()
     * @generated
     */
    boolean isMirrored();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Face#isMirrored <em>Mirrored</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Mirrored</em>' attribute.
     * @see #isMirrored()
     * @generated
     */
    void setMirrored(boolean value);

    /**
     * Returns the value of the '<em><b>Zones</b></em>' containment reference list.
     * The list contents are of type {@link org.pollex.model.catalogue.Zone}.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Zones</em>' containment reference list.
     * @see org.pollex.model.catalogue.CataloguePackage#getFace_Zones()
     * @generated
     */
    EList<Zone> getZones();

    /**
     * Returns the value of the '<em><b>Wear</b></em>' containment reference list.
     * The list contents are of type {@link org.pollex.model.catalogue.Setting}.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Parameters of the wear field of the family.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Wear</em>' containment reference list.
     * @see org.pollex.model.catalogue.CataloguePackage#getFace_Wear()
     * @generated
     */
    EList<Setting> getWear();

} // Face
