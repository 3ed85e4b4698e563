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

import org.pollex.model.catalogue.CataloguePackage;
import org.pollex.model.catalogue.Method;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Method</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.catalogue.impl.MethodImpl#getLineMin <em>Line Min</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.MethodImpl#getGapMin <em>Gap Min</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.MethodImpl#getLineMinReversed <em>Line Min Reversed</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.MethodImpl#getGapMinReversed <em>Gap Min Reversed</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.MethodImpl#getTypeMin <em>Type Min</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.MethodImpl#getSpeckMin <em>Speck Min</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.MethodImpl#getPinholeMin <em>Pinhole Min</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.MethodImpl#getEdge <em>Edge</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.MethodImpl#getRegister <em>Register</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.MethodImpl#getChoke <em>Choke</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.MethodImpl#getInksMax <em>Inks Max</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.MethodImpl#getResolution <em>Resolution</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.MethodImpl#isFullColour <em>Full Colour</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.MethodImpl#isWhiteUnder <em>White Under</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MethodImpl extends EntryImpl implements Method {
    /**
     * The default value of the '{@link #getLineMin() <em>Line Min</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getLineMin()
     * @generated
     * @ordered
     */
    protected static final double LINE_MIN_EDEFAULT = 0.0;

    /**
     * The cached value of the '{@link #getLineMin() <em>Line Min</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getLineMin()
     * @generated
     * @ordered
     */
    protected double lineMin = LINE_MIN_EDEFAULT;

    /**
     * The default value of the '{@link #getGapMin() <em>Gap Min</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getGapMin()
     * @generated
     * @ordered
     */
    protected static final double GAP_MIN_EDEFAULT = 0.0;

    /**
     * The cached value of the '{@link #getGapMin() <em>Gap Min</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getGapMin()
     * @generated
     * @ordered
     */
    protected double gapMin = GAP_MIN_EDEFAULT;

    /**
     * The default value of the '{@link #getLineMinReversed() <em>Line Min Reversed</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getLineMinReversed()
     * @generated
     * @ordered
     */
    protected static final double LINE_MIN_REVERSED_EDEFAULT = 0.0;

    /**
     * The cached value of the '{@link #getLineMinReversed() <em>Line Min Reversed</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getLineMinReversed()
     * @generated
     * @ordered
     */
    protected double lineMinReversed = LINE_MIN_REVERSED_EDEFAULT;

    /**
     * The default value of the '{@link #getGapMinReversed() <em>Gap Min Reversed</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getGapMinReversed()
     * @generated
     * @ordered
     */
    protected static final double GAP_MIN_REVERSED_EDEFAULT = 0.0;

    /**
     * The cached value of the '{@link #getGapMinReversed() <em>Gap Min Reversed</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getGapMinReversed()
     * @generated
     * @ordered
     */
    protected double gapMinReversed = GAP_MIN_REVERSED_EDEFAULT;

    /**
     * The default value of the '{@link #getTypeMin() <em>Type Min</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getTypeMin()
     * @generated
     * @ordered
     */
    protected static final double TYPE_MIN_EDEFAULT = 0.0;

    /**
     * The cached value of the '{@link #getTypeMin() <em>Type Min</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getTypeMin()
     * @generated
     * @ordered
     */
    protected double typeMin = TYPE_MIN_EDEFAULT;

    /**
     * The default value of the '{@link #getSpeckMin() <em>Speck Min</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getSpeckMin()
     * @generated
     * @ordered
     */
    protected static final double SPECK_MIN_EDEFAULT = 0.0;

    /**
     * The cached value of the '{@link #getSpeckMin() <em>Speck Min</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getSpeckMin()
     * @generated
     * @ordered
     */
    protected double speckMin = SPECK_MIN_EDEFAULT;

    /**
     * The default value of the '{@link #getPinholeMin() <em>Pinhole Min</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getPinholeMin()
     * @generated
     * @ordered
     */
    protected static final double PINHOLE_MIN_EDEFAULT = 0.0;

    /**
     * The cached value of the '{@link #getPinholeMin() <em>Pinhole Min</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getPinholeMin()
     * @generated
     * @ordered
     */
    protected double pinholeMin = PINHOLE_MIN_EDEFAULT;

    /**
     * The default value of the '{@link #getEdge() <em>Edge</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getEdge()
     * @generated
     * @ordered
     */
    protected static final double EDGE_EDEFAULT = 0.0;

    /**
     * The cached value of the '{@link #getEdge() <em>Edge</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getEdge()
     * @generated
     * @ordered
     */
    protected double edge = EDGE_EDEFAULT;

    /**
     * The default value of the '{@link #getRegister() <em>Register</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getRegister()
     * @generated
     * @ordered
     */
    protected static final double REGISTER_EDEFAULT = 0.0;

    /**
     * The cached value of the '{@link #getRegister() <em>Register</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getRegister()
     * @generated
     * @ordered
     */
    protected double register = REGISTER_EDEFAULT;

    /**
     * The default value of the '{@link #getChoke() <em>Choke</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getChoke()
     * @generated
     * @ordered
     */
    protected static final double CHOKE_EDEFAULT = 0.0;

    /**
     * The cached value of the '{@link #getChoke() <em>Choke</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getChoke()
     * @generated
     * @ordered
     */
    protected double choke = CHOKE_EDEFAULT;

    /**
     * The default value of the '{@link #getInksMax() <em>Inks Max</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getInksMax()
     * @generated
     * @ordered
     */
    protected static final int INKS_MAX_EDEFAULT = 0;

    /**
     * The cached value of the '{@link #getInksMax() <em>Inks Max</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getInksMax()
     * @generated
     * @ordered
     */
    protected int inksMax = INKS_MAX_EDEFAULT;

    /**
     * The default value of the '{@link #getResolution() <em>Resolution</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getResolution()
     * @generated
     * @ordered
     */
    protected static final int RESOLUTION_EDEFAULT = 0;

    /**
     * The cached value of the '{@link #getResolution() <em>Resolution</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getResolution()
     * @generated
     * @ordered
     */
    protected int resolution = RESOLUTION_EDEFAULT;

    /**
     * The default value of the '{@link #isFullColour() <em>Full Colour</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #isFullColour()
     * @generated
     * @ordered
     */
    protected static final boolean FULL_COLOUR_EDEFAULT = false;

    /**
     * The cached value of the '{@link #isFullColour() <em>Full Colour</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #isFullColour()
     * @generated
     * @ordered
     */
    protected boolean fullColour = FULL_COLOUR_EDEFAULT;

    /**
     * The default value of the '{@link #isWhiteUnder() <em>White Under</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #isWhiteUnder()
     * @generated
     * @ordered
     */
    protected static final boolean WHITE_UNDER_EDEFAULT = false;

    /**
     * The cached value of the '{@link #isWhiteUnder() <em>White Under</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #isWhiteUnder()
     * @generated
     * @ordered
     */
    protected boolean whiteUnder = WHITE_UNDER_EDEFAULT;

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    protected MethodImpl() {
        super();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    protected EClass eStaticClass() {
        return CataloguePackage.Literals.METHOD;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getLineMin() {
        return lineMin;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setLineMin(double newLineMin) {
        double oldLineMin = lineMin;
        lineMin = newLineMin;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.METHOD__LINE_MIN, oldLineMin, lineMin));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getGapMin() {
        return gapMin;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setGapMin(double newGapMin) {
        double oldGapMin = gapMin;
        gapMin = newGapMin;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.METHOD__GAP_MIN, oldGapMin, gapMin));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getLineMinReversed() {
        return lineMinReversed;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setLineMinReversed(double newLineMinReversed) {
        double oldLineMinReversed = lineMinReversed;
        lineMinReversed = newLineMinReversed;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.METHOD__LINE_MIN_REVERSED, oldLineMinReversed, lineMinReversed));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getGapMinReversed() {
        return gapMinReversed;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setGapMinReversed(double newGapMinReversed) {
        double oldGapMinReversed = gapMinReversed;
        gapMinReversed = newGapMinReversed;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.METHOD__GAP_MIN_REVERSED, oldGapMinReversed, gapMinReversed));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getTypeMin() {
        return typeMin;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setTypeMin(double newTypeMin) {
        double oldTypeMin = typeMin;
        typeMin = newTypeMin;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.METHOD__TYPE_MIN, oldTypeMin, typeMin));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getSpeckMin() {
        return speckMin;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setSpeckMin(double newSpeckMin) {
        double oldSpeckMin = speckMin;
        speckMin = newSpeckMin;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.METHOD__SPECK_MIN, oldSpeckMin, speckMin));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getPinholeMin() {
        return pinholeMin;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setPinholeMin(double newPinholeMin) {
        double oldPinholeMin = pinholeMin;
        pinholeMin = newPinholeMin;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.METHOD__PINHOLE_MIN, oldPinholeMin, pinholeMin));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getEdge() {
        return edge;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setEdge(double newEdge) {
        double oldEdge = edge;
        edge = newEdge;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.METHOD__EDGE, oldEdge, edge));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getRegister() {
        return register;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setRegister(double newRegister) {
        double oldRegister = register;
        register = newRegister;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.METHOD__REGISTER, oldRegister, register));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getChoke() {
        return choke;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setChoke(double newChoke) {
        double oldChoke = choke;
        choke = newChoke;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.METHOD__CHOKE, oldChoke, choke));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public int getInksMax() {
        return inksMax;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setInksMax(int newInksMax) {
        int oldInksMax = inksMax;
        inksMax = newInksMax;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.METHOD__INKS_MAX, oldInksMax, inksMax));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public int getResolution() {
        return resolution;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setResolution(int newResolution) {
        int oldResolution = resolution;
        resolution = newResolution;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.METHOD__RESOLUTION, oldResolution, resolution));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public boolean isFullColour() {
        return fullColour;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setFullColour(boolean newFullColour) {
        boolean oldFullColour = fullColour;
        fullColour = newFullColour;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.METHOD__FULL_COLOUR, oldFullColour, fullColour));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public boolean isWhiteUnder() {
        return whiteUnder;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setWhiteUnder(boolean newWhiteUnder) {
        boolean oldWhiteUnder = whiteUnder;
        whiteUnder = newWhiteUnder;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.METHOD__WHITE_UNDER, oldWhiteUnder, whiteUnder));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Object eGet(int featureID, boolean resolve, boolean coreType) {
        switch (featureID) {
            case CataloguePackage.METHOD__LINE_MIN:
                return getLineMin();
            case CataloguePackage.METHOD__GAP_MIN:
                return getGapMin();
            case CataloguePackage.METHOD__LINE_MIN_REVERSED:
                return getLineMinReversed();
            case CataloguePackage.METHOD__GAP_MIN_REVERSED:
                return getGapMinReversed();
            case CataloguePackage.METHOD__TYPE_MIN:
                return getTypeMin();
            case CataloguePackage.METHOD__SPECK_MIN:
                return getSpeckMin();
            case CataloguePackage.METHOD__PINHOLE_MIN:
                return getPinholeMin();
            case CataloguePackage.METHOD__EDGE:
                return getEdge();
            case CataloguePackage.METHOD__REGISTER:
                return getRegister();
            case CataloguePackage.METHOD__CHOKE:
                return getChoke();
            case CataloguePackage.METHOD__INKS_MAX:
                return getInksMax();
            case CataloguePackage.METHOD__RESOLUTION:
                return getResolution();
            case CataloguePackage.METHOD__FULL_COLOUR:
                return isFullColour();
            case CataloguePackage.METHOD__WHITE_UNDER:
                return isWhiteUnder();
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
            case CataloguePackage.METHOD__LINE_MIN:
                setLineMin((Double)newValue);
                return;
            case CataloguePackage.METHOD__GAP_MIN:
                setGapMin((Double)newValue);
                return;
            case CataloguePackage.METHOD__LINE_MIN_REVERSED:
                setLineMinReversed((Double)newValue);
                return;
            case CataloguePackage.METHOD__GAP_MIN_REVERSED:
                setGapMinReversed((Double)newValue);
                return;
            case CataloguePackage.METHOD__TYPE_MIN:
                setTypeMin((Double)newValue);
                return;
            case CataloguePackage.METHOD__SPECK_MIN:
                setSpeckMin((Double)newValue);
                return;
            case CataloguePackage.METHOD__PINHOLE_MIN:
                setPinholeMin((Double)newValue);
                return;
            case CataloguePackage.METHOD__EDGE:
                setEdge((Double)newValue);
                return;
            case CataloguePackage.METHOD__REGISTER:
                setRegister((Double)newValue);
                return;
            case CataloguePackage.METHOD__CHOKE:
                setChoke((Double)newValue);
                return;
            case CataloguePackage.METHOD__INKS_MAX:
                setInksMax((Integer)newValue);
                return;
            case CataloguePackage.METHOD__RESOLUTION:
                setResolution((Integer)newValue);
                return;
            case CataloguePackage.METHOD__FULL_COLOUR:
                setFullColour((Boolean)newValue);
                return;
            case CataloguePackage.METHOD__WHITE_UNDER:
                setWhiteUnder((Boolean)newValue);
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
            case CataloguePackage.METHOD__LINE_MIN:
                setLineMin(LINE_MIN_EDEFAULT);
                return;
            case CataloguePackage.METHOD__GAP_MIN:
                setGapMin(GAP_MIN_EDEFAULT);
                return;
            case CataloguePackage.METHOD__LINE_MIN_REVERSED:
                setLineMinReversed(LINE_MIN_REVERSED_EDEFAULT);
                return;
            case CataloguePackage.METHOD__GAP_MIN_REVERSED:
                setGapMinReversed(GAP_MIN_REVERSED_EDEFAULT);
                return;
            case CataloguePackage.METHOD__TYPE_MIN:
                setTypeMin(TYPE_MIN_EDEFAULT);
                return;
            case CataloguePackage.METHOD__SPECK_MIN:
                setSpeckMin(SPECK_MIN_EDEFAULT);
                return;
            case CataloguePackage.METHOD__PINHOLE_MIN:
                setPinholeMin(PINHOLE_MIN_EDEFAULT);
                return;
            case CataloguePackage.METHOD__EDGE:
                setEdge(EDGE_EDEFAULT);
                return;
            case CataloguePackage.METHOD__REGISTER:
                setRegister(REGISTER_EDEFAULT);
                return;
            case CataloguePackage.METHOD__CHOKE:
                setChoke(CHOKE_EDEFAULT);
                return;
            case CataloguePackage.METHOD__INKS_MAX:
                setInksMax(INKS_MAX_EDEFAULT);
                return;
            case CataloguePackage.METHOD__RESOLUTION:
                setResolution(RESOLUTION_EDEFAULT);
                return;
            case CataloguePackage.METHOD__FULL_COLOUR:
                setFullColour(FULL_COLOUR_EDEFAULT);
                return;
            case CataloguePackage.METHOD__WHITE_UNDER:
                setWhiteUnder(WHITE_UNDER_EDEFAULT);
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
            case CataloguePackage.METHOD__LINE_MIN:
                return lineMin != LINE_MIN_EDEFAULT;
            case CataloguePackage.METHOD__GAP_MIN:
                return gapMin != GAP_MIN_EDEFAULT;
            case CataloguePackage.METHOD__LINE_MIN_REVERSED:
                return lineMinReversed != LINE_MIN_REVERSED_EDEFAULT;
            case CataloguePackage.METHOD__GAP_MIN_REVERSED:
                return gapMinReversed != GAP_MIN_REVERSED_EDEFAULT;
            case CataloguePackage.METHOD__TYPE_MIN:
                return typeMin != TYPE_MIN_EDEFAULT;
            case CataloguePackage.METHOD__SPECK_MIN:
                return speckMin != SPECK_MIN_EDEFAULT;
            case CataloguePackage.METHOD__PINHOLE_MIN:
                return pinholeMin != PINHOLE_MIN_EDEFAULT;
            case CataloguePackage.METHOD__EDGE:
                return edge != EDGE_EDEFAULT;
            case CataloguePackage.METHOD__REGISTER:
                return register != REGISTER_EDEFAULT;
            case CataloguePackage.METHOD__CHOKE:
                return choke != CHOKE_EDEFAULT;
            case CataloguePackage.METHOD__INKS_MAX:
                return inksMax != INKS_MAX_EDEFAULT;
            case CataloguePackage.METHOD__RESOLUTION:
                return resolution != RESOLUTION_EDEFAULT;
            case CataloguePackage.METHOD__FULL_COLOUR:
                return fullColour != FULL_COLOUR_EDEFAULT;
            case CataloguePackage.METHOD__WHITE_UNDER:
                return whiteUnder != WHITE_UNDER_EDEFAULT;
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
        result.append(" (lineMin: ");
        result.append(lineMin);
        result.append(", gapMin: ");
        result.append(gapMin);
        result.append(", lineMinReversed: ");
        result.append(lineMinReversed);
        result.append(", gapMinReversed: ");
        result.append(gapMinReversed);
        result.append(", typeMin: ");
        result.append(typeMin);
        result.append(", speckMin: ");
        result.append(speckMin);
        result.append(", pinholeMin: ");
        result.append(pinholeMin);
        result.append(", edge: ");
        result.append(edge);
        result.append(", register: ");
        result.append(register);
        result.append(", choke: ");
        result.append(choke);
        result.append(", inksMax: ");
        result.append(inksMax);
        result.append(", resolution: ");
        result.append(resolution);
        result.append(", fullColour: ");
        result.append(fullColour);
        result.append(", whiteUnder: ");
        result.append(whiteUnder);
        result.append(')');
        return result.toString();
    }

} //MethodImpl
