/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.design;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Unknown Mark</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A mark of a kind that this version does not know, such as one that a newer version wrote. It is kept as it is in the file and does not print; no file names this class.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.design.UnknownMark#getKind <em>Kind</em>}</li>
 *   <li>{@link org.pollex.model.design.UnknownMark#getRest <em>Rest</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.design.DesignPackage#getUnknownMark()
 * @generated
 */
public interface UnknownMark extends Mark {
    /**
     * Returns the value of the '<em><b>Kind</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Name of the kind, as the file has it.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Kind</em>' attribute.
     * @see #setKind(String)
     * @see org.pollex.model.design.DesignPackage#getUnknownMark_Kind()
     * @generated
     */
    String getKind();

    /**
     * Sets the value of the '{@link org.pollex.model.design.UnknownMark#getKind <em>Kind</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Kind</em>' attribute.
     * @see #getKind()
     * @generated
     */
    void setKind(String value);

    /**
     * Returns the value of the '<em><b>Rest</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * What the file says of it besides what every mark has, as an XML element named rest.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Rest</em>' attribute.
     * @see #setRest(String)
     * @see org.pollex.model.design.DesignPackage#getUnknownMark_Rest()
     * @generated
     */
    String getRest();

    /**
     * Sets the value of the '{@link org.pollex.model.design.UnknownMark#getRest <em>Rest</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Rest</em>' attribute.
     * @see #getRest()
     * @generated
     */
    void setRest(String value);

} // UnknownMark
