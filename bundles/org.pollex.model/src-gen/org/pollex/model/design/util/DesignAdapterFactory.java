/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.design.util;

import org.eclipse.emf.common.notify.Adapter;
import org.eclipse.emf.common.notify.Notifier;

import org.eclipse.emf.common.notify.impl.AdapterFactoryImpl;

import org.eclipse.emf.ecore.EObject;

import org.pollex.model.design.*;

/**
 * <!-- begin-user-doc -->
 * The <b>Adapter Factory</b> for the model.
 * It provides an adapter <code>createXXX</code> method for each class of the model.
 * <!-- end-user-doc -->
 * @see org.pollex.model.design.DesignPackage
 * @generated
 */
public class DesignAdapterFactory extends AdapterFactoryImpl {
    /**
     * The cached model package.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    protected static DesignPackage modelPackage;

    /**
     * Creates an instance of the adapter factory.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    public DesignAdapterFactory() {
        if (modelPackage == null) {
            modelPackage = DesignPackage.eINSTANCE;
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
    protected DesignSwitch<Adapter> modelSwitch =
        new DesignSwitch<Adapter>() {
            @Override
            public Adapter caseDesign(Design object) {
                return createDesignAdapter();
            }
            @Override
            public Adapter caseSide(Side object) {
                return createSideAdapter();
            }
            @Override
            public Adapter caseLayer(Layer object) {
                return createLayerAdapter();
            }
            @Override
            public Adapter caseMark(Mark object) {
                return createMarkAdapter();
            }
            @Override
            public Adapter casePlacement(Placement object) {
                return createPlacementAdapter();
            }
            @Override
            public Adapter caseRetoning(Retoning object) {
                return createRetoningAdapter();
            }
            @Override
            public Adapter caseAssignment(Assignment object) {
                return createAssignmentAdapter();
            }
            @Override
            public Adapter caseTextLine(TextLine object) {
                return createTextLineAdapter();
            }
            @Override
            public Adapter casePlainShape(PlainShape object) {
                return createPlainShapeAdapter();
            }
            @Override
            public Adapter caseUnknownMark(UnknownMark object) {
                return createUnknownMarkAdapter();
            }
            @Override
            public Adapter caseGuide(Guide object) {
                return createGuideAdapter();
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
     * Creates a new adapter for an object of class '{@link org.pollex.model.design.Design <em>Design</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.design.Design
     * @generated
     */
    public Adapter createDesignAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.design.Side <em>Side</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.design.Side
     * @generated
     */
    public Adapter createSideAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.design.Layer <em>Layer</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.design.Layer
     * @generated
     */
    public Adapter createLayerAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.design.Mark <em>Mark</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.design.Mark
     * @generated
     */
    public Adapter createMarkAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.design.Placement <em>Placement</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.design.Placement
     * @generated
     */
    public Adapter createPlacementAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.design.Retoning <em>Retoning</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.design.Retoning
     * @generated
     */
    public Adapter createRetoningAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.design.Assignment <em>Assignment</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.design.Assignment
     * @generated
     */
    public Adapter createAssignmentAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.design.TextLine <em>Text Line</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.design.TextLine
     * @generated
     */
    public Adapter createTextLineAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.design.PlainShape <em>Plain Shape</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.design.PlainShape
     * @generated
     */
    public Adapter createPlainShapeAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.design.UnknownMark <em>Unknown Mark</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.design.UnknownMark
     * @generated
     */
    public Adapter createUnknownMarkAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.design.Guide <em>Guide</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.design.Guide
     * @generated
     */
    public Adapter createGuideAdapter() {
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

} //DesignAdapterFactory
