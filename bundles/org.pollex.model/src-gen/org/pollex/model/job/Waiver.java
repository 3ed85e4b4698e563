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
 * A representation of the model object '<em><b>Waiver</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A finding that is meant.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.job.Waiver#getCheck <em>Check</em>}</li>
 *   <li>{@link org.pollex.model.job.Waiver#getDesign <em>Design</em>}</li>
 *   <li>{@link org.pollex.model.job.Waiver#getSide <em>Side</em>}</li>
 *   <li>{@link org.pollex.model.job.Waiver#getFingerprint <em>Fingerprint</em>}</li>
 *   <li>{@link org.pollex.model.job.Waiver#getReason <em>Reason</em>}</li>
 *   <li>{@link org.pollex.model.job.Waiver#getWho <em>Who</em>}</li>
 *   <li>{@link org.pollex.model.job.Waiver#getWhen <em>When</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.job.JobPackage#getWaiver()
 * @generated
 */
public interface Waiver extends EObject {
    /**
     * Returns the value of the '<em><b>Check</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Id of the check.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Check</em>' attribute.
     * @see #setCheck(String)
     * @see org.pollex.model.job.JobPackage#getWaiver_Check()
     * @generated
     */
    String getCheck();

    /**
     * Sets the value of the '{@link org.pollex.model.job.Waiver#getCheck <em>Check</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Check</em>' attribute.
     * @see #getCheck()
     * @generated
     */
    void setCheck(String value);

    /**
     * Returns the value of the '<em><b>Design</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Path of the design, relative to the job.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Design</em>' attribute.
     * @see #setDesign(String)
     * @see org.pollex.model.job.JobPackage#getWaiver_Design()
     * @generated
     */
    String getDesign();

    /**
     * Sets the value of the '{@link org.pollex.model.job.Waiver#getDesign <em>Design</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Design</em>' attribute.
     * @see #getDesign()
     * @generated
     */
    void setDesign(String value);

    /**
     * Returns the value of the '<em><b>Side</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Name of the side.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Side</em>' attribute.
     * @see #setSide(String)
     * @see org.pollex.model.job.JobPackage#getWaiver_Side()
     * @generated
     */
    String getSide();

    /**
     * Sets the value of the '{@link org.pollex.model.job.Waiver#getSide <em>Side</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Side</em>' attribute.
     * @see #getSide()
     * @generated
     */
    void setSide(String value);

    /**
     * Returns the value of the '<em><b>Fingerprint</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Fingerprint of the place.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Fingerprint</em>' attribute.
     * @see #setFingerprint(String)
     * @see org.pollex.model.job.JobPackage#getWaiver_Fingerprint()
     * @generated
     */
    String getFingerprint();

    /**
     * Sets the value of the '{@link org.pollex.model.job.Waiver#getFingerprint <em>Fingerprint</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Fingerprint</em>' attribute.
     * @see #getFingerprint()
     * @generated
     */
    void setFingerprint(String value);

    /**
     * Returns the value of the '<em><b>Reason</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Why it is meant.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Reason</em>' attribute.
     * @see #setReason(String)
     * @see org.pollex.model.job.JobPackage#getWaiver_Reason()
     * @generated
     */
    String getReason();

    /**
     * Sets the value of the '{@link org.pollex.model.job.Waiver#getReason <em>Reason</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Reason</em>' attribute.
     * @see #getReason()
     * @generated
     */
    void setReason(String value);

    /**
     * Returns the value of the '<em><b>Who</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Who decided.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Who</em>' attribute.
     * @see #setWho(String)
     * @see org.pollex.model.job.JobPackage#getWaiver_Who()
     * @generated
     */
    String getWho();

    /**
     * Sets the value of the '{@link org.pollex.model.job.Waiver#getWho <em>Who</em>}' attribute.
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
     * @see org.pollex.model.job.JobPackage#getWaiver_When()
     * @generated
     */
    Instant getWhen();

    /**
     * Sets the value of the '{@link org.pollex.model.job.Waiver#getWhen <em>When</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>When</em>' attribute.
     * @see #getWhen()
     * @generated
     */
    void setWhen(Instant value);

} // Waiver
