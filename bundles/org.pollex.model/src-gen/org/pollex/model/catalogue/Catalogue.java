/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.catalogue;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Catalogue</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What a studio can print on and with: families, products, materials, inks, print methods.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.catalogue.Catalogue#getFormat <em>Format</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Catalogue#getName <em>Name</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Catalogue#getFamilies <em>Families</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Catalogue#getProducts <em>Products</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Catalogue#getMaterials <em>Materials</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Catalogue#getInks <em>Inks</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Catalogue#getMethods <em>Methods</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Catalogue#getSettings <em>Settings</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.catalogue.CataloguePackage#getCatalogue()
 * @generated
 */
public interface Catalogue extends EObject {
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
     * @see org.pollex.model.catalogue.CataloguePackage#getCatalogue_Format()
     * @generated
     */
    int getFormat();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Catalogue#getFormat <em>Format</em>}' attribute.
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
     * @see org.pollex.model.catalogue.CataloguePackage#getCatalogue_Name()
     * @generated
     */
    String getName();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Catalogue#getName <em>Name</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Name</em>' attribute.
     * @see #getName()
     * @generated
     */
    void setName(String value);

    /**
     * Returns the value of the '<em><b>Families</b></em>' containment reference list.
     * The list contents are of type {@link org.pollex.model.catalogue.Family}.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Families</em>' containment reference list.
     * @see org.pollex.model.catalogue.CataloguePackage#getCatalogue_Families()
     * @generated
     */
    EList<Family> getFamilies();

    /**
     * Returns the value of the '<em><b>Products</b></em>' containment reference list.
     * The list contents are of type {@link org.pollex.model.catalogue.Product}.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Products</em>' containment reference list.
     * @see org.pollex.model.catalogue.CataloguePackage#getCatalogue_Products()
     * @generated
     */
    EList<Product> getProducts();

    /**
     * Returns the value of the '<em><b>Materials</b></em>' containment reference list.
     * The list contents are of type {@link org.pollex.model.catalogue.Material}.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Materials</em>' containment reference list.
     * @see org.pollex.model.catalogue.CataloguePackage#getCatalogue_Materials()
     * @generated
     */
    EList<Material> getMaterials();

    /**
     * Returns the value of the '<em><b>Inks</b></em>' containment reference list.
     * The list contents are of type {@link org.pollex.model.catalogue.Ink}.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Inks</em>' containment reference list.
     * @see org.pollex.model.catalogue.CataloguePackage#getCatalogue_Inks()
     * @generated
     */
    EList<Ink> getInks();

    /**
     * Returns the value of the '<em><b>Methods</b></em>' containment reference list.
     * The list contents are of type {@link org.pollex.model.catalogue.Method}.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Methods</em>' containment reference list.
     * @see org.pollex.model.catalogue.CataloguePackage#getCatalogue_Methods()
     * @generated
     */
    EList<Method> getMethods();

    /**
     * Returns the value of the '<em><b>Settings</b></em>' containment reference list.
     * The list contents are of type {@link org.pollex.model.catalogue.Setting}.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Thresholds of checks that hold for every product, by key.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Settings</em>' containment reference list.
     * @see org.pollex.model.catalogue.CataloguePackage#getCatalogue_Settings()
     * @generated
     */
    EList<Setting> getSettings();

} // Catalogue
