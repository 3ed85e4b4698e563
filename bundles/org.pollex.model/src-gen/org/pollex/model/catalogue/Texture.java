/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.catalogue;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

import org.pollex.model.LabColour;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Texture</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * The pattern of a surface.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.catalogue.Texture#getKind <em>Kind</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Texture#getScale <em>Scale</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Texture#getSeed <em>Seed</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Texture#getAmount <em>Amount</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Texture#getPicture <em>Picture</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Texture#getColours <em>Colours</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Texture#getCrop <em>Crop</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Texture#getGrey <em>Grey</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.catalogue.CataloguePackage#getTexture()
 * @generated
 */
public interface Texture extends EObject {
    /**
     * Returns the value of the '<em><b>Kind</b></em>' attribute.
     * The literals are from the enumeration {@link org.pollex.model.catalogue.TextureKind}.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Kind</em>' attribute.
     * @see org.pollex.model.catalogue.TextureKind
     * @see #setKind(TextureKind)
     * @see org.pollex.model.catalogue.CataloguePackage#getTexture_Kind()
     * @generated
     */
    TextureKind getKind();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Texture#getKind <em>Kind</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Kind</em>' attribute.
     * @see org.pollex.model.catalogue.TextureKind
     * @see #getKind()
     * @generated
     */
    void setKind(TextureKind value);

    /**
     * Returns the value of the '<em><b>Scale</b></em>' attribute.
     * The default value is <code>"1.0"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Size of the pattern in mm; of a swatch picture the width of all of it.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Scale</em>' attribute.
     * @see #setScale(double)
     * @see org.pollex.model.catalogue.CataloguePackage#getTexture_Scale()
     * @generated
     */
    double getScale();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Texture#getScale <em>Scale</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Scale</em>' attribute.
     * @see #getScale()
     * @generated
     */
    void setScale(double value);

    /**
     * Returns the value of the '<em><b>Seed</b></em>' attribute.
     * The default value is <code>"0"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Seed of a generated pattern.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Seed</em>' attribute.
     * @see #setSeed(int)
     * @see org.pollex.model.catalogue.CataloguePackage#getTexture_Seed()
     * @generated
     */
    int getSeed();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Texture#getSeed <em>Seed</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Seed</em>' attribute.
     * @see #getSeed()
     * @generated
     */
    void setSeed(int value);

    /**
     * Returns the value of the '<em><b>Amount</b></em>' attribute.
     * The default value is <code>"0.0"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Strength of the pattern in L*.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Amount</em>' attribute.
     * @see #setAmount(double)
     * @see org.pollex.model.catalogue.CataloguePackage#getTexture_Amount()
     * @generated
     */
    double getAmount();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Texture#getAmount <em>Amount</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Amount</em>' attribute.
     * @see #getAmount()
     * @generated
     */
    void setAmount(double value);

    /**
     * Returns the value of the '<em><b>Picture</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Relative path of a swatch picture.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Picture</em>' attribute.
     * @see #setPicture(String)
     * @see org.pollex.model.catalogue.CataloguePackage#getTexture_Picture()
     * @generated
     */
    String getPicture();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Texture#getPicture <em>Picture</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Picture</em>' attribute.
     * @see #getPicture()
     * @generated
     */
    void setPicture(String value);

    /**
     * Returns the value of the '<em><b>Colours</b></em>' attribute list.
     * The list contents are of type {@link org.pollex.model.LabColour}.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Colours of the pattern.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Colours</em>' attribute list.
     * @see org.pollex.model.catalogue.CataloguePackage#getTexture_Colours()
     * @generated
     */
    EList<LabColour> getColours();

    /**
     * Returns the value of the '<em><b>Crop</b></em>' containment reference.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * The part of the swatch picture that shows the stock; unset for all of it.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Crop</em>' containment reference.
     * @see #setCrop(PhotoArea)
     * @see org.pollex.model.catalogue.CataloguePackage#getTexture_Crop()
     * @generated
     */
    PhotoArea getCrop();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Texture#getCrop <em>Crop</em>}' containment reference.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Crop</em>' containment reference.
     * @see #getCrop()
     * @generated
     */
    void setCrop(PhotoArea value);

    /**
     * Returns the value of the '<em><b>Grey</b></em>' containment reference.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * What the white balance of the swatch picture is taken from; unset to leave its colours alone.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Grey</em>' containment reference.
     * @see #setGrey(GreyPatch)
     * @see org.pollex.model.catalogue.CataloguePackage#getTexture_Grey()
     * @generated
     */
    GreyPatch getGrey();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Texture#getGrey <em>Grey</em>}' containment reference.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Grey</em>' containment reference.
     * @see #getGrey()
     * @generated
     */
    void setGrey(GreyPatch value);

} // Texture
