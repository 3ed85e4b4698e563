/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.design;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Assignment</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Which ink a colour of the art prints in.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.design.Assignment#getColour <em>Colour</em>}</li>
 *   <li>{@link org.pollex.model.design.Assignment#getInk <em>Ink</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.design.DesignPackage#getAssignment()
 * @generated
 */
public interface Assignment extends EObject {
    /**
     * Returns the value of the '<em><b>Colour</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Colour of the art, #rrggbb.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Colour</em>' attribute.
     * @see #setColour(String)
     * @see org.pollex.model.design.DesignPackage#getAssignment_Colour()
     * @generated
     */
    String getColour();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Assignment#getColour <em>Colour</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Colour</em>' attribute.
     * @see #getColour()
     * @generated
     */
    void setColour(String value);

    /**
     * Returns the value of the '<em><b>Ink</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Id of the ink; bare for bare stock.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Ink</em>' attribute.
     * @see #setInk(String)
     * @see org.pollex.model.design.DesignPackage#getAssignment_Ink()
     * @generated
     */
    String getInk();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Assignment#getInk <em>Ink</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Ink</em>' attribute.
     * @see #getInk()
     * @generated
     */
    void setInk(String value);

} // Assignment
