/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.catalogue.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.pollex.model.catalogue.CataloguePackage;
import org.pollex.model.catalogue.PhotoArea;
import org.pollex.model.catalogue.PhotoUnit;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Photo Area</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.catalogue.impl.PhotoAreaImpl#getX <em>X</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.PhotoAreaImpl#getY <em>Y</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.PhotoAreaImpl#getWidth <em>Width</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.PhotoAreaImpl#getHeight <em>Height</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.PhotoAreaImpl#getUnit <em>Unit</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PhotoAreaImpl extends MinimalEObjectImpl.Container implements PhotoArea {
    /**
     * The default value of the '{@link #getX() <em>X</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getX()
     * @generated
     * @ordered
     */
    protected static final double X_EDEFAULT = 0.0;

    /**
     * The cached value of the '{@link #getX() <em>X</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getX()
     * @generated
     * @ordered
     */
    protected double x = X_EDEFAULT;

    /**
     * The default value of the '{@link #getY() <em>Y</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getY()
     * @generated
     * @ordered
     */
    protected static final double Y_EDEFAULT = 0.0;

    /**
     * The cached value of the '{@link #getY() <em>Y</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getY()
     * @generated
     * @ordered
     */
    protected double y = Y_EDEFAULT;

    /**
     * The default value of the '{@link #getWidth() <em>Width</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getWidth()
     * @generated
     * @ordered
     */
    protected static final double WIDTH_EDEFAULT = 0.0;

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
    protected static final double HEIGHT_EDEFAULT = 0.0;

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
     * The default value of the '{@link #getUnit() <em>Unit</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getUnit()
     * @generated
     * @ordered
     */
    protected static final PhotoUnit UNIT_EDEFAULT = PhotoUnit.PX;

    /**
     * The cached value of the '{@link #getUnit() <em>Unit</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getUnit()
     * @generated
     * @ordered
     */
    protected PhotoUnit unit = UNIT_EDEFAULT;

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    protected PhotoAreaImpl() {
        super();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    protected EClass eStaticClass() {
        return CataloguePackage.Literals.PHOTO_AREA;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getX() {
        return x;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setX(double newX) {
        double oldX = x;
        x = newX;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.PHOTO_AREA__X, oldX, x));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getY() {
        return y;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setY(double newY) {
        double oldY = y;
        y = newY;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.PHOTO_AREA__Y, oldY, y));
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
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.PHOTO_AREA__WIDTH, oldWidth, width));
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
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.PHOTO_AREA__HEIGHT, oldHeight, height));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public PhotoUnit getUnit() {
        return unit;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setUnit(PhotoUnit newUnit) {
        PhotoUnit oldUnit = unit;
        unit = newUnit == null ? UNIT_EDEFAULT : newUnit;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.PHOTO_AREA__UNIT, oldUnit, unit));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Object eGet(int featureID, boolean resolve, boolean coreType) {
        switch (featureID) {
            case CataloguePackage.PHOTO_AREA__X:
                return getX();
            case CataloguePackage.PHOTO_AREA__Y:
                return getY();
            case CataloguePackage.PHOTO_AREA__WIDTH:
                return getWidth();
            case CataloguePackage.PHOTO_AREA__HEIGHT:
                return getHeight();
            case CataloguePackage.PHOTO_AREA__UNIT:
                return getUnit();
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
            case CataloguePackage.PHOTO_AREA__X:
                setX((Double)newValue);
                return;
            case CataloguePackage.PHOTO_AREA__Y:
                setY((Double)newValue);
                return;
            case CataloguePackage.PHOTO_AREA__WIDTH:
                setWidth((Double)newValue);
                return;
            case CataloguePackage.PHOTO_AREA__HEIGHT:
                setHeight((Double)newValue);
                return;
            case CataloguePackage.PHOTO_AREA__UNIT:
                setUnit((PhotoUnit)newValue);
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
            case CataloguePackage.PHOTO_AREA__X:
                setX(X_EDEFAULT);
                return;
            case CataloguePackage.PHOTO_AREA__Y:
                setY(Y_EDEFAULT);
                return;
            case CataloguePackage.PHOTO_AREA__WIDTH:
                setWidth(WIDTH_EDEFAULT);
                return;
            case CataloguePackage.PHOTO_AREA__HEIGHT:
                setHeight(HEIGHT_EDEFAULT);
                return;
            case CataloguePackage.PHOTO_AREA__UNIT:
                setUnit(UNIT_EDEFAULT);
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
            case CataloguePackage.PHOTO_AREA__X:
                return x != X_EDEFAULT;
            case CataloguePackage.PHOTO_AREA__Y:
                return y != Y_EDEFAULT;
            case CataloguePackage.PHOTO_AREA__WIDTH:
                return width != WIDTH_EDEFAULT;
            case CataloguePackage.PHOTO_AREA__HEIGHT:
                return height != HEIGHT_EDEFAULT;
            case CataloguePackage.PHOTO_AREA__UNIT:
                return unit != UNIT_EDEFAULT;
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
        result.append(" (x: ");
        result.append(x);
        result.append(", y: ");
        result.append(y);
        result.append(", width: ");
        result.append(width);
        result.append(", height: ");
        result.append(height);
        result.append(", unit: ");
        result.append(unit);
        result.append(')');
        return result.toString();
    }

} //PhotoAreaImpl
