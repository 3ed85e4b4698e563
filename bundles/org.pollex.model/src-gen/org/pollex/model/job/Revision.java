/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.job;

import java.time.Instant;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Revision</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * An immutable state of the designs of a job.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.job.Revision#getNumber <em>Number</em>}</li>
 *   <li>{@link org.pollex.model.job.Revision#getWhen <em>When</em>}</li>
 *   <li>{@link org.pollex.model.job.Revision#getWho <em>Who</em>}</li>
 *   <li>{@link org.pollex.model.job.Revision#getNote <em>Note</em>}</li>
 *   <li>{@link org.pollex.model.job.Revision#getSnapshots <em>Snapshots</em>}</li>
 *   <li>{@link org.pollex.model.job.Revision#getSignOff <em>Sign Off</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.job.JobPackage#getRevision()
 * @generated
 */
public interface Revision extends EObject {
    /**
     * Returns the value of the '<em><b>Number</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Counts from 1.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Number</em>' attribute.
     * @see #setNumber(int)
     * @see org.pollex.model.job.JobPackage#getRevision_Number()
     * @generated
     */
    int getNumber();

    /**
     * Sets the value of the '{@link org.pollex.model.job.Revision#getNumber <em>Number</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Number</em>' attribute.
     * @see #getNumber()
     * @generated
     */
    void setNumber(int value);

    /**
     * Returns the value of the '<em><b>When</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Moment of the snapshot, UTC.
     * <!-- end-model-doc -->
     * @return the value of the '<em>When</em>' attribute.
     * @see #setWhen(Instant)
     * @see org.pollex.model.job.JobPackage#getRevision_When()
     * @generated
     */
    Instant getWhen();

    /**
     * Sets the value of the '{@link org.pollex.model.job.Revision#getWhen <em>When</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>When</em>' attribute.
     * @see #getWhen()
     * @generated
     */
    void setWhen(Instant value);

    /**
     * Returns the value of the '<em><b>Who</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Who</em>' attribute.
     * @see #setWho(String)
     * @see org.pollex.model.job.JobPackage#getRevision_Who()
     * @generated
     */
    String getWho();

    /**
     * Sets the value of the '{@link org.pollex.model.job.Revision#getWho <em>Who</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Who</em>' attribute.
     * @see #getWho()
     * @generated
     */
    void setWho(String value);

    /**
     * Returns the value of the '<em><b>Note</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Note</em>' attribute.
     * @see #setNote(String)
     * @see org.pollex.model.job.JobPackage#getRevision_Note()
     * @generated
     */
    String getNote();

    /**
     * Sets the value of the '{@link org.pollex.model.job.Revision#getNote <em>Note</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Note</em>' attribute.
     * @see #getNote()
     * @generated
     */
    void setNote(String value);

    /**
     * Returns the value of the '<em><b>Snapshots</b></em>' containment reference list.
     * The list contents are of type {@link org.pollex.model.job.Snapshot}.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Snapshots</em>' containment reference list.
     * @see org.pollex.model.job.JobPackage#getRevision_Snapshots()
     * @generated
     */
    EList<Snapshot> getSnapshots();

    /**
     * Returns the value of the '<em><b>Sign Off</b></em>' containment reference.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Unset until somebody approves.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Sign Off</em>' containment reference.
     * @see #setSignOff(SignOff)
     * @see org.pollex.model.job.JobPackage#getRevision_SignOff()
     * @generated
     */
    SignOff getSignOff();

    /**
     * Sets the value of the '{@link org.pollex.model.job.Revision#getSignOff <em>Sign Off</em>}' containment reference.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Sign Off</em>' containment reference.
     * @see #getSignOff()
     * @generated
     */
    void setSignOff(SignOff value);

} // Revision
