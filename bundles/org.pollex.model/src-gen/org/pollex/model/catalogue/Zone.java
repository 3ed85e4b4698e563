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
 * A representation of the model object '<em><b>Zone</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A zone of a face.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.catalogue.Zone#getKind <em>Kind</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Zone#getInset <em>Inset</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Zone#getLevel <em>Level</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Zone#getStrength <em>Strength</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.catalogue.CataloguePackage#getZone()
 * @generated
 */
public interface Zone extends EObject {
    /**
     * Returns the value of the '<em><b>Kind</b></em>' attribute.
     * The literals are from the enumeration {@link org.pollex.model.catalogue.ZoneKind}.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Kind</em>' attribute.
     * @see org.pollex.model.catalogue.ZoneKind
     * @see #setKind(ZoneKind)
     * @see org.pollex.model.catalogue.CataloguePackage#getZone_Kind()
     * @generated
     */
    ZoneKind getKind();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Zone#getKind <em>Kind</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Kind</em>' attribute.
     * @see org.pollex.model.catalogue.ZoneKind
     * @see #getKind()
     * @generated
     */
    void setKind(ZoneKind value);

    /**
     * Returns the value of the '<em><b>Inset</b></em>' attribute.
     * The default value is <code>"0.0"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Distance from the outline in mm (unprintable, safe).
     * <!-- end-model-doc -->
     * @return the value of the '<em>Inset</em>' attribute.
     * @see #setInset(double)
     * @see org.pollex.model.catalogue.CataloguePackage#getZone_Inset()
     * @generated
     */
    double getInset();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Zone#getInset <em>Inset</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Inset</em>' attribute.
     * @see #getInset()
     * @generated
     */
    void setInset(double value);

    /**
     * Returns the value of the '<em><b>Level</b></em>' attribute.
     * The default value is <code>"0.0"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Level of the wear field from which the face counts as wear-risk.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Level</em>' attribute.
     * @see #setLevel(double)
     * @see org.pollex.model.catalogue.CataloguePackage#getZone_Level()
     * @generated
     */
    double getLevel();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Zone#getLevel <em>Level</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Level</em>' attribute.
     * @see #getLevel()
     * @generated
     */
    void setLevel(double value);

    /**
     * Returns the value of the '<em><b>Strength</b></em>' attribute.
     * The default value is <code>"1.0"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Weight of the zone, 0 to 1.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Strength</em>' attribute.
     * @see #setStrength(double)
     * @see org.pollex.model.catalogue.CataloguePackage#getZone_Strength()
     * @generated
     */
    double getStrength();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Zone#getStrength <em>Strength</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Strength</em>' attribute.
     * @see #getStrength()
     * @generated
     */
    void setStrength(double value);

} // Zone
