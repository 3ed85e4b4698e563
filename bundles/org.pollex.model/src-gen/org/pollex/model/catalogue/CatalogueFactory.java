/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.catalogue;

import org.eclipse.emf.ecore.EFactory;

/**
 * <!-- begin-user-doc -->
 * The <b>Factory</b> for the model.
 * It provides a create method for each non-abstract class of the model.
 * <!-- end-user-doc -->
 * @see org.pollex.model.catalogue.CataloguePackage
 * @generated
 */
public interface CatalogueFactory extends EFactory {
    /**
     * The singleton instance of the factory.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    CatalogueFactory eINSTANCE = org.pollex.model.catalogue.impl.CatalogueFactoryImpl.init();

    /**
     * Returns a new object of class '<em>Catalogue</em>'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return a new object of class '<em>Catalogue</em>'.
     * @generated
     */
    Catalogue createCatalogue();

    /**
     * Returns a new object of class '<em>Setting</em>'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return a new object of class '<em>Setting</em>'.
     * @generated
     */
    Setting createSetting();

    /**
     * Returns a new object of class '<em>Family</em>'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return a new object of class '<em>Family</em>'.
     * @generated
     */
    Family createFamily();

    /**
     * Returns a new object of class '<em>Product</em>'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return a new object of class '<em>Product</em>'.
     * @generated
     */
    Product createProduct();

    /**
     * Returns a new object of class '<em>Face</em>'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return a new object of class '<em>Face</em>'.
     * @generated
     */
    Face createFace();

    /**
     * Returns a new object of class '<em>Zone</em>'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return a new object of class '<em>Zone</em>'.
     * @generated
     */
    Zone createZone();

    /**
     * Returns a new object of class '<em>Material</em>'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return a new object of class '<em>Material</em>'.
     * @generated
     */
    Material createMaterial();

    /**
     * Returns a new object of class '<em>Texture</em>'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return a new object of class '<em>Texture</em>'.
     * @generated
     */
    Texture createTexture();

    /**
     * Returns a new object of class '<em>Photo Area</em>'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return a new object of class '<em>Photo Area</em>'.
     * @generated
     */
    PhotoArea createPhotoArea();

    /**
     * Returns a new object of class '<em>Grey Patch</em>'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return a new object of class '<em>Grey Patch</em>'.
     * @generated
     */
    GreyPatch createGreyPatch();

    /**
     * Returns a new object of class '<em>Ink</em>'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return a new object of class '<em>Ink</em>'.
     * @generated
     */
    Ink createInk();

    /**
     * Returns a new object of class '<em>Method</em>'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return a new object of class '<em>Method</em>'.
     * @generated
     */
    Method createMethod();

    /**
     * Returns the package supported by this factory.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the package supported by this factory.
     * @generated
     */
    CataloguePackage getCataloguePackage();

} //CatalogueFactory
