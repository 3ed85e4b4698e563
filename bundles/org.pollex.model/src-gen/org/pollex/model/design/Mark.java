/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.design;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Mark</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Something placed on a side.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.design.Mark#getId <em>Id</em>}</li>
 *   <li>{@link org.pollex.model.design.Mark#getName <em>Name</em>}</li>
 *   <li>{@link org.pollex.model.design.Mark#isHidden <em>Hidden</em>}</li>
 *   <li>{@link org.pollex.model.design.Mark#isLocked <em>Locked</em>}</li>
 *   <li>{@link org.pollex.model.design.Mark#getX <em>X</em>}</li>
 *   <li>{@link org.pollex.model.design.Mark#getY <em>Y</em>}</li>
 *   <li>{@link org.pollex.model.design.Mark#getScale <em>Scale</em>}</li>
 *   <li>{@link org.pollex.model.design.Mark#getTurn <em>Turn</em>}</li>
 *   <li>{@link org.pollex.model.design.Mark#isMirror <em>Mirror</em>}</li>
 *   <li>{@link org.pollex.model.design.Mark#isOverprint <em>Overprint</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.design.DesignPackage#getMark()
 * @generated
 */
public interface Mark extends EObject {
    /**
     * Returns the value of the '<em><b>Id</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Unique in the design; given on save when absent.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Id</em>' attribute.
     * @see #setId(String)
     * @see org.pollex.model.design.DesignPackage#getMark_Id()
     * @generated
     */
    String getId();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Mark#getId <em>Id</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Id</em>' attribute.
     * @see #getId()
     * @generated
     */
    void setId(String value);

    /**
     * Returns the value of the '<em><b>Name</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Name</em>' attribute.
     * @see #setName(String)
     * @see org.pollex.model.design.DesignPackage#getMark_Name()
     * @generated
     */
    String getName();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Mark#getName <em>Name</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Name</em>' attribute.
     * @see #getName()
     * @generated
     */
    void setName(String value);

    /**
     * Returns the value of the '<em><b>Hidden</b></em>' attribute.
     * The default value is <code>"false"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Hidden marks are not printed.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Hidden</em>' attribute.
     * @see #setHidden(boolean)
     * @see org.pollex.model.design.DesignPackage#getMark_Hidden()
     * @generated
     */
    boolean isHidden();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Mark#isHidden <em>Hidden</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Hidden</em>' attribute.
     * @see #isHidden()
     * @generated
     */
    void setHidden(boolean value);

    /**
     * Returns the value of the '<em><b>Locked</b></em>' attribute.
     * The default value is <code>"false"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Locked marks are left alone by the editor; they print.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Locked</em>' attribute.
     * @see #setLocked(boolean)
     * @see org.pollex.model.design.DesignPackage#getMark_Locked()
     * @generated
     */
    boolean isLocked();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Mark#isLocked <em>Locked</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Locked</em>' attribute.
     * @see #isLocked()
     * @generated
     */
    void setLocked(boolean value);

    /**
     * Returns the value of the '<em><b>X</b></em>' attribute.
     * The default value is <code>"0.0"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Place of the middle of the mark, mm.
     * <!-- end-model-doc -->
     * @return the value of the '<em>X</em>' attribute.
     * @see #setX(double)
     * @see org.pollex.model.design.DesignPackage#getMark_X()
     * @generated
     */
    double getX();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Mark#getX <em>X</em>}' attribute.
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
     * Place of the middle of the mark, mm, downwards.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Y</em>' attribute.
     * @see #setY(double)
     * @see org.pollex.model.design.DesignPackage#getMark_Y()
     * @generated
     */
    double getY();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Mark#getY <em>Y</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Y</em>' attribute.
     * @see #getY()
     * @generated
     */
    void setY(double value);

    /**
     * Returns the value of the '<em><b>Scale</b></em>' attribute.
     * The default value is <code>"1.0"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Factor on the own size of the mark.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Scale</em>' attribute.
     * @see #setScale(double)
     * @see org.pollex.model.design.DesignPackage#getMark_Scale()
     * @generated
     */
    double getScale();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Mark#getScale <em>Scale</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Scale</em>' attribute.
     * @see #getScale()
     * @generated
     */
    void setScale(double value);

    /**
     * Returns the value of the '<em><b>Turn</b></em>' attribute.
     * The default value is <code>"0.0"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Degrees, clockwise on screen.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Turn</em>' attribute.
     * @see #setTurn(double)
     * @see org.pollex.model.design.DesignPackage#getMark_Turn()
     * @generated
     */
    double getTurn();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Mark#getTurn <em>Turn</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Turn</em>' attribute.
     * @see #getTurn()
     * @generated
     */
    void setTurn(double value);

    /**
     * Returns the value of the '<em><b>Mirror</b></em>' attribute.
     * The default value is <code>"false"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Flipped left to right before it is turned.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Mirror</em>' attribute.
     * @see #setMirror(boolean)
     * @see org.pollex.model.design.DesignPackage#getMark_Mirror()
     * @generated
     */
    boolean isMirror();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Mark#isMirror <em>Mirror</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Mirror</em>' attribute.
     * @see #isMirror()
     * @generated
     */
    void setMirror(boolean value);

    /**
     * Returns the value of the '<em><b>Overprint</b></em>' attribute.
     * The default value is <code>"false"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Prints over the inks below instead of knocking them out.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Overprint</em>' attribute.
     * @see #setOverprint(boolean)
     * @see org.pollex.model.design.DesignPackage#getMark_Overprint()
     * @generated
     */
    boolean isOverprint();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Mark#isOverprint <em>Overprint</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Overprint</em>' attribute.
     * @see #isOverprint()
     * @generated
     */
    void setOverprint(boolean value);

} // Mark
