/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.design;

import org.eclipse.emf.ecore.EFactory;

/**
 * <!-- begin-user-doc -->
 * The <b>Factory</b> for the model.
 * It provides a create method for each non-abstract class of the model.
 * <!-- end-user-doc -->
 * @see org.pollex.model.design.DesignPackage
 * @generated
 */
public interface DesignFactory extends EFactory {
    /**
     * The singleton instance of the factory.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    DesignFactory eINSTANCE = org.pollex.model.design.impl.DesignFactoryImpl.init();

    /**
     * Returns a new object of class '<em>Design</em>'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return a new object of class '<em>Design</em>'.
     * @generated
     */
    Design createDesign();

    /**
     * Returns a new object of class '<em>Side</em>'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return a new object of class '<em>Side</em>'.
     * @generated
     */
    Side createSide();

    /**
     * Returns a new object of class '<em>Layer</em>'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return a new object of class '<em>Layer</em>'.
     * @generated
     */
    Layer createLayer();

    /**
     * Returns a new object of class '<em>Placement</em>'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return a new object of class '<em>Placement</em>'.
     * @generated
     */
    Placement createPlacement();

    /**
     * Returns a new object of class '<em>Retoning</em>'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return a new object of class '<em>Retoning</em>'.
     * @generated
     */
    Retoning createRetoning();

    /**
     * Returns a new object of class '<em>Assignment</em>'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return a new object of class '<em>Assignment</em>'.
     * @generated
     */
    Assignment createAssignment();

    /**
     * Returns a new object of class '<em>Text Line</em>'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return a new object of class '<em>Text Line</em>'.
     * @generated
     */
    TextLine createTextLine();

    /**
     * Returns a new object of class '<em>Plain Shape</em>'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return a new object of class '<em>Plain Shape</em>'.
     * @generated
     */
    PlainShape createPlainShape();

    /**
     * Returns a new object of class '<em>Unknown Mark</em>'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return a new object of class '<em>Unknown Mark</em>'.
     * @generated
     */
    UnknownMark createUnknownMark();

    /**
     * Returns a new object of class '<em>Guide</em>'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return a new object of class '<em>Guide</em>'.
     * @generated
     */
    Guide createGuide();

    /**
     * Returns the package supported by this factory.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the package supported by this factory.
     * @generated
     */
    DesignPackage getDesignPackage();

} //DesignFactory
