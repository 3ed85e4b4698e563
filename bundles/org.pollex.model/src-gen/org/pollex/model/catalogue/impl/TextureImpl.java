/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.catalogue.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EDataTypeEList;

import org.pollex.model.LabColour;

import org.pollex.model.catalogue.CataloguePackage;
import org.pollex.model.catalogue.GreyPatch;
import org.pollex.model.catalogue.PhotoArea;
import org.pollex.model.catalogue.Texture;
import org.pollex.model.catalogue.TextureKind;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Texture</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.catalogue.impl.TextureImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.TextureImpl#getScale <em>Scale</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.TextureImpl#getSeed <em>Seed</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.TextureImpl#getAmount <em>Amount</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.TextureImpl#getPicture <em>Picture</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.TextureImpl#getColours <em>Colours</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.TextureImpl#getCrop <em>Crop</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.TextureImpl#getGrey <em>Grey</em>}</li>
 * </ul>
 *
 * @generated
 */
public class TextureImpl extends MinimalEObjectImpl.Container implements Texture {
    /**
     * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getKind()
     * @generated
     * @ordered
     */
    protected static final TextureKind KIND_EDEFAULT = TextureKind.FLAT;

    /**
     * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getKind()
     * @generated
     * @ordered
     */
    protected TextureKind kind = KIND_EDEFAULT;

    /**
     * The default value of the '{@link #getScale() <em>Scale</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getScale()
     * @generated
     * @ordered
     */
    protected static final double SCALE_EDEFAULT = 1.0;

    /**
     * The cached value of the '{@link #getScale() <em>Scale</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getScale()
     * @generated
     * @ordered
     */
    protected double scale = SCALE_EDEFAULT;

    /**
     * The default value of the '{@link #getSeed() <em>Seed</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getSeed()
     * @generated
     * @ordered
     */
    protected static final int SEED_EDEFAULT = 0;

    /**
     * The cached value of the '{@link #getSeed() <em>Seed</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getSeed()
     * @generated
     * @ordered
     */
    protected int seed = SEED_EDEFAULT;

    /**
     * The default value of the '{@link #getAmount() <em>Amount</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getAmount()
     * @generated
     * @ordered
     */
    protected static final double AMOUNT_EDEFAULT = 0.0;

    /**
     * The cached value of the '{@link #getAmount() <em>Amount</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getAmount()
     * @generated
     * @ordered
     */
    protected double amount = AMOUNT_EDEFAULT;

    /**
     * The default value of the '{@link #getPicture() <em>Picture</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getPicture()
     * @generated
     * @ordered
     */
    protected static final String PICTURE_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getPicture() <em>Picture</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getPicture()
     * @generated
     * @ordered
     */
    protected String picture = PICTURE_EDEFAULT;

    /**
     * The cached value of the '{@link #getColours() <em>Colours</em>}' attribute list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getColours()
     * @generated
     * @ordered
     */
    protected EList<LabColour> colours;

    /**
     * The cached value of the '{@link #getCrop() <em>Crop</em>}' containment reference.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getCrop()
     * @generated
     * @ordered
     */
    protected PhotoArea crop;

