/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.job.util;

import org.eclipse.emf.common.notify.Adapter;
import org.eclipse.emf.common.notify.Notifier;

import org.eclipse.emf.common.notify.impl.AdapterFactoryImpl;

import org.eclipse.emf.ecore.EObject;

import org.pollex.model.job.*;

/**
 * <!-- begin-user-doc -->
 * The <b>Adapter Factory</b> for the model.
 * It provides an adapter <code>createXXX</code> method for each class of the model.
 * <!-- end-user-doc -->
 * @see org.pollex.model.job.JobPackage
 * @generated
 */
public class JobAdapterFactory extends AdapterFactoryImpl {
    /**
     * The cached model package.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    protected static JobPackage modelPackage;

    /**
     * Creates an instance of the adapter factory.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    public JobAdapterFactory() {
        if (modelPackage == null) {
            modelPackage = JobPackage.eINSTANCE;
        }
    }

    /**
     * Returns whether this factory is applicable for the type of the object.
     * <!-- begin-user-doc -->
     * This implementation returns <code>true</code> if the object is either the model's package or is an instance object of the model.
     * <!-- end-user-doc -->
     * @return whether this factory is applicable for the type of the object.
     * @generated
     */
    @Override
    public boolean isFactoryForType(Object object) {
        if (object == modelPackage) {
            return true;
        }
        if (object instanceof EObject) {
            return ((EObject)object).eClass().getEPackage() == modelPackage;
        }
        return false;
    }

    /**
     * The switch that delegates to the <code>createXXX</code> methods.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    protected JobSwitch<Adapter> modelSwitch =
        new JobSwitch<Adapter>() {
            @Override
            public Adapter caseJob(Job object) {
                return createJobAdapter();
            }
            @Override
            public Adapter caseJobDesign(JobDesign object) {
                return createJobDesignAdapter();
            }
            @Override
            public Adapter caseRevision(Revision object) {
                return createRevisionAdapter();
            }
            @Override
            public Adapter caseSnapshot(Snapshot object) {
                return createSnapshotAdapter();
            }
            @Override
            public Adapter caseSignOff(SignOff object) {
                return createSignOffAdapter();
            }
            @Override
            public Adapter caseWaiver(Waiver object) {
                return createWaiverAdapter();
            }
            @Override
            public Adapter defaultCase(EObject object) {
                return createEObjectAdapter();
            }
        };

    /**
     * Creates an adapter for the <code>target</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param target the object to adapt.
     * @return the adapter for the <code>target</code>.
     * @generated
     */
    @Override
    public Adapter createAdapter(Notifier target) {
        return modelSwitch.doSwitch((EObject)target);
    }


    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.job.Job <em>Job</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.job.Job
     * @generated
     */
    public Adapter createJobAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.job.JobDesign <em>Design</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.job.JobDesign
     * @generated
     */
    public Adapter createJobDesignAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.job.Revision <em>Revision</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.job.Revision
     * @generated
     */
    public Adapter createRevisionAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.job.Snapshot <em>Snapshot</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.job.Snapshot
     * @generated
     */
    public Adapter createSnapshotAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.job.SignOff <em>Sign Off</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.job.SignOff
     * @generated
     */
    public Adapter createSignOffAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.job.Waiver <em>Waiver</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.job.Waiver
     * @generated
     */
    public Adapter createWaiverAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for the default case.
     * <!-- begin-user-doc -->
     * This default implementation returns null.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @generated
     */
    public Adapter createEObjectAdapter() {
        return null;
    }

} //JobAdapterFactory
