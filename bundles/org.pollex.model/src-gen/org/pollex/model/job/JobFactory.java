/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.job;

import org.eclipse.emf.ecore.EFactory;

/**
 * <!-- begin-user-doc -->
 * The <b>Factory</b> for the model.
 * It provides a create method for each non-abstract class of the model.
 * <!-- end-user-doc -->
 * @see org.pollex.model.job.JobPackage
 * @generated
 */
public interface JobFactory extends EFactory {
    /**
     * The singleton instance of the factory.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    JobFactory eINSTANCE = org.pollex.model.job.impl.JobFactoryImpl.init();

    /**
     * Returns a new object of class '<em>Job</em>'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return a new object of class '<em>Job</em>'.
     * @generated
     */
    Job createJob();

    /**
     * Returns a new object of class '<em>Design</em>'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return a new object of class '<em>Design</em>'.
     * @generated
     */
    JobDesign createJobDesign();

    /**
     * Returns a new object of class '<em>Revision</em>'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return a new object of class '<em>Revision</em>'.
     * @generated
     */
    Revision createRevision();

    /**
     * Returns a new object of class '<em>Snapshot</em>'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return a new object of class '<em>Snapshot</em>'.
     * @generated
     */
    Snapshot createSnapshot();

    /**
     * Returns a new object of class '<em>Sign Off</em>'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return a new object of class '<em>Sign Off</em>'.
     * @generated
     */
    SignOff createSignOff();

    /**
     * Returns a new object of class '<em>Waiver</em>'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return a new object of class '<em>Waiver</em>'.
     * @generated
     */
    Waiver createWaiver();

    /**
     * Returns the package supported by this factory.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the package supported by this factory.
     * @generated
     */
    JobPackage getJobPackage();

} //JobFactory
