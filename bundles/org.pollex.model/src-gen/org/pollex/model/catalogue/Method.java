/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.catalogue;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Method</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A print method with its limits.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.catalogue.Method#getLineMin <em>Line Min</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Method#getGapMin <em>Gap Min</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Method#getLineMinReversed <em>Line Min Reversed</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Method#getGapMinReversed <em>Gap Min Reversed</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Method#getTypeMin <em>Type Min</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Method#getSpeckMin <em>Speck Min</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Method#getPinholeMin <em>Pinhole Min</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Method#getEdge <em>Edge</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Method#getRegister <em>Register</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Method#getChoke <em>Choke</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Method#getInksMax <em>Inks Max</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Method#getResolution <em>Resolution</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Method#isFullColour <em>Full Colour</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.Method#isWhiteUnder <em>White Under</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.catalogue.CataloguePackage#getMethod()
 * @generated
 */
public interface Method extends Entry {
    /**
     * Returns the value of the '<em><b>Line Min</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Thinnest printed line, mm.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Line Min</em>' attribute.
     * @see #setLineMin(double)
     * @see org.pollex.model.catalogue.CataloguePackage#getMethod_LineMin()
     * @generated
     */
    double getLineMin();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Method#getLineMin <em>Line Min</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Line Min</em>' attribute.
     * @see #getLineMin()
     * @generated
     */
    void setLineMin(double value);

    /**
     * Returns the value of the '<em><b>Gap Min</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Narrowest gap between printed parts, mm.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Gap Min</em>' attribute.
     * @see #setGapMin(double)
     * @see org.pollex.model.catalogue.CataloguePackage#getMethod_GapMin()
     * @generated
     */
    double getGapMin();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Method#getGapMin <em>Gap Min</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Gap Min</em>' attribute.
     * @see #getGapMin()
     * @generated
     */
    void setGapMin(double value);

    /**
     * Returns the value of the '<em><b>Line Min Reversed</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Thinnest line of bare ground inside ink, mm.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Line Min Reversed</em>' attribute.
     * @see #setLineMinReversed(double)
     * @see org.pollex.model.catalogue.CataloguePackage#getMethod_LineMinReversed()
     * @generated
     */
    double getLineMinReversed();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Method#getLineMinReversed <em>Line Min Reversed</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Line Min Reversed</em>' attribute.
     * @see #getLineMinReversed()
     * @generated
     */
    void setLineMinReversed(double value);

    /**
     * Returns the value of the '<em><b>Gap Min Reversed</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Narrowest ink between two openings, mm.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Gap Min Reversed</em>' attribute.
     * @see #setGapMinReversed(double)
     * @see org.pollex.model.catalogue.CataloguePackage#getMethod_GapMinReversed()
     * @generated
     */
    double getGapMinReversed();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Method#getGapMinReversed <em>Gap Min Reversed</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Gap Min Reversed</em>' attribute.
     * @see #getGapMinReversed()
     * @generated
     */
    void setGapMinReversed(double value);

    /**
     * Returns the value of the '<em><b>Type Min</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Smallest measured x-height, mm.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Type Min</em>' attribute.
     * @see #setTypeMin(double)
     * @see org.pollex.model.catalogue.CataloguePackage#getMethod_TypeMin()
     * @generated
     */
    double getTypeMin();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Method#getTypeMin <em>Type Min</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Type Min</em>' attribute.
     * @see #getTypeMin()
     * @generated
     */
    void setTypeMin(double value);

    /**
     * Returns the value of the '<em><b>Speck Min</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Smallest dot that prints, diameter in mm.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Speck Min</em>' attribute.
     * @see #setSpeckMin(double)
     * @see org.pollex.model.catalogue.CataloguePackage#getMethod_SpeckMin()
     * @generated
     */
    double getSpeckMin();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Method#getSpeckMin <em>Speck Min</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Speck Min</em>' attribute.
     * @see #getSpeckMin()
     * @generated
     */
    void setSpeckMin(double value);

