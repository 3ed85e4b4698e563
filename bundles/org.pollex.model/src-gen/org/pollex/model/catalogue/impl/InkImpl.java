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

import org.pollex.model.LabColour;

import org.pollex.model.catalogue.CataloguePackage;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.InkKind;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Ink</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.catalogue.impl.InkImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.InkImpl#getLab <em>Lab</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.InkImpl#getLabOverBlack <em>Lab Over Black</em>}</li>
 *   <li>{@link org.pollex.model.catalogue.impl.InkImpl#getFilm <em>Film</em>}</li>
 * </ul>
 *
 * @generated
 */
public class InkImpl extends EntryImpl implements Ink {
    /**
     * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getKind()
     * @generated
     * @ordered
     */
    protected static final InkKind KIND_EDEFAULT = InkKind.SPOT;

    /**
     * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getKind()
     * @generated
     * @ordered
     */
    protected InkKind kind = KIND_EDEFAULT;

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
     * The default value of the '{@link #getLabOverBlack() <em>Lab Over Black</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getLabOverBlack()
     * @generated
     * @ordered
     */
    protected static final LabColour LAB_OVER_BLACK_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getLabOverBlack() <em>Lab Over Black</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getLabOverBlack()
     * @generated
     * @ordered
     */
    protected LabColour labOverBlack = LAB_OVER_BLACK_EDEFAULT;

    /**
     * The default value of the '{@link #getFilm() <em>Film</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getFilm()
     * @generated
     * @ordered
     */
    protected static final double FILM_EDEFAULT = 8.0;

    /**
     * The cached value of the '{@link #getFilm() <em>Film</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getFilm()
     * @generated
     * @ordered
     */
    protected double film = FILM_EDEFAULT;

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    protected InkImpl() {
        super();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    protected EClass eStaticClass() {
        return CataloguePackage.Literals.INK;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public InkKind getKind() {
        return kind;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setKind(InkKind newKind) {
        InkKind oldKind = kind;
        kind = newKind == null ? KIND_EDEFAULT : newKind;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.INK__KIND, oldKind, kind));
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
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.INK__LAB, oldLab, lab));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public LabColour getLabOverBlack() {
        return labOverBlack;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setLabOverBlack(LabColour newLabOverBlack) {
        LabColour oldLabOverBlack = labOverBlack;
        labOverBlack = newLabOverBlack;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.INK__LAB_OVER_BLACK, oldLabOverBlack, labOverBlack));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public double getFilm() {
        return film;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setFilm(double newFilm) {
        double oldFilm = film;
        film = newFilm;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.INK__FILM, oldFilm, film));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Object eGet(int featureID, boolean resolve, boolean coreType) {
        switch (featureID) {
            case CataloguePackage.INK__KIND:
                return getKind();
            case CataloguePackage.INK__LAB:
                return getLab();
            case CataloguePackage.INK__LAB_OVER_BLACK:
                return getLabOverBlack();
            case CataloguePackage.INK__FILM:
                return getFilm();
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
            case CataloguePackage.INK__KIND:
                setKind((InkKind)newValue);
                return;
            case CataloguePackage.INK__LAB:
                setLab((LabColour)newValue);
                return;
            case CataloguePackage.INK__LAB_OVER_BLACK:
                setLabOverBlack((LabColour)newValue);
                return;
            case CataloguePackage.INK__FILM:
                setFilm((Double)newValue);
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
            case CataloguePackage.INK__KIND:
                setKind(KIND_EDEFAULT);
                return;
            case CataloguePackage.INK__LAB:
                setLab(LAB_EDEFAULT);
                return;
            case CataloguePackage.INK__LAB_OVER_BLACK:
                setLabOverBlack(LAB_OVER_BLACK_EDEFAULT);
                return;
            case CataloguePackage.INK__FILM:
                setFilm(FILM_EDEFAULT);
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
            case CataloguePackage.INK__KIND:
                return kind != KIND_EDEFAULT;
            case CataloguePackage.INK__LAB:
                return LAB_EDEFAULT == null ? lab != null : !LAB_EDEFAULT.equals(lab);
            case CataloguePackage.INK__LAB_OVER_BLACK:
                return LAB_OVER_BLACK_EDEFAULT == null ? labOverBlack != null : !LAB_OVER_BLACK_EDEFAULT.equals(labOverBlack);
            case CataloguePackage.INK__FILM:
                return film != FILM_EDEFAULT;
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
        result.append(", lab: ");
        result.append(lab);
        result.append(", labOverBlack: ");
        result.append(labOverBlack);
        result.append(", film: ");
        result.append(film);
        result.append(')');
        return result.toString();
    }

} //InkImpl
