/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.catalogue;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Photo Area</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A box in a photograph, from its top left corner as the file stores it.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.catalogue.PhotoArea#getX <em>X</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.PhotoArea#getY <em>Y</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.PhotoArea#getWidth <em>Width</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.PhotoArea#getHeight <em>Height</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.PhotoArea#getUnit <em>Unit</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.catalogue.CataloguePackage#getPhotoArea()
 * @generated
 */
public interface PhotoArea extends EObject {
    /**
     * Returns the value of the '<em><b>X</b></em>' attribute.
     * The default value is <code>"0.0"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Left edge.
     * <!-- end-model-doc -->
     * @return the value of the '<em>X</em>' attribute.
     * @see #setX(double)
     * @see org.pollex.model.catalogue.CataloguePackage#getPhotoArea_X()
     * @generated
     */
    double getX();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.PhotoArea#getX <em>X</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>X</em>' attribute.
     * @see #getX()
     * @generated
     */
    void setX(double value);

    /**
     * Returns the value of the '<em><b>Y</b></em>' attribute.
     * The default value is <code>"0.0"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Top edge.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Y</em>' attribute.
     * @see #setY(double)
     * @see org.pollex.model.catalogue.CataloguePackage#getPhotoArea_Y()
     * @generated
     */
    double getY();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.PhotoArea#getY <em>Y</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Y</em>' attribute.
     * @see #getY()
     * @generated
     */
    void setY(double value);

    /**
     * Returns the value of the '<em><b>Width</b></em>' attribute.
     * The default value is <code>"0.0"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Width, above 0.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Width</em>' attribute.
     * @see #setWidth(double)
     * @see org.pollex.model.catalogue.CataloguePackage#getPhotoArea_Width()
     * @generated
     */
    double getWidth();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.PhotoArea#getWidth <em>Width</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Width</em>' attribute.
     * @see #getWidth()
     * @generated
     */
    void setWidth(double value);

    /**
     * Returns the value of the '<em><b>Height</b></em>' attribute.
     * The default value is <code>"0.0"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Height, above 0.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Height</em>' attribute.
     * @see #setHeight(double)
     * @see org.pollex.model.catalogue.CataloguePackage#getPhotoArea_Height()
     * @generated
     */
    double getHeight();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.PhotoArea#getHeight <em>Height</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Height</em>' attribute.
     * @see #getHeight()
     * @generated
     */
    void setHeight(double value);

    /**
     * Returns the value of the '<em><b>Unit</b></em>' attribute.
     * The literals are from the enumeration {@link org.pollex.model.catalogue.PhotoUnit}.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Pixels of the photograph, or mm at its scale.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Unit</em>' attribute.
     * @see org.pollex.model.catalogue.PhotoUnit
     * @see #setUnit(PhotoUnit)
     * @see org.pollex.model.catalogue.CataloguePackage#getPhotoArea_Unit()
     * @generated
     */
    PhotoUnit getUnit();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.PhotoArea#getUnit <em>Unit</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Unit</em>' attribute.
     * @see org.pollex.model.catalogue.PhotoUnit
     * @see #getUnit()
     * @generated
     */
    void setUnit(PhotoUnit value);

} // PhotoArea
