/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.design;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Text Line</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One line of text.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.design.TextLine#getText <em>Text</em>}</li>
 *   <li>{@link org.pollex.model.design.TextLine#getFont <em>Font</em>}</li>
 *   <li>{@link org.pollex.model.design.TextLine#isBold <em>Bold</em>}</li>
 *   <li>{@link org.pollex.model.design.TextLine#isItalic <em>Italic</em>}</li>
 *   <li>{@link org.pollex.model.design.TextLine#getSize <em>Size</em>}</li>
 *   <li>{@link org.pollex.model.design.TextLine#getSpacing <em>Spacing</em>}</li>
 *   <li>{@link org.pollex.model.design.TextLine#getInk <em>Ink</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.design.DesignPackage#getTextLine()
 * @generated
 */
public interface TextLine extends Mark {
    /**
     * Returns the value of the '<em><b>Text</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Text</em>' attribute.
     * @see #setText(String)
     * @see org.pollex.model.design.DesignPackage#getTextLine_Text()
     * @generated
     */
    String getText();

    /**
     * Sets the value of the '{@link org.pollex.model.design.TextLine#getText <em>Text</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Text</em>' attribute.
     * @see #getText()
     * @generated
     */
    void setText(String value);

    /**
     * Returns the value of the '<em><b>Font</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Family of a shipped font.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Font</em>' attribute.
     * @see #setFont(String)
     * @see org.pollex.model.design.DesignPackage#getTextLine_Font()
     * @generated
     */
    String getFont();

    /**
     * Sets the value of the '{@link org.pollex.model.design.TextLine#getFont <em>Font</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Font</em>' attribute.
     * @see #getFont()
     * @generated
     */
    void setFont(String value);

    /**
     * Returns the value of the '<em><b>Bold</b></em>' attribute.
     * The default value is <code>"false"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Bold</em>' attribute.
     * @see #setBold(boolean)
     * @see org.pollex.model.design.DesignPackage#getTextLine_Bold()
     * @generated
     */
    boolean isBold();

    /**
     * Sets the value of the '{@link org.pollex.model.design.TextLine#isBold <em>Bold</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Bold</em>' attribute.
     * @see #isBold()
     * @generated
     */
    void setBold(boolean value);

    /**
     * Returns the value of the '<em><b>Italic</b></em>' attribute.
     * The default value is <code>"false"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Italic</em>' attribute.
     * @see #setItalic(boolean)
     * @see org.pollex.model.design.DesignPackage#getTextLine_Italic()
     * @generated
     */
    boolean isItalic();

    /**
     * Sets the value of the '{@link org.pollex.model.design.TextLine#isItalic <em>Italic</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Italic</em>' attribute.
     * @see #isItalic()
     * @generated
     */
    void setItalic(boolean value);

    /**
     * Returns the value of the '<em><b>Size</b></em>' attribute.
     * The default value is <code>"3.0"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Size of the em square in mm.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Size</em>' attribute.
     * @see #setSize(double)
     * @see org.pollex.model.design.DesignPackage#getTextLine_Size()
     * @generated
     */
    double getSize();

    /**
     * Sets the value of the '{@link org.pollex.model.design.TextLine#getSize <em>Size</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Size</em>' attribute.
     * @see #getSize()
     * @generated
     */
    void setSize(double value);

    /**
     * Returns the value of the '<em><b>Spacing</b></em>' attribute.
     * The default value is <code>"0.0"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Extra space between letters, mm.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Spacing</em>' attribute.
     * @see #setSpacing(double)
     * @see org.pollex.model.design.DesignPackage#getTextLine_Spacing()
     * @generated
     */
    double getSpacing();

    /**
     * Sets the value of the '{@link org.pollex.model.design.TextLine#getSpacing <em>Spacing</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Spacing</em>' attribute.
     * @see #getSpacing()
     * @generated
     */
    void setSpacing(double value);

    /**
     * Returns the value of the '<em><b>Ink</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Id of the ink; bare knocks out.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Ink</em>' attribute.
     * @see #setInk(String)
     * @see org.pollex.model.design.DesignPackage#getTextLine_Ink()
     * @generated
     */
    String getInk();

    /**
     * Sets the value of the '{@link org.pollex.model.design.TextLine#getInk <em>Ink</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Ink</em>' attribute.
     * @see #getInk()
     * @generated
     */
    void setInk(String value);

} // TextLine
