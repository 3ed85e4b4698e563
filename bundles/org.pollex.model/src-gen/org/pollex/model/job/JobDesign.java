/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.job;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Design</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A design of the job.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.job.JobDesign#getPath <em>Path</em>}</li>
 *   <li>{@link org.pollex.model.job.JobDesign#getQuantity <em>Quantity</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.job.JobPackage#getJobDesign()
 * @generated
 */
public interface JobDesign extends EObject {
    /**
     * Returns the value of the '<em><b>Path</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Path of the design, relative to the job.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Path</em>' attribute.
     * @see #setPath(String)
     * @see org.pollex.model.job.JobPackage#getJobDesign_Path()
     * @generated
     */
    String getPath();

    /**
     * Sets the value of the '{@link org.pollex.model.job.JobDesign#getPath <em>Path</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Path</em>' attribute.
     * @see #getPath()
     * @generated
     */
    void setPath(String value);

    /**
     * Returns the value of the '<em><b>Quantity</b></em>' attribute.
     * The default value is <code>"0"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Items of this design; 0 shares the quantity of the job evenly.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Quantity</em>' attribute.
     * @see #setQuantity(int)
     * @see org.pollex.model.job.JobPackage#getJobDesign_Quantity()
     * @generated
     */
    int getQuantity();

    /**
     * Sets the value of the '{@link org.pollex.model.job.JobDesign#getQuantity <em>Quantity</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Quantity</em>' attribute.
     * @see #getQuantity()
     * @generated
     */
    void setQuantity(int value);

} // JobDesign
