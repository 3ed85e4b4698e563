/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.design.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.pollex.model.design.DesignPackage;
import org.pollex.model.design.TextLine;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Text Line</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.design.impl.TextLineImpl#getText <em>Text</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.TextLineImpl#getFont <em>Font</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.TextLineImpl#isBold <em>Bold</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.TextLineImpl#isItalic <em>Italic</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.TextLineImpl#getSize <em>Size</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.TextLineImpl#getSpacing <em>Spacing</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.TextLineImpl#getInk <em>Ink</em>}</li>
 * </ul>
 *
 * @generated
 */
public class TextLineImpl extends MarkImpl implements TextLine {
    /**
     * The default value of the '{@link #getText() <em>Text</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getText()
     * @generated
     * @ordered
     */
    protected static final String TEXT_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getText() <em>Text</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getText()
     * @generated
     * @ordered
     */
    protected String text = TEXT_EDEFAULT;

    /**
     * The default value of the '{@link #getFont() <em>Font</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getFont()
     * @generated
     * @ordered
     */
    protected static final String FONT_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getFont() <em>Font</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getFont()
     * @generated
     * @ordered
     */
    protected String font = FONT_EDEFAULT;

    /**
     * The default value of the '{@link #isBold() <em>Bold</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #isBold()
     * @generated
     * @ordered
     */
    protected static final boolean BOLD_EDEFAULT = false;

    /**
     * The cached value of the '{@link #isBold() <em>Bold</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #isBold()
     * @generated
     * @ordered
     */
    protected boolean bold = BOLD_EDEFAULT;

    /**
     * The default value of the '{@link #isItalic() <em>Italic</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #isItalic()
     * @generated
     * @ordered
     */
    protected static final boolean ITALIC_EDEFAULT = false;

    /**
     * The cached value of the '{@link #isItalic() <em>Italic</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #isItalic()
     * @generated
     * @ordered
     */
    protected boolean italic = ITALIC_EDEFAULT;

    /**
     * The default value of the '{@link #getSize() <em>Size</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getSize()
     * @generated
     * @ordered
     */
    protected static final double SIZE_EDEFAULT = 3.0;

    /**
     * The cached value of the '{@link #getSize() <em>Size</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getSize()
     * @generated
     * @ordered
     */
    protected double size = SIZE_EDEFAULT;

    /**
     * The default value of the '{@link #getSpacing() <em>Spacing</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getSpacing()
     * @generated
     * @ordered
     */
    protected static final double SPACING_EDEFAULT = 0.0;

    /**
     * The cached value of the '{@link #getSpacing() <em>Spacing</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getSpacing()
     * @generated
     * @ordered
     */
    protected double spacing = SPACING_EDEFAULT;

