/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.job;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Job</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One job of one client.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.job.Job#getFormat <em>Format</em>}</li>
 *   <li>{@link org.pollex.model.job.Job#getName <em>Name</em>}</li>
 *   <li>{@link org.pollex.model.job.Job#getClient <em>Client</em>}</li>
 *   <li>{@link org.pollex.model.job.Job#getUse <em>Use</em>}</li>
 *   <li>{@link org.pollex.model.job.Job#getQuantity <em>Quantity</em>}</li>
 *   <li>{@link org.pollex.model.job.Job#getDue <em>Due</em>}</li>
 *   <li>{@link org.pollex.model.job.Job#getNote <em>Note</em>}</li>
 *   <li>{@link org.pollex.model.job.Job#getDesigns <em>Designs</em>}</li>
 *   <li>{@link org.pollex.model.job.Job#getRevisions <em>Revisions</em>}</li>
 *   <li>{@link org.pollex.model.job.Job#getWaivers <em>Waivers</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.job.JobPackage#getJob()
 * @generated
 */
public interface Job extends EObject {
    /**
     * Returns the value of the '<em><b>Format</b></em>' attribute.
     * The default value is <code>"0"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Version of the file format.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Format</em>' attribute.
     * @see #setFormat(int)
     * @see org.pollex.model.job.JobPackage#getJob_Format()
     * @generated
     */
    int getFormat();

    /**
     * Sets the value of the '{@link org.pollex.model.job.Job#getFormat <em>Format</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Format</em>' attribute.
     * @see #getFormat()
     * @generated
     */
    void setFormat(int value);

    /**
     * Returns the value of the '<em><b>Name</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Name</em>' attribute.
     * @see #setName(String)
     * @see org.pollex.model.job.JobPackage#getJob_Name()
     * @generated
     */
    String getName();

    /**
     * Sets the value of the '{@link org.pollex.model.job.Job#getName <em>Name</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Name</em>' attribute.
     * @see #getName()
     * @generated
     */
    void setName(String value);

    /**
     * Returns the value of the '<em><b>Client</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Who ordered it.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Client</em>' attribute.
     * @see #setClient(String)
     * @see org.pollex.model.job.JobPackage#getJob_Client()
     * @generated
     */
    String getClient();

    /**
     * Sets the value of the '{@link org.pollex.model.job.Job#getClient <em>Client</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Client</em>' attribute.
     * @see #getClient()
     * @generated
     */
    void setClient(String value);

    /**
     * Returns the value of the '<em><b>Use</b></em>' attribute.
     * The literals are from the enumeration {@link org.pollex.model.job.Use}.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Use</em>' attribute.
     * @see org.pollex.model.job.Use
     * @see #setUse(Use)
     * @see org.pollex.model.job.JobPackage#getJob_Use()
     * @generated
     */
    Use getUse();

    /**
     * Sets the value of the '{@link org.pollex.model.job.Job#getUse <em>Use</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Use</em>' attribute.
     * @see org.pollex.model.job.Use
     * @see #getUse()
     * @generated
     */
    void setUse(Use value);

    /**
     * Returns the value of the '<em><b>Quantity</b></em>' attribute.
     * The default value is <code>"0"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Items in all; 0 when not known.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Quantity</em>' attribute.
     * @see #setQuantity(int)
     * @see org.pollex.model.job.JobPackage#getJob_Quantity()
     * @generated
     */
    int getQuantity();

    /**
     * Sets the value of the '{@link org.pollex.model.job.Job#getQuantity <em>Quantity</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Quantity</em>' attribute.
     * @see #getQuantity()
     * @generated
     */
    void setQuantity(int value);

    /**
     * Returns the value of the '<em><b>Due</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Day on which the items must be there.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Due</em>' attribute.
     * @see #setDue(LocalDate)
     * @see org.pollex.model.job.JobPackage#getJob_Due()
     * @generated
     */
    LocalDate getDue();

    /**
     * Sets the value of the '{@link org.pollex.model.job.Job#getDue <em>Due</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Due</em>' attribute.
     * @see #getDue()
     * @generated
     */
    void setDue(LocalDate value);

    /**
     * Returns the value of the '<em><b>Note</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Note</em>' attribute.
     * @see #setNote(String)
     * @see org.pollex.model.job.JobPackage#getJob_Note()
     * @generated
     */
    String getNote();

    /**
     * Sets the value of the '{@link org.pollex.model.job.Job#getNote <em>Note</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Note</em>' attribute.
     * @see #getNote()
     * @generated
     */
    void setNote(String value);

    /**
     * Returns the value of the '<em><b>Designs</b></em>' containment reference list.
     * The list contents are of type {@link org.pollex.model.job.JobDesign}.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Designs</em>' containment reference list.
     * @see org.pollex.model.job.JobPackage#getJob_Designs()
     * @generated
     */
    EList<JobDesign> getDesigns();

    /**
     * Returns the value of the '<em><b>Revisions</b></em>' containment reference list.
     * The list contents are of type {@link org.pollex.model.job.Revision}.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Revisions</em>' containment reference list.
     * @see org.pollex.model.job.JobPackage#getJob_Revisions()
     * @generated
     */
    EList<Revision> getRevisions();

    /**
     * Returns the value of the '<em><b>Waivers</b></em>' containment reference list.
     * The list contents are of type {@link org.pollex.model.job.Waiver}.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Waivers</em>' containment reference list.
     * @see org.pollex.model.job.JobPackage#getJob_Waivers()
     * @generated
     */
    EList<Waiver> getWaivers();

} // Job
