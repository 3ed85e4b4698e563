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
 * A representation of the model object '<em><b>Snapshot</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A design as it was: its path and the SHA-256 of its file.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.job.Snapshot#getPath <em>Path</em>}</li>
 *   <li>{@link org.pollex.model.job.Snapshot#getSha256 <em>Sha256</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.job.JobPackage#getSnapshot()
 * @generated
 */
public interface Snapshot extends EObject {
    /**
     * Returns the value of the '<em><b>Path</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Path</em>' attribute.
     * @see #setPath(String)
     * @see org.pollex.model.job.JobPackage#getSnapshot_Path()
     * @generated
     */
    String getPath();

    /**
     * Sets the value of the '{@link org.pollex.model.job.Snapshot#getPath <em>Path</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Path</em>' attribute.
     * @see #getPath()
     * @generated
     */
    void setPath(String value);

    /**
     * Returns the value of the '<em><b>Sha256</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Sha256</em>' attribute.
     * @see #setSha256(String)
     * @see org.pollex.model.job.JobPackage#getSnapshot_Sha256()
     * @generated
     */
    String getSha256();

    /**
     * Sets the value of the '{@link org.pollex.model.job.Snapshot#getSha256 <em>Sha256</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Sha256</em>' attribute.
     * @see #getSha256()
     * @generated
     */
    void setSha256(String value);

} // Snapshot
