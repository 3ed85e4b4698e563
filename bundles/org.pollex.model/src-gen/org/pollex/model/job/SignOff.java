/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.job;

import java.time.Instant;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Sign Off</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Approval of a revision.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.job.SignOff#getWho <em>Who</em>}</li>
 *   <li>{@link org.pollex.model.job.SignOff#getWhen <em>When</em>}</li>
 *   <li>{@link org.pollex.model.job.SignOff#getNote <em>Note</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.job.JobPackage#getSignOff()
 * @generated
 */
public interface SignOff extends EObject {
    /**
     * Returns the value of the '<em><b>Who</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Who</em>' attribute.
     * @see #setWho(String)
     * @see org.pollex.model.job.JobPackage#getSignOff_Who()
     * @generated
     */
    String getWho();

    /**
     * Sets the value of the '{@link org.pollex.model.job.SignOff#getWho <em>Who</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Who</em>' attribute.
     * @see #getWho()
     * @generated
     */
    void setWho(String value);

    /**
     * Returns the value of the '<em><b>When</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>When</em>' attribute.
     * @see #setWhen(Instant)
     * @see org.pollex.model.job.JobPackage#getSignOff_When()
     * @generated
     */
    Instant getWhen();

    /**
     * Sets the value of the '{@link org.pollex.model.job.SignOff#getWhen <em>When</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>When</em>' attribute.
     * @see #getWhen()
     * @generated
     */
    void setWhen(Instant value);

    /**
     * Returns the value of the '<em><b>Note</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Note</em>' attribute.
     * @see #setNote(String)
     * @see org.pollex.model.job.JobPackage#getSignOff_Note()
     * @generated
     */
    String getNote();

    /**
     * Sets the value of the '{@link org.pollex.model.job.SignOff#getNote <em>Note</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Note</em>' attribute.
     * @see #getNote()
     * @generated
     */
    void setNote(String value);

} // SignOff
