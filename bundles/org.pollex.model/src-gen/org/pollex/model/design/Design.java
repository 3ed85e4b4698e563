/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.design;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Design</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What is printed on one product.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.design.Design#getFormat <em>Format</em>}</li>
 *   <li>{@link org.pollex.model.design.Design#getName <em>Name</em>}</li>
 *   <li>{@link org.pollex.model.design.Design#getProduct <em>Product</em>}</li>
 *   <li>{@link org.pollex.model.design.Design#getMaterial <em>Material</em>}</li>
 *   <li>{@link org.pollex.model.design.Design#getMethod <em>Method</em>}</li>
 *   <li>{@link org.pollex.model.design.Design#getInks <em>Inks</em>}</li>
 *   <li>{@link org.pollex.model.design.Design#getRetonedFrom <em>Retoned From</em>}</li>
 *   <li>{@link org.pollex.model.design.Design#getSides <em>Sides</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.design.DesignPackage#getDesign()
 * @generated
 */
public interface Design extends EObject {
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
     * @see org.pollex.model.design.DesignPackage#getDesign_Format()
     * @generated
     */
    int getFormat();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Design#getFormat <em>Format</em>}' attribute.
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
     * <!-- begin-model-doc -->
     * Name shown to people.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Name</em>' attribute.
     * @see #setName(String)
     * @see org.pollex.model.design.DesignPackage#getDesign_Name()
     * @generated
     */
    String getName();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Design#getName <em>Name</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Name</em>' attribute.
     * @see #getName()
     * @generated
     */
    void setName(String value);

    /**
     * Returns the value of the '<em><b>Product</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Id of the product.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Product</em>' attribute.
     * @see #setProduct(String)
     * @see org.pollex.model.design.DesignPackage#getDesign_Product()
     * @generated
     */
    String getProduct();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Design#getProduct <em>Product</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Product</em>' attribute.
     * @see #getProduct()
     * @generated
     */
    void setProduct(String value);

    /**
     * Returns the value of the '<em><b>Material</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Id of the material.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Material</em>' attribute.
     * @see #setMaterial(String)
     * @see org.pollex.model.design.DesignPackage#getDesign_Material()
     * @generated
     */
    String getMaterial();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Design#getMaterial <em>Material</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Material</em>' attribute.
     * @see #getMaterial()
     * @generated
     */
    void setMaterial(String value);

    /**
     * Returns the value of the '<em><b>Method</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Id of the print method.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Method</em>' attribute.
     * @see #setMethod(String)
     * @see org.pollex.model.design.DesignPackage#getDesign_Method()
     * @generated
     */
    String getMethod();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Design#getMethod <em>Method</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Method</em>' attribute.
     * @see #getMethod()
     * @generated
     */
    void setMethod(String value);

    /**
     * Returns the value of the '<em><b>Inks</b></em>' attribute list.
     * The list contents are of type {@link java.lang.String}.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Ids of the inks, in printing order.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Inks</em>' attribute list.
     * @see org.pollex.model.design.DesignPackage#getDesign_Inks()
     * @generated
     */
    EList<String> getInks();

    /**
     * Returns the value of the '<em><b>Retoned From</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Relative path of the design this one was re-toned from.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Retoned From</em>' attribute.
     * @see #setRetonedFrom(String)
     * @see org.pollex.model.design.DesignPackage#getDesign_RetonedFrom()
     * @generated
     */
    String getRetonedFrom();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Design#getRetonedFrom <em>Retoned From</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Retoned From</em>' attribute.
     * @see #getRetonedFrom()
     * @generated
     */
    void setRetonedFrom(String value);

    /**
     * Returns the value of the '<em><b>Sides</b></em>' containment reference list.
     * The list contents are of type {@link org.pollex.model.design.Side}.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Front first; at most one of each name.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Sides</em>' containment reference list.
     * @see org.pollex.model.design.DesignPackage#getDesign_Sides()
     * @generated
     */
    EList<Side> getSides();

} // Design
