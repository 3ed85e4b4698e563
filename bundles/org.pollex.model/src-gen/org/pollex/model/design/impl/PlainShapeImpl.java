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
import org.pollex.model.design.PlainShape;
import org.pollex.model.design.ShapeKind;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Plain Shape</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.design.impl.PlainShapeImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.PlainShapeImpl#getWidth <em>Width</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.PlainShapeImpl#getHeight <em>Height</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.PlainShapeImpl#getLineWidth <em>Line Width</em>}</li>
 *   <li>{@link org.pollex.model.design.impl.PlainShapeImpl#getInk <em>Ink</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PlainShapeImpl extends MarkImpl implements PlainShape {
    /**
     * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getKind()
     * @generated
     * @ordered
     */
    protected static final ShapeKind KIND_EDEFAULT = ShapeKind.RECTANGLE;

    /**
     * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getKind()
     * @generated
     * @ordered
     */
    protected ShapeKind kind = KIND_EDEFAULT;

    /**
     * The default value of the '{@link #getWidth() <em>Width</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getWidth()
     * @generated
     * @ordered
     */
    protected static final double WIDTH_EDEFAULT = 1.0;

    /**
     * The cached value of the '{@link #getWidth() <em>Width</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getWidth()
     * @generated
     * @ordered
     */
    protected double width = WIDTH_EDEFAULT;

    /**
     * The default value of the '{@link #getHeight() <em>Height</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getHeight()
     * @generated
     * @ordered
     */
    protected static final double HEIGHT_EDEFAULT = 1.0;

    /**
     * The cached value of the '{@link #getHeight() <em>Height</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getHeight()
     * @generated
     * @ordered
     */
    protected double height = HEIGHT_EDEFAULT;

    /**
     * The default value of the '{@link #getLineWidth() <em>Line Width</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getLineWidth()
     * @generated
     * @ordered
     */
    protected static final double LINE_WIDTH_EDEFAULT = 0.0;

    /**
     * The cached value of the '{@link #getLineWidth() <em>Line Width</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getLineWidth()
     * @generated
     * @ordered
     */
    protected double lineWidth = LINE_WIDTH_EDEFAULT;

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
    protected PlainShapeImpl() {
        super();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    protected EClass eStaticClass() {
        return DesignPackage.Literals.PLAIN_SHAPE;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public ShapeKind getKind() {
        return kind;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setKind(ShapeKind newKind) {
        ShapeKind oldKind = kind;
        kind = newKind == null ? KIND_EDEFAULT : newKind;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.PLAIN_SHAPE__KIND, oldKind, kind));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getWidth() {
        return width;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setWidth(double newWidth) {
        double oldWidth = width;
        width = newWidth;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.PLAIN_SHAPE__WIDTH, oldWidth, width));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getHeight() {
        return height;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setHeight(double newHeight) {
        double oldHeight = height;
        height = newHeight;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.PLAIN_SHAPE__HEIGHT, oldHeight, height));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getLineWidth() {
        return lineWidth;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setLineWidth(double newLineWidth) {
        double oldLineWidth = lineWidth;
        lineWidth = newLineWidth;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.PLAIN_SHAPE__LINE_WIDTH, oldLineWidth, lineWidth));
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
            eNotify(new ENotificationImpl(this, Notification.SET, DesignPackage.PLAIN_SHAPE__INK, oldInk, ink));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Object eGet(int featureID, boolean resolve, boolean coreType) {
        switch (featureID) {
            case DesignPackage.PLAIN_SHAPE__KIND:
                return getKind();
            case DesignPackage.PLAIN_SHAPE__WIDTH:
                return getWidth();
            case DesignPackage.PLAIN_SHAPE__HEIGHT:
                return getHeight();
            case DesignPackage.PLAIN_SHAPE__LINE_WIDTH:
                return getLineWidth();
            case DesignPackage.PLAIN_SHAPE__INK:
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
            case DesignPackage.PLAIN_SHAPE__KIND:
                setKind((ShapeKind)newValue);
                return;
            case DesignPackage.PLAIN_SHAPE__WIDTH:
                setWidth((Double)newValue);
                return;
            case DesignPackage.PLAIN_SHAPE__HEIGHT:
                setHeight((Double)newValue);
                return;
            case DesignPackage.PLAIN_SHAPE__LINE_WIDTH:
                setLineWidth((Double)newValue);
                return;
            case DesignPackage.PLAIN_SHAPE__INK:
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
            case DesignPackage.PLAIN_SHAPE__KIND:
                setKind(KIND_EDEFAULT);
                return;
            case DesignPackage.PLAIN_SHAPE__WIDTH:
                setWidth(WIDTH_EDEFAULT);
                return;
            case DesignPackage.PLAIN_SHAPE__HEIGHT:
                setHeight(HEIGHT_EDEFAULT);
                return;
            case DesignPackage.PLAIN_SHAPE__LINE_WIDTH:
                setLineWidth(LINE_WIDTH_EDEFAULT);
                return;
            case DesignPackage.PLAIN_SHAPE__INK:
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
            case DesignPackage.PLAIN_SHAPE__KIND:
                return kind != KIND_EDEFAULT;
            case DesignPackage.PLAIN_SHAPE__WIDTH:
                return width != WIDTH_EDEFAULT;
            case DesignPackage.PLAIN_SHAPE__HEIGHT:
                return height != HEIGHT_EDEFAULT;
            case DesignPackage.PLAIN_SHAPE__LINE_WIDTH:
                return lineWidth != LINE_WIDTH_EDEFAULT;
            case DesignPackage.PLAIN_SHAPE__INK:
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
        result.append(" (kind: ");
        result.append(kind);
        result.append(", width: ");
        result.append(width);
        result.append(", height: ");
        result.append(height);
        result.append(", lineWidth: ");
        result.append(lineWidth);
        result.append(", ink: ");
        result.append(ink);
        result.append(')');
        return result.toString();
    }

} //PlainShapeImpl
