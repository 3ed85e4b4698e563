/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.catalogue;

import org.pollex.model.LabColour;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Material</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What an item is made of.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.catalogue.Material#getLab <em>Lab</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Material#getCoreLab <em>Core Lab</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Material#getTranslucency <em>Translucency</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Material#getWearFactor <em>Wear Factor</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Material#isGlow <em>Glow</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Material#getTexture <em>Texture</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.catalogue.CataloguePackage#getMaterial()
 * @generated
 */
public interface Material extends Entry {
    /**
     * Returns the value of the '<em><b>Lab</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Mean colour of the surface.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Lab</em>' attribute.
     * @see #setLab(LabColour)
     * @see org.pollex.model.catalogue.CataloguePackage#getMaterial_Lab()
     * @generated
     */
    LabColour getLab();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Material#getLab <em>Lab</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Lab</em>' attribute.
     * @see #getLab()
     * @generated
     */
    void setLab(LabColour value);

    /**
     * Returns the value of the '<em><b>Core Lab</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Colour of the body below a coat; unset when the body has the colour of the surface.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Core Lab</em>' attribute.
     * @see #setCoreLab(LabColour)
     * @see org.pollex.model.catalogue.CataloguePackage#getMaterial_CoreLab()
     * @generated
     */
    LabColour getCoreLab();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Material#getCoreLab <em>Core Lab</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Core Lab</em>' attribute.
     * @see #getCoreLab()
     * @generated
     */
    void setCoreLab(LabColour value);

    /**
     * Returns the value of the '<em><b>Translucency</b></em>' attribute.
     * The default value is <code>"0.0"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * 0 opaque to 1 clear.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Translucency</em>' attribute.
     * @see #setTranslucency(double)
     * @see org.pollex.model.catalogue.CataloguePackage#getMaterial_Translucency()
     * @generated
     */
    double getTranslucency();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Material#getTranslucency <em>Translucency</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Translucency</em>' attribute.
     * @see #getTranslucency()
     * @generated
     */
    void setTranslucency(double value);

    /**
     * Returns the value of the '<em><b>Wear Factor</b></em>' attribute.
     * The default value is <code>"1.0"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * How much sooner than a plain solid material the print on it wears.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Wear Factor</em>' attribute.
     * @see #setWearFactor(double)
     * @see org.pollex.model.catalogue.CataloguePackage#getMaterial_WearFactor()
     * @generated
     */
    double getWearFactor();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Material#getWearFactor <em>Wear Factor</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Wear Factor</em>' attribute.
     * @see #getWearFactor()
     * @generated
     */
    void setWearFactor(double value);

    /**
     * Returns the value of the '<em><b>Glow</b></em>' attribute.
     * The default value is <code>"false"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Glows in the dark.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Glow</em>' attribute.
     * @see #setGlow(boolean)
     * @see org.pollex.model.catalogue.CataloguePackage#getMaterial_Glow()
     * @generated
     */
    boolean isGlow();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Material#isGlow <em>Glow</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Glow</em>' attribute.
     * @see #isGlow()
     * @generated
     */
    void setGlow(boolean value);

    /**
     * Returns the value of the '<em><b>Texture</b></em>' containment reference.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Texture</em>' containment reference.
     * @see #setTexture(Texture)
     * @see org.pollex.model.catalogue.CataloguePackage#getMaterial_Texture()
     * @generated
     */
    Texture getTexture();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Material#getTexture <em>Texture</em>}' containment reference.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Texture</em>' containment reference.
     * @see #getTexture()
     * @generated
     */
    void setTexture(Texture value);

} // Material
