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
 * A representation of the model object '<em><b>Guide</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A straight line across a side that marks keep to while they are moved.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.design.Guide#isUpright <em>Upright</em>}</li>
 *   <li>{@link org.pollex.model.design.Guide#getAt <em>At</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.design.DesignPackage#getGuide()
 * @generated
 */
public interface Guide extends EObject {
    /**
     * Returns the value of the '<em><b>Upright</b></em>' attribute.
     * The default value is <code>"false"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Whether the line runs up and down, at an x; else it is level, at a y.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Upright</em>' attribute.
     * @see #setUpright(boolean)
     * @see org.pollex.model.design.DesignPackage#getGuide_Upright()
     * @generated
     */
    boolean isUpright();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Guide#isUpright <em>Upright</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Upright</em>' attribute.
     * @see #isUpright()
     * @generated
     */
    void setUpright(boolean value);

    /**
     * Returns the value of the '<em><b>At</b></em>' attribute.
     * The default value is <code>"0.0"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Place of the line, mm; a y counts downwards.
     * <!-- end-model-doc -->
     * @return the value of the '<em>At</em>' attribute.
     * @see #setAt(double)
     * @see org.pollex.model.design.DesignPackage#getGuide_At()
     * @generated
     */
    double getAt();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Guide#getAt <em>At</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>At</em>' attribute.
     * @see #getAt()
     * @generated
     */
    void setAt(double value);

} // Guide