    /**
     * The cached value of the '{@link #getGrey() <em>Grey</em>}' containment reference.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getGrey()
     * @generated
     * @ordered
     */
    protected GreyPatch grey;

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    protected TextureImpl() {
        super();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    protected EClass eStaticClass() {
        return CataloguePackage.Literals.TEXTURE;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public TextureKind getKind() {
        return kind;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setKind(TextureKind newKind) {
        TextureKind oldKind = kind;
        kind = newKind == null ? KIND_EDEFAULT : newKind;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.TEXTURE__KIND, oldKind, kind));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getScale() {
        return scale;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setScale(double newScale) {
        double oldScale = scale;
        scale = newScale;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.TEXTURE__SCALE, oldScale, scale));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public int getSeed() {
        return seed;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setSeed(int newSeed) {
        int oldSeed = seed;
        seed = newSeed;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.TEXTURE__SEED, oldSeed, seed));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getAmount() {
        return amount;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setAmount(double newAmount) {
        double oldAmount = amount;
        amount = newAmount;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.TEXTURE__AMOUNT, oldAmount, amount));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getPicture() {
        return picture;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setPicture(String newPicture) {
        String oldPicture = picture;
        picture = newPicture;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.TEXTURE__PICTURE, oldPicture, picture));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public EList<LabColour> getColours() {
        if (colours == null) {
            colours = new EDataTypeEList<LabColour>(LabColour.class, this, CataloguePackage.TEXTURE__COLOURS);
        }
        return colours;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public PhotoArea getCrop() {
        return crop;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    public NotificationChain basicSetCrop(PhotoArea newCrop, NotificationChain msgs) {
        PhotoArea oldCrop = crop;
        crop = newCrop;
        if (eNotificationRequired()) {
            ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, CataloguePackage.TEXTURE__CROP, oldCrop, newCrop);
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
    public void setCrop(PhotoArea newCrop) {
        if (newCrop != crop) {
            NotificationChain msgs = null;
            if (crop != null)
                msgs = ((InternalEObject)crop).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - CataloguePackage.TEXTURE__CROP, null, msgs);
            if (newCrop != null)
                msgs = ((InternalEObject)newCrop).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - CataloguePackage.TEXTURE__CROP, null, msgs);
            msgs = basicSetCrop(newCrop, msgs);
            if (msgs != null) msgs.dispatch();
        }
        else if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.TEXTURE__CROP, newCrop, newCrop));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public GreyPatch getGrey() {
        return grey;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    public NotificationChain basicSetGrey(GreyPatch newGrey, NotificationChain msgs) {
        GreyPatch oldGrey = grey;
        grey = newGrey;
        if (eNotificationRequired()) {
            ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, CataloguePackage.TEXTURE__GREY, oldGrey, newGrey);
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
    public void setGrey(GreyPatch newGrey) {
        if (newGrey != grey) {
            NotificationChain msgs = null;
            if (grey != null)
                msgs = ((InternalEObject)grey).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - CataloguePackage.TEXTURE__GREY, null, msgs);
            if (newGrey != null)
                msgs = ((InternalEObject)newGrey).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - CataloguePackage.TEXTURE__GREY, null, msgs);
            msgs = basicSetGrey(newGrey, msgs);
            if (msgs != null) msgs.dispatch();
        }
        else if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.TEXTURE__GREY, newGrey, newGrey));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
        switch (featureID) {
            case CataloguePackage.TEXTURE__CROP:
                return basicSetCrop(null, msgs);
            case CataloguePackage.TEXTURE__GREY:
                return basicSetGrey(null, msgs);
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
            case CataloguePackage.TEXTURE__KIND:
                return getKind();
            case CataloguePackage.TEXTURE__SCALE:
                return getScale();
            case CataloguePackage.TEXTURE__SEED:
                return getSeed();
            case CataloguePackage.TEXTURE__AMOUNT:
                return getAmount();
            case CataloguePackage.TEXTURE__PICTURE:
                return getPicture();
            case CataloguePackage.TEXTURE__COLOURS:
                return getColours();
            case CataloguePackage.TEXTURE__CROP:
                return getCrop();
            case CataloguePackage.TEXTURE__GREY:
                return getGrey();
        }
        return super.eGet(featureID, resolve, coreType);
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @SuppressWarnings("unchecked")
    @Override
    public void eSet(int featureID, Object newValue) {
        switch (featureID) {
            case CataloguePackage.TEXTURE__KIND:
                setKind((TextureKind)newValue);
                return;
            case CataloguePackage.TEXTURE__SCALE:
                setScale((Double)newValue);
                return;
            case CataloguePackage.TEXTURE__SEED:
                setSeed((Integer)newValue);
                return;
            case CataloguePackage.TEXTURE__AMOUNT:
                setAmount((Double)newValue);
                return;
            case CataloguePackage.TEXTURE__PICTURE:
                setPicture((String)newValue);
                return;
            case CataloguePackage.TEXTURE__COLOURS:
                getColours().clear();
                getColours().addAll((Collection<? extends LabColour>)newValue);
                return;
            case CataloguePackage.TEXTURE__CROP:
                setCrop((PhotoArea)newValue);
                return;
            case CataloguePackage.TEXTURE__GREY:
                setGrey((GreyPatch)newValue);
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
            case CataloguePackage.TEXTURE__KIND:
                setKind(KIND_EDEFAULT);
                return;
            case CataloguePackage.TEXTURE__SCALE:
                setScale(SCALE_EDEFAULT);
                return;
            case CataloguePackage.TEXTURE__SEED:
                setSeed(SEED_EDEFAULT);
                return;
            case CataloguePackage.TEXTURE__AMOUNT:
                setAmount(AMOUNT_EDEFAULT);
                return;
            case CataloguePackage.TEXTURE__PICTURE:
                setPicture(PICTURE_EDEFAULT);
                return;
            case CataloguePackage.TEXTURE__COLOURS:
                getColours().clear();
                return;
            case CataloguePackage.TEXTURE__CROP:
                setCrop((PhotoArea)null);
                return;
            case CataloguePackage.TEXTURE__GREY:
                setGrey((GreyPatch)null);
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
            case CataloguePackage.TEXTURE__KIND:
                return kind != KIND_EDEFAULT;
            case CataloguePackage.TEXTURE__SCALE:
                return scale != SCALE_EDEFAULT;
            case CataloguePackage.TEXTURE__SEED:
                return seed != SEED_EDEFAULT;
            case CataloguePackage.TEXTURE__AMOUNT:
                return amount != AMOUNT_EDEFAULT;
            case CataloguePackage.TEXTURE__PICTURE:
                return PICTURE_EDEFAULT == null ? picture != null : !PICTURE_EDEFAULT.equals(picture);
            case CataloguePackage.TEXTURE__COLOURS:
                return colours != null && !colours.isEmpty();
            case CataloguePackage.TEXTURE__CROP:
                return crop != null;
            case CataloguePackage.TEXTURE__GREY:
                return grey != null;
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
        result.append(", scale: ");
        result.append(scale);
        result.append(", seed: ");
        result.append(seed);
        result.append(", amount: ");
        result.append(amount);
        result.append(", picture: ");
        result.append(picture);
        result.append(", colours: ");
        result.append(colours);
        result.append(')');
        return result.toString();
    }

} //TextureImpl
