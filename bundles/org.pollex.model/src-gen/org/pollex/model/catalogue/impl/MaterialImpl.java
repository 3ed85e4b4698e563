/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.catalogue.impl;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.pollex.model.LabColour;

import org.pollex.model.catalogue.CataloguePackage;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.Texture;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Material</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.catalogue.impl.MaterialImpl#getLab <em>Lab</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.MaterialImpl#getCoreLab <em>Core Lab</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.MaterialImpl#getTranslucency <em>Translucency</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.MaterialImpl#getWearFactor <em>Wear Factor</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.MaterialImpl#isGlow <em>Glow</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.MaterialImpl#getTexture <em>Texture</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MaterialImpl extends EntryImpl implements Material {
    /**
     * The default value of the '{@link #getLab() <em>Lab</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getLab()
     * @generated
     * @ordered
     */
    protected static final LabColour LAB_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getLab() <em>Lab</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getLab()
     * @generated
     * @ordered
     */
    protected LabColour lab = LAB_EDEFAULT;

    /**
     * The default value of the '{@link #getCoreLab() <em>Core Lab</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getCoreLab()
     * @generated
     * @ordered
     */
    protected static final LabColour CORE_LAB_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getCoreLab() <em>Core Lab</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getCoreLab()
     * @generated
     * @ordered
     */
    protected LabColour coreLab = CORE_LAB_EDEFAULT;

    /**
     * The default value of the '{@link #getTranslucency() <em>Translucency</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getTranslucency()
     * @generated
     * @ordered
     */
    protected static final double TRANSLUCENCY_EDEFAULT = 0.0;

    /**
     * The cached value of the '{@link #getTranslucency() <em>Translucency</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getTranslucency()
     * @generated
     * @ordered
     */
    protected double translucency = TRANSLUCENCY_EDEFAULT;

    /**
     * The default value of the '{@link #getWearFactor() <em>Wear Factor</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getWearFactor()
     * @generated
     * @ordered
     */
    protected static final double WEAR_FACTOR_EDEFAULT = 1.0;

    /**
     * The cached value of the '{@link #getWearFactor() <em>Wear Factor</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getWearFactor()
     * @generated
     * @ordered
     */
    protected double wearFactor = WEAR_FACTOR_EDEFAULT;

    /**
     * The default value of the '{@link #isGlow() <em>Glow</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #isGlow()
     * @generated
     * @ordered
     */
    protected static final boolean GLOW_EDEFAULT = false;

    /**
     * The cached value of the '{@link #isGlow() <em>Glow</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #isGlow()
     * @generated
     * @ordered
     */
    protected boolean glow = GLOW_EDEFAULT;

    /**
     * The cached value of the '{@link #getTexture() <em>Texture</em>}' containment reference.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getTexture()
     * @generated
     * @ordered
     */
    protected Texture texture;

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    protected MaterialImpl() {
        super();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    protected EClass eStaticClass() {
        return CataloguePackage.Literals.MATERIAL;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public LabColour getLab() {
        return lab;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setLab(LabColour newLab) {
        LabColour oldLab = lab;
        lab = newLab;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MATERIAL__LAB, oldLab, lab));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public LabColour getCoreLab() {
        return coreLab;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setCoreLab(LabColour newCoreLab) {
        LabColour oldCoreLab = coreLab;
        coreLab = newCoreLab;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MATERIAL__CORE_LAB, oldCoreLab, coreLab));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getTranslucency() {
        return translucency;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setTranslucency(double newTranslucency) {
        double oldTranslucency = translucency;
        translucency = newTranslucency;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MATERIAL__TRANSLUCENCY, oldTranslucency, translucency));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getWearFactor() {
        return wearFactor;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setWearFactor(double newWearFactor) {
        double oldWearFactor = wearFactor;
        wearFactor = newWearFactor;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MATERIAL__WEAR_FACTOR, oldWearFactor, wearFactor));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public boolean isGlow() {
        return glow;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setGlow(boolean newGlow) {
        boolean oldGlow = glow;
        glow = newGlow;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MATERIAL__GLOW, oldGlow, glow));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Texture getTexture() {
        return texture;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    public NotificationChain basicSetTexture(Texture newTexture, NotificationChain msgs) {
        Texture oldTexture = texture;
        texture = newTexture;
        if (eNotificationRequired()) {
            ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, CataloguePackage.MATERIAL__TEXTURE, oldTexture, newTexture);
            if (msgs == null) msgs = notification; else msgs.add(notification);
        }
        return msgs;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setTexture(Texture newTexture) {
        if (newTexture != texture) {
            NotificationChain msgs = null;
            if (texture != null)
                msgs = ((InternalEObject)texture).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - CataloguePackage.MATERIAL__TEXTURE, null, msgs);
            if (newTexture != null)
                msgs = ((InternalEObject)newTexture).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - CataloguePackage.MATERIAL__TEXTURE, null, msgs);
            msgs = basicSetTexture(newTexture, msgs);
            if (msgs != null) msgs.dispatch();
        }
        else if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MATERIAL__TEXTURE, newTexture, newTexture));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
        switch (featureID) {
            case CataloguePackage.MATERIAL__TEXTURE:
                return basicSetTexture(null, msgs);
        }
        return super.eInverseRemove(otherEnd, featureID, msgs);
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Object eGet(int featureID, boolean resolve, boolean coreType) {
        switch (featureID) {
            case CataloguePackage.MATERIAL__LAB:
                return getLab();
            case CataloguePackage.MATERIAL__CORE_LAB:
                return getCoreLab();
            case CataloguePackage.MATERIAL__TRANSLUCENCY:
                return getTranslucency();
            case CataloguePackage.MATERIAL__WEAR_FACTOR:
                return getWearFactor();
            case CataloguePackage.MATERIAL__GLOW:
                return isGlow();
            case CataloguePackage.MATERIAL__TEXTURE:
                return getTexture();
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
            case CataloguePackage.MATERIAL__LAB:
                setLab((LabColour)newValue);
                return;
            case CataloguePackage.MATERIAL__CORE_LAB:
                setCoreLab((LabColour)newValue);
                return;
            case CataloguePackage.MATERIAL__TRANSLUCENCY:
                setTranslucency((Double)newValue);
                return;
            case CataloguePackage.MATERIAL__WEAR_FACTOR:
                setWearFactor((Double)newValue);
                return;
            case CataloguePackage.MATERIAL__GLOW:
                setGlow((Boolean)newValue);
                return;
            case CataloguePackage.MATERIAL__TEXTURE:
                setTexture((Texture)newValue);
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
            case CataloguePackage.MATERIAL__LAB:
                setLab(LAB_EDEFAULT);
                return;
            case CataloguePackage.MATERIAL__CORE_LAB:
                setCoreLab(CORE_LAB_EDEFAULT);
                return;
            case CataloguePackage.MATERIAL__TRANSLUCENCY:
                setTranslucency(TRANSLUCENCY_EDEFAULT);
                return;
            case CataloguePackage.MATERIAL__WEAR_FACTOR:
                setWearFactor(WEAR_FACTOR_EDEFAULT);
                return;
            case CataloguePackage.MATERIAL__GLOW:
                setGlow(GLOW_EDEFAULT);
                return;
            case CataloguePackage.MATERIAL__TEXTURE:
                setTexture((Texture)null);
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
            case CataloguePackage.MATERIAL__LAB:
                return LAB_EDEFAULT == null ? lab != null : !LAB_EDEFAULT.equals(lab);
            case CataloguePackage.MATERIAL__CORE_LAB:
                return CORE_LAB_EDEFAULT == null ? coreLab != null : !CORE_LAB_EDEFAULT.equals(coreLab);
            case CataloguePackage.MATERIAL__TRANSLUCENCY:
                return translucency != TRANSLUCENCY_EDEFAULT;
            case CataloguePackage.MATERIAL__WEAR_FACTOR:
                return wearFactor != WEAR_FACTOR_EDEFAULT;
            case CataloguePackage.MATERIAL__GLOW:
                return glow != GLOW_EDEFAULT;
            case CataloguePackage.MATERIAL__TEXTURE:
                return texture != null;
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
        result.append(" (lab: ");
        result.append(lab);
        result.append(", coreLab: ");
        result.append(coreLab);
        result.append(", translucency: ");
        result.append(translucency);
        result.append(", wearFactor: ");
        result.append(wearFactor);
        result.append(", glow: ");
        result.append(glow);
        result.append(')');
        return result.toString();
    }

} //MaterialImpl
