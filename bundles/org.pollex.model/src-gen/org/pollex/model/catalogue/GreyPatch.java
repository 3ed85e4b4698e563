/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.catalogue;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Grey Patch</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A part of a photograph that is known to be a neutral grey.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.catalogue.GreyPatch#getLightness <em>Lightness</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.catalogue.CataloguePackage#getGreyPatch()
 * @generated
 */
public interface GreyPatch extends PhotoArea {
    /**
     * Returns the value of the '<em><b>Lightness</b></em>' attribute.
     * The default value is <code>"0.0"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Its lightness L*, above 0 up to 100.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Lightness</em>' attribute.
     * @see #setLightness(double)
     * @see org.pollex.model.catalogue.CataloguePackage#getGreyPatch_Lightness()
     * @generated
     */
    double getLightness();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.GreyPatch#getLightness <em>Lightness</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Lightness</em>' attribute.
     * @see #getLightness()
     * @generated
     */
    void setLightness(double value);

} // GreyPatch
