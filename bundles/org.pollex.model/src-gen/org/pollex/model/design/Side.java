/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.design;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Side</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What is printed on one face.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.design.Side#getName <em>Name</em>}</li>
 *   <li>{@link org.pollex.model.design.Side#getLayers <em>Layers</em>}</li>
 *   <li>{@link org.pollex.model.design.Side#getGuides <em>Guides</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.design.DesignPackage#getSide()
 * @generated
 */
public interface Side extends EObject {
    /**
     * Returns the value of the '<em><b>Name</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Name of the face: front or back.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Name</em>' attribute.
     * @see #setName(String)
     * @see org.pollex.model.design.DesignPackage#getSide_Name()
     * @generated
     */
    String getName();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Side#getName <em>Name</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Name</em>' attribute.
     * @see #getName()
     * @generated
     */
    void setName(String value);

    /**
     * Returns the value of the '<em><b>Layers</b></em>' containment reference list.
     * The list contents are of type {@link org.pollex.model.design.Layer}.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Lowest first.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Layers</em>' containment reference list.
     * @see org.pollex.model.design.DesignPackage#getSide_Layers()
     * @generated
     */
    EList<Layer> getLayers();

    /**
     * Returns the value of the '<em><b>Guides</b></em>' containment reference list.
     * The list contents are of type {@link org.pollex.model.design.Guide}.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Lines that marks keep to while they are moved; they do not print.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Guides</em>' containment reference list.
     * @see org.pollex.model.design.DesignPackage#getSide_Guides()
     * @generated
     */
    EList<Guide> getGuides();

} // Side
