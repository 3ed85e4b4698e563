/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.design;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Plain Shape</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A plain shape.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.design.PlainShape#getKind <em>Kind</em>}</li>
 *   <li>{@link org.pollex.model.design.PlainShape#getWidth <em>Width</em>}</li>
 *   <li>{@link org.pollex.model.design.PlainShape#getHeight <em>Height</em>}</li>
 *   <li>{@link org.pollex.model.design.PlainShape#getLineWidth <em>Line Width</em>}</li>
 *   <li>{@link org.pollex.model.design.PlainShape#getInk <em>Ink</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.design.DesignPackage#getPlainShape()
 * @generated
 */
public interface PlainShape extends Mark {
    /**
     * Returns the value of the '<em><b>Kind</b></em>' attribute.
     * The literals are from the enumeration {@link org.pollex.model.design.ShapeKind}.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Kind</em>' attribute.
     * @see org.pollex.model.design.ShapeKind
     * @see #setKind(ShapeKind)
     * @see org.pollex.model.design.DesignPackage#getPlainShape_Kind()
     * @generated
     */
    ShapeKind getKind();

    /**
     * Sets the value of the '{@link org.pollex.model.design.PlainShape#getKind <em>Kind</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Kind</em>' attribute.
     * @see org.pollex.model.design.ShapeKind
     * @see #getKind()
     * @generated
     */
    void setKind(ShapeKind value);

    /**
     * Returns the value of the '<em><b>Width</b></em>' attribute.
     * The default value is <code>"1.0"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Width in mm before scale.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Width</em>' attribute.
     * @see #setWidth(double)
     * @see org.pollex.model.design.DesignPackage#getPlainShape_Width()
     * @generated
     */
    double getWidth();

    /**
     * Sets the value of the '{@link org.pollex.model.design.PlainShape#getWidth <em>Width</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Width</em>' attribute.
     * @see #getWidth()
     * @generated
     */
    void setWidth(double value);

    /**
     * Returns the value of the '<em><b>Height</b></em>' attribute.
     * The default value is <code>"1.0"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Height in mm before scale.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Height</em>' attribute.
     * @see #setHeight(double)
     * @see org.pollex.model.design.DesignPackage#getPlainShape_Height()
     * @generated
     */
    double getHeight();

    /**
     * Sets the value of the '{@link org.pollex.model.design.PlainShape#getHeight <em>Height</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Height</em>' attribute.
     * @see #getHeight()
     * @generated
     */
    void setHeight(double value);

    /**
     * Returns the value of the '<em><b>Line Width</b></em>' attribute.
     * The default value is <code>"0.0"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Width of the outline in mm; 0 fills the shape.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Line Width</em>' attribute.
     * @see #setLineWidth(double)
     * @see org.pollex.model.design.DesignPackage#getPlainShape_LineWidth()
     * @generated
     */
    double getLineWidth();

    /**
     * Sets the value of the '{@link org.pollex.model.design.PlainShape#getLineWidth <em>Line Width</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Line Width</em>' attribute.
     * @see #getLineWidth()
     * @generated
     */
    void setLineWidth(double value);

    /**
     * Returns the value of the '<em><b>Ink</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Id of the ink; bare knocks out.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Ink</em>' attribute.
     * @see #setInk(String)
     * @see org.pollex.model.design.DesignPackage#getPlainShape_Ink()
     * @generated
     */
    String getInk();

    /**
     * Sets the value of the '{@link org.pollex.model.design.PlainShape#getInk <em>Ink</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Ink</em>' attribute.
     * @see #getInk()
     * @generated
     */
    void setInk(String value);

} // PlainShape
