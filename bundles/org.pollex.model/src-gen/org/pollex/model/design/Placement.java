/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.design;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Placement</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Art at a place.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.design.Placement#getArt <em>Art</em>}</li>
 *   <li>{@link org.pollex.model.design.Placement#getSha256 <em>Sha256</em>}</li>
 *   <li>{@link org.pollex.model.design.Placement#getGround <em>Ground</em>}</li>
 *   <li>{@link org.pollex.model.design.Placement#getLeaveOut <em>Leave Out</em>}</li>
 *   <li>{@link org.pollex.model.design.Placement#getAssignments <em>Assignments</em>}</li>
 *   <li>{@link org.pollex.model.design.Placement#getRetoning <em>Retoning</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.design.DesignPackage#getPlacement()
 * @generated
 */
public interface Placement extends Mark {
    /**
     * Returns the value of the '<em><b>Art</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Path of the art file, relative to the design, with forward slashes.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Art</em>' attribute.
     * @see #setArt(String)
     * @see org.pollex.model.design.DesignPackage#getPlacement_Art()
     * @generated
     */
    String getArt();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Placement#getArt <em>Art</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Art</em>' attribute.
     * @see #getArt()
     * @generated
     */
    void setArt(String value);

    /**
     * Returns the value of the '<em><b>Sha256</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * SHA-256 of the art file, lower-case hex.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Sha256</em>' attribute.
     * @see #setSha256(String)
     * @see org.pollex.model.design.DesignPackage#getPlacement_Sha256()
     * @generated
     */
    String getSha256();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Placement#getSha256 <em>Sha256</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Sha256</em>' attribute.
     * @see #getSha256()
     * @generated
     */
    void setSha256(String value);

    /**
     * Returns the value of the '<em><b>Ground</b></em>' attribute.
     * The default value is <code>"#ffffff"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Colour of the art that prints nothing and knocks out, as #rrggbb; none when every colour prints.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Ground</em>' attribute.
     * @see #setGround(String)
     * @see org.pollex.model.design.DesignPackage#getPlacement_Ground()
     * @generated
     */
    String getGround();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Placement#getGround <em>Ground</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Ground</em>' attribute.
     * @see #getGround()
     * @generated
     */
    void setGround(String value);

    /**
     * Returns the value of the '<em><b>Leave Out</b></em>' attribute.
     * The default value is <code>"0.0"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Separate parts of the print of this art smaller than a dot of this diameter in mm are left out; 0 prints all.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Leave Out</em>' attribute.
     * @see #setLeaveOut(double)
     * @see org.pollex.model.design.DesignPackage#getPlacement_LeaveOut()
     * @generated
     */
    double getLeaveOut();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Placement#getLeaveOut <em>Leave Out</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Leave Out</em>' attribute.
     * @see #getLeaveOut()
     * @generated
     */
    void setLeaveOut(double value);

    /**
     * Returns the value of the '<em><b>Assignments</b></em>' containment reference list.
     * The list contents are of type {@link org.pollex.model.design.Assignment}.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Choices of the designer; a colour without one is matched to the nearest ink.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Assignments</em>' containment reference list.
     * @see org.pollex.model.design.DesignPackage#getPlacement_Assignments()
     * @generated
     */
    EList<Assignment> getAssignments();

    /**
     * Returns the value of the '<em><b>Retoning</b></em>' containment reference.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * What this was made from; absent for art that was not re-toned.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Retoning</em>' containment reference.
     * @see #setRetoning(Retoning)
     * @see org.pollex.model.design.DesignPackage#getPlacement_Retoning()
     * @generated
     */
    Retoning getRetoning();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Placement#getRetoning <em>Retoning</em>}' containment reference.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Retoning</em>' containment reference.
     * @see #getRetoning()
     * @generated
     */
    void setRetoning(Retoning value);

} // Placement
