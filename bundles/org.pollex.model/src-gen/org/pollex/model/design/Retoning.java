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
 * A representation of the model object '<em><b>Retoning</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What re-toned art was made from and how it was placed then, so that a later change of the source can be carried over without losing what was done to it since.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.design.Retoning#getMark <em>Mark</em>}</li>
 *   <li>{@link org.pollex.model.design.Retoning#getSha256 <em>Sha256</em>}</li>
 *   <li>{@link org.pollex.model.design.Retoning#getMade <em>Made</em>}</li>
 *   <li>{@link org.pollex.model.design.Retoning#getChoices <em>Choices</em>}</li>
 *   <li>{@link org.pollex.model.design.Retoning#getKeyline <em>Keyline</em>}</li>
 *   <li>{@link org.pollex.model.design.Retoning#isGrow <em>Grow</em>}</li>
 *   <li>{@link org.pollex.model.design.Retoning#isApart <em>Apart</em>}</li>
 *   <li>{@link org.pollex.model.design.Retoning#getX <em>X</em>}</li>
 *   <li>{@link org.pollex.model.design.Retoning#getY <em>Y</em>}</li>
 *   <li>{@link org.pollex.model.design.Retoning#getScale <em>Scale</em>}</li>
 *   <li>{@link org.pollex.model.design.Retoning#getTurn <em>Turn</em>}</li>
 *   <li>{@link org.pollex.model.design.Retoning#isMirror <em>Mirror</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.design.DesignPackage#getRetoning()
 * @generated
 */
public interface Retoning extends EObject {
    /**
     * Returns the value of the '<em><b>Mark</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Id of the mark in the design it was made from.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Mark</em>' attribute.
     * @see #setMark(String)
     * @see org.pollex.model.design.DesignPackage#getRetoning_Mark()
     * @generated
     */
    String getMark();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Retoning#getMark <em>Mark</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Mark</em>' attribute.
     * @see #getMark()
     * @generated
     */
    void setMark(String value);

    /**
     * Returns the value of the '<em><b>Sha256</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * SHA-256 of the art of that mark, lower-case hex.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Sha256</em>' attribute.
     * @see #setSha256(String)
     * @see org.pollex.model.design.DesignPackage#getRetoning_Sha256()
     * @generated
     */
    String getSha256();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Retoning#getSha256 <em>Sha256</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Sha256</em>' attribute.
     * @see #getSha256()
     * @generated
     */
    void setSha256(String value);

    /**
     * Returns the value of the '<em><b>Made</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * SHA-256 of the art that was made, lower-case hex.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Made</em>' attribute.
     * @see #setMade(String)
     * @see org.pollex.model.design.DesignPackage#getRetoning_Made()
     * @generated
     */
    String getMade();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Retoning#getMade <em>Made</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Made</em>' attribute.
     * @see #getMade()
     * @generated
     */
    void setMade(String value);

    /**
     * Returns the value of the '<em><b>Choices</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Ground, left out parts and assignments that were made with it.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Choices</em>' attribute.
     * @see #setChoices(String)
     * @see org.pollex.model.design.DesignPackage#getRetoning_Choices()
     * @generated
     */
    String getChoices();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Retoning#getChoices <em>Choices</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Choices</em>' attribute.
     * @see #getChoices()
     * @generated
     */
    void setChoices(String value);

    /**
     * Returns the value of the '<em><b>Keyline</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Where lines round dark parts were asked for: masses, everywhere or nowhere.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Keyline</em>' attribute.
     * @see #setKeyline(String)
     * @see org.pollex.model.design.DesignPackage#getRetoning_Keyline()
     * @generated
     */
    String getKeyline();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Retoning#getKeyline <em>Keyline</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Keyline</em>' attribute.
     * @see #getKeyline()
     * @generated
     */
    void setKeyline(String value);

    /**
     * Returns the value of the '<em><b>Grow</b></em>' attribute.
     * The default value is <code>"false"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Whether light parts were given half of the outlines round them.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Grow</em>' attribute.
     * @see #setGrow(boolean)
     * @see org.pollex.model.design.DesignPackage#getRetoning_Grow()
     * @generated
     */
    boolean isGrow();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Retoning#isGrow <em>Grow</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Grow</em>' attribute.
     * @see #isGrow()
     * @generated
     */
    void setGrow(boolean value);

    /**
     * Returns the value of the '<em><b>Apart</b></em>' attribute.
     * The default value is <code>"false"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Whether several inks were chosen so that parts stay apart, and not each as the nearest to its colour.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Apart</em>' attribute.
     * @see #setApart(boolean)
     * @see org.pollex.model.design.DesignPackage#getRetoning_Apart()
     * @generated
     */
    boolean isApart();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Retoning#isApart <em>Apart</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Apart</em>' attribute.
     * @see #isApart()
     * @generated
     */
    void setApart(boolean value);

    /**
     * Returns the value of the '<em><b>X</b></em>' attribute.
     * The default value is <code>"0.0"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Place as made, mm.
     * <!-- end-model-doc -->
     * @return the value of the '<em>X</em>' attribute.
     * @see #setX(double)
     * @see org.pollex.model.design.DesignPackage#getRetoning_X()
     * @generated
     */
    double getX();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Retoning#getX <em>X</em>}' attribute.
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
     * Place as made, mm, downwards.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Y</em>' attribute.
     * @see #setY(double)
     * @see org.pollex.model.design.DesignPackage#getRetoning_Y()
     * @generated
     */
    double getY();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Retoning#getY <em>Y</em>}' attribute.
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
     * Scale as made.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Scale</em>' attribute.
     * @see #setScale(double)
     * @see org.pollex.model.design.DesignPackage#getRetoning_Scale()
     * @generated
     */
    double getScale();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Retoning#getScale <em>Scale</em>}' attribute.
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
     * Turn as made, degrees.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Turn</em>' attribute.
     * @see #setTurn(double)
     * @see org.pollex.model.design.DesignPackage#getRetoning_Turn()
     * @generated
     */
    double getTurn();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Retoning#getTurn <em>Turn</em>}' attribute.
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
     * Mirrored as made.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Mirror</em>' attribute.
     * @see #setMirror(boolean)
     * @see org.pollex.model.design.DesignPackage#getRetoning_Mirror()
     * @generated
     */
    boolean isMirror();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Retoning#isMirror <em>Mirror</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Mirror</em>' attribute.
     * @see #isMirror()
     * @generated
     */
    void setMirror(boolean value);

} // Retoning