    /**
     * Returns the value of the '<em><b>Pinhole Min</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Smallest hole that stays open, diameter in mm.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Pinhole Min</em>' attribute.
     * @see #setPinholeMin(double)
     * @see org.pollex.model.catalogue.CataloguePackage#getMethod_PinholeMin()
     * @generated
     */
    double getPinholeMin();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Method#getPinholeMin <em>Pinhole Min</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Pinhole Min</em>' attribute.
     * @see #getPinholeMin()
     * @generated
     */
    void setPinholeMin(double value);

    /**
     * Returns the value of the '<em><b>Edge</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Unprintable rim, mm.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Edge</em>' attribute.
     * @see #setEdge(double)
     * @see org.pollex.model.catalogue.CataloguePackage#getMethod_Edge()
     * @generated
     */
    double getEdge();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Method#getEdge <em>Edge</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Edge</em>' attribute.
     * @see #getEdge()
     * @generated
     */
    void setEdge(double value);

    /**
     * Returns the value of the '<em><b>Register</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Register between inks, mm.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Register</em>' attribute.
     * @see #setRegister(double)
     * @see org.pollex.model.catalogue.CataloguePackage#getMethod_Register()
     * @generated
     */
    double getRegister();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Method#getRegister <em>Register</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Register</em>' attribute.
     * @see #getRegister()
     * @generated
     */
    void setRegister(double value);

    /**
     * Returns the value of the '<em><b>Choke</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Choke of the white underbase, mm.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Choke</em>' attribute.
     * @see #setChoke(double)
     * @see org.pollex.model.catalogue.CataloguePackage#getMethod_Choke()
     * @generated
     */
    double getChoke();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Method#getChoke <em>Choke</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Choke</em>' attribute.
     * @see #getChoke()
     * @generated
     */
    void setChoke(double value);

    /**
     * Returns the value of the '<em><b>Inks Max</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Most inks on one side.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Inks Max</em>' attribute.
     * @see #setInksMax(int)
     * @see org.pollex.model.catalogue.CataloguePackage#getMethod_InksMax()
     * @generated
     */
    int getInksMax();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Method#getInksMax <em>Inks Max</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Inks Max</em>' attribute.
     * @see #getInksMax()
     * @generated
     */
    void setInksMax(int value);

    /**
     * Returns the value of the '<em><b>Resolution</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Resolution of the plate or head, dots an inch.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Resolution</em>' attribute.
     * @see #setResolution(int)
     * @see org.pollex.model.catalogue.CataloguePackage#getMethod_Resolution()
     * @generated
     */
    int getResolution();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Method#getResolution <em>Resolution</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Resolution</em>' attribute.
     * @see #getResolution()
     * @generated
     */
    void setResolution(int value);

    /**
     * Returns the value of the '<em><b>Full Colour</b></em>' attribute.
     * The default value is <code>"false"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Prints colours by mixing process inks.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Full Colour</em>' attribute.
     * @see #setFullColour(boolean)
     * @see org.pollex.model.catalogue.CataloguePackage#getMethod_FullColour()
     * @generated
     */
    boolean isFullColour();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Method#isFullColour <em>Full Colour</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Full Colour</em>' attribute.
     * @see #isFullColour()
     * @generated
     */
    void setFullColour(boolean value);

    /**
     * Returns the value of the '<em><b>White Under</b></em>' attribute.
     * The default value is <code>"false"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Lays white below the colours.
     * <!-- end-model-doc -->
     * @return the value of the '<em>White Under</em>' attribute.
     * @see #setWhiteUnder(boolean)
     * @see org.pollex.model.catalogue.CataloguePackage#getMethod_WhiteUnder()
     * @generated
     */
    boolean isWhiteUnder();

    /**
     * Sets the value of the '{@link org.pollex.model.catalogue.Method#isWhiteUnder <em>White Under</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>White Under</em>' attribute.
     * @see #isWhiteUnder()
     * @generated
     */
    void setWhiteUnder(boolean value);

} // Method