    /**
     * The default value of the '{@link #getInk() <em>Ink</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getInk()
     * @generated
     * @ordered
     */
    protected static final String INK_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getInk() <em>Ink</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getInk()
     * @generated
     * @ordered
     */
    protected String ink = INK_EDEFAULT;

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    protected TextLineImpl() {
        super();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    protected EClass eStaticClass() {
        return DesignPackage.Literals.TEXT_LINE;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getText() {
        return text;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setText(String newText) {
        String oldText = text;
        text = newText;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.TEXT_LINE__TEXT, oldText, text));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getFont() {
        return font;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setFont(String newFont) {
        String oldFont = font;
        font = newFont;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.TEXT_LINE__FONT, oldFont, font));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public boolean isBold() {
        return bold;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setBold(boolean newBold) {
        boolean oldBold = bold;
        bold = newBold;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.TEXT_LINE__BOLD, oldBold, bold));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public boolean isItalic() {
        return italic;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setItalic(boolean newItalic) {
        boolean oldItalic = italic;
        italic = newItalic;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.TEXT_LINE__ITALIC, oldItalic, italic));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getSize() {
        return size;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setSize(double newSize) {
        double oldSize = size;
        size = newSize;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.TEXT_LINE__SIZE, oldSize, size));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getSpacing() {
        return spacing;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setSpacing(double newSpacing) {
        double oldSpacing = spacing;
        spacing = newSpacing;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.TEXT_LINE__SPACING, oldSpacing, spacing));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getInk() {
        return ink;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setInk(String newInk) {
        String oldInk = ink;
        ink = newInk;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.TEXT_LINE__INK, oldInk, ink));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Object eGet(int featureID, boolean resolve, boolean coreType) {
        switch (featureID) {
            case DesignPackage.TEXT_LINE__TEXT:
                return getText();
            case DesignPackage.TEXT_LINE__FONT:
                return getFont();
            case DesignPackage.TEXT_LINE__BOLD:
                return isBold();
            case DesignPackage.TEXT_LINE__ITALIC:
                return isItalic();
            case DesignPackage.TEXT_LINE__SIZE:
                return getSize();
            case DesignPackage.TEXT_LINE__SPACING:
                return getSpacing();
            case DesignPackage.TEXT_LINE__INK:
                return getInk();
        }
        return super.eGet(featureID, resolve, coreType);
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void eSet(int featureID, Object newValue) {
        switch (featureID) {
            case DesignPackage.TEXT_LINE__TEXT:
                setText((String)newValue);
                return;
            case DesignPackage.TEXT_LINE__FONT:
                setFont((String)newValue);
                return;
            case DesignPackage.TEXT_LINE__BOLD:
                setBold((Boolean)newValue);
                return;
            case DesignPackage.TEXT_LINE__ITALIC:
                setItalic((Boolean)newValue);
                return;
            case DesignPackage.TEXT_LINE__SIZE:
                setSize((Double)newValue);
                return;
            case DesignPackage.TEXT_LINE__SPACING:
                setSpacing((Double)newValue);
                return;
            case DesignPackage.TEXT_LINE__INK:
                setInk((String)newValue);
                return;
        }
        super.eSet(featureID, newValue);
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void eUnset(int featureID) {
        switch (featureID) {
            case DesignPackage.TEXT_LINE__TEXT:
                setText(TEXT_EDEFAULT);
                return;
            case DesignPackage.TEXT_LINE__FONT:
                setFont(FONT_EDEFAULT);
                return;
            case DesignPackage.TEXT_LINE__BOLD:
                setBold(BOLD_EDEFAULT);
                return;
            case DesignPackage.TEXT_LINE__ITALIC:
                setItalic(ITALIC_EDEFAULT);
                return;
            case DesignPackage.TEXT_LINE__SIZE:
                setSize(SIZE_EDEFAULT);
                return;
            case DesignPackage.TEXT_LINE__SPACING:
                setSpacing(SPACING_EDEFAULT);
                return;
            case DesignPackage.TEXT_LINE__INK:
                setInk(INK_EDEFAULT);
                return;
        }
        super.eUnset(featureID);
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public boolean eIsSet(int featureID) {
        switch (featureID) {
            case DesignPackage.TEXT_LINE__TEXT:
                return TEXT_EDEFAULT == null ? text != null : !TEXT_EDEFAULT.equals(text);
            case DesignPackage.TEXT_LINE__FONT:
                return FONT_EDEFAULT == null ? font != null : !FONT_EDEFAULT.equals(font);
            case DesignPackage.TEXT_LINE__BOLD:
                return bold != BOLD_EDEFAULT;
            case DesignPackage.TEXT_LINE__ITALIC:
                return italic != ITALIC_EDEFAULT;
            case DesignPackage.TEXT_LINE__SIZE:
                return size != SIZE_EDEFAULT;
            case DesignPackage.TEXT_LINE__SPACING:
                return spacing != SPACING_EDEFAULT;
            case DesignPackage.TEXT_LINE__INK:
                return INK_EDEFAULT == null ? ink != null : !INK_EDEFAULT.equals(ink);
        }
        return super.eIsSet(featureID);
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String toString() {
        if (eIsProxy()) return super.toString();

        StringBuilder result = new StringBuilder(super.toString());
        result.append(" (text: ");
        result.append(text);
        result.append(", font: ");
        result.append(font);
        result.append(", bold: ");
        result.append(bold);
        result.append(", italic: ");
        result.append(italic);
        result.append(", size: ");
        result.append(size);
        result.append(", spacing: ");
        result.append(spacing);
        result.append(", ink: ");
        result.append(ink);
        result.append(')');
        return result.toString();
    }

} //TextLineImpl
