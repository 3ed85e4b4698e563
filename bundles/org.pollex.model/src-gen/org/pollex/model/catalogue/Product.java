/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.catalogue;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Product</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One size of a family.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.catalogue.Product#getFamily <em>Family</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Product#getThickness <em>Thickness</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Product#getRegister <em>Register</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Product#getDimensions <em>Dimensions</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Product#getFaces <em>Faces</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.catalogue.CataloguePackage#getProduct()
 * @generated
 */
public interface Product extends Entry {
    /**
     * Returns the value of the '<em><b>Family</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Id of the family.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Family</em>' attribute.
     * @see #setFamily(String)
     * @see org.pollex.model.catalogue.CataloguePackage#getProduct_Family()
     * @generated
     */
    String getFamily();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Product#getFamily <em>Family</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Family</em>' attribute.
     * @see #getFamily()
     * @generated
     */
    void setFamily(String value);

    /**
     * Returns the value of the '<em><b>Thickness</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Thickness in mm.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Thickness</em>' attribute.
     * @see #setThickness(double)
     * @see org.pollex.model.catalogue.CataloguePackage#getProduct_Thickness()
     * @generated
     */
    double getThickness();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Product#getThickness <em>Thickness</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Thickness</em>' attribute.
     * @see #getThickness()
     * @generated
     */
    void setThickness(double value);

    /**
     * Returns the value of the '<em><b>Register</b></em>' attribute.
     * The default value is <code>"0.3"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Register of front to back in mm.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Register</em>' attribute.
     * @see #setRegister(double)
     * @see org.pollex.model.catalogue.CataloguePackage#getProduct_Register()
     * @generated
     */
    double getRegister();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Product#getRegister <em>Register</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Register</em>' attribute.
     * @see #getRegister()
     * @generated
     */
    void setRegister(double value);

    /**
     * Returns the value of the '<em><b>Dimensions</b></em>' containment reference list.
     * The list contents are of type {@link org.pollex.model.catalogue.Setting}.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Dimensions for the outline generator of the family, mm.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Dimensions</em>' containment reference list.
     * @see org.pollex.model.catalogue.CataloguePackage#getProduct_Dimensions()
     * @generated
     */
    EList<Setting> getDimensions();

    /**
     * Returns the value of the '<em><b>Faces</b></em>' containment reference list.
     * The list contents are of type {@link org.pollex.model.catalogue.Face}.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Printed faces, front first.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Faces</em>' containment reference list.
     * @see org.pollex.model.catalogue.CataloguePackage#getProduct_Faces()
     * @generated
     */
    EList<Face> getFaces();

} // Product
