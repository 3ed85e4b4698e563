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
 * A representation of the model object '<em><b>Ink</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * An ink, as a studio can measure it: its colour over white and over black.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.catalogue.Ink#getKind <em>Kind</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Ink#getLab <em>Lab</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Ink#getLabOverBlack <em>Lab Over Black</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Ink#getFilm <em>Film</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.catalogue.CataloguePackage#getInk()
 * @generated
 */
public interface Ink extends Entry {
    /**
     * Returns the value of the '<em><b>Kind</b></em>' attribute.
     * The literals are from the enumeration {@link org.pollex.model.catalogue.InkKind}.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Kind</em>' attribute.
     * @see org.pollex.model.catalogue.InkKind
     * @see #setKind(InkKind)
     * @see org.pollex.model.catalogue.CataloguePackage#getInk_Kind()
     * @generated
     */
    InkKind getKind();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Ink#getKind <em>Kind</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Kind</em>' attribute.
     * @see org.pollex.model.catalogue.InkKind
     * @see #getKind()
     * @generated
     */
    void setKind(InkKind value);

    /**
     * Returns the value of the '<em><b>Lab</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Colour over white.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Lab</em>' attribute.
     * @see #setLab(LabColour)
     * @see org.pollex.model.catalogue.CataloguePackage#getInk_Lab()
     * @generated
     */
    LabColour getLab();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Ink#getLab <em>Lab</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Lab</em>' attribute.
     * @see #getLab()
     * @generated
     */
    void setLab(LabColour value);

    /**
     * Returns the value of the '<em><b>Lab Over Black</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Colour over black.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Lab Over Black</em>' attribute.
     * @see #setLabOverBlack(LabColour)
     * @see org.pollex.model.catalogue.CataloguePackage#getInk_LabOverBlack()
     * @generated
     */
    LabColour getLabOverBlack();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Ink#getLabOverBlack <em>Lab Over Black</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Lab Over Black</em>' attribute.
     * @see #getLabOverBlack()
     * @generated
     */
    void setLabOverBlack(LabColour value);

    /**
     * Returns the value of the '<em><b>Film</b></em>' attribute.
     * The default value is <code>"8.0"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Thickness of the dry film in micrometres.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Film</em>' attribute.
     * @see #setFilm(double)
     * @see org.pollex.model.catalogue.CataloguePackage#getInk_Film()
     * @generated
     */
    double getFilm();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Ink#getFilm <em>Film</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Film</em>' attribute.
     * @see #getFilm()
     * @generated
     */
    void setFilm(double value);

} // Ink
