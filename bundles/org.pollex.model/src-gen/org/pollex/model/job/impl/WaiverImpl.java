/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.job.impl;

import java.time.Instant;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.pollex.model.job.JobPackage;
import org.pollex.model.job.Waiver;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Waiver</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.job.impl.WaiverImpl#getCheck <em>Check</em>}</li>
 *   <li>{@link org.pollex.model.job.impl.WaiverImpl#getDesign <em>Design</em>}</li>
 *   <li>{@link org.pollex.model.job.impl.WaiverImpl#getSide <em>Side</em>}</li>
 *   <li>{@link org.pollex.model.job.impl.WaiverImpl#getFingerprint <em>Fingerprint</em>}</li>
 *   <li>{@link org.pollex.model.job.impl.WaiverImpl#getReason <em>Reason</em>}</li>
 *   <li>{@link org.pollex.model.job.impl.WaiverImpl#getWho <em>Who</em>}</li>
 *   <li>{@link org.pollex.model.job.impl.WaiverImpl#getWhen <em>When</em>}</li>
 * </ul>
 *
 * @generated
 */
public class WaiverImpl extends MinimalEObjectImpl.Container implements Waiver {
    /**
     * The default value of the '{@link #getCheck() <em>Check</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getCheck()
     * @generated
     * @ordered
     */
    protected static final String CHECK_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getCheck() <em>Check</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getCheck()
     * @generated
     * @ordered
     */
    protected String check = CHECK_EDEFAULT;

    /**
     * The default value of the '{@link #getDesign() <em>Design</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getDesign()
     * @generated
     * @ordered
     */
    protected static final String DESIGN_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getDesign() <em>Design</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getDesign()
     * @generated
     * @ordered
     */
    protected String design = DESIGN_EDEFAULT;

    /**
     * The default value of the '{@link #getSide() <em>Side</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getSide()
     * @generated
     * @ordered
     */
    protected static final String SIDE_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getSide() <em>Side</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getSide()
     * @generated
     * @ordered
     */
    protected String side = SIDE_EDEFAULT;

    /**
     * The default value of the '{@link #getFingerprint() <em>Fingerprint</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getFingerprint()
     * @generated
     * @ordered
     */
    protected static final String FINGERPRINT_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getFingerprint() <em>Fingerprint</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getFingerprint()
     * @generated
     * @ordered
     */
    protected String fingerprint = FINGERPRINT_EDEFAULT;

    /**
     * The default value of the '{@link #getReason() <em>Reason</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getReason()
     * @generated
     * @ordered
     */
    protected static final String REASON_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getReason() <em>Reason</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getReason()
     * @generated
     * @ordered
     */
    protected String reason = REASON_EDEFAULT;

    /**
     * The default value of the '{@link #getWho() <em>Who</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getWho()
     * @generated
     * @ordered
     */
    protected static final String WHO_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getWho() <em>Who</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getWho()
     * @generated
     * @ordered
     */
    protected String who = WHO_EDEFAULT;

    /**
     * The default value of the '{@link #getWhen() <em>When</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getWhen()
     * @generated
     * @ordered
     */
    protected static final Instant WHEN_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getWhen() <em>When</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getWhen()
     * @generated
     * @ordered
     */
    protected Instant when = WHEN_EDEFAULT;

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    protected WaiverImpl() {
        super();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    protected EClass eStaticClass() {
        return JobPackage.Literals.WAIVER;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getCheck() {
        return check;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setCheck(String newCheck) {
        String oldCheck = check;
        check = newCheck;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.WAIVER__CHECK, oldCheck, check));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getDesign() {
        return design;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setDesign(String newDesign) {
        String oldDesign = design;
        design = newDesign;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.WAIVER__DESIGN, oldDesign, design));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getSide() {
        return side;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setSide(String newSide) {
        String oldSide = side;
        side = newSide;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.WAIVER__SIDE, oldSide, side));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getFingerprint() {
        return fingerprint;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setFingerprint(String newFingerprint) {
        String oldFingerprint = fingerprint;
        fingerprint = newFingerprint;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.WAIVER__FINGERPRINT, oldFingerprint, fingerprint));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getReason() {
        return reason;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setReason(String newReason) {
        String oldReason = reason;
        reason = newReason;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.WAIVER__REASON, oldReason, reason));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getWho() {
        return who;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setWho(String newWho) {
        String oldWho = who;
        who = newWho;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.WAIVER__WHO, oldWho, who));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Instant getWhen() {
        return when;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setWhen(Instant newWhen) {
        Instant oldWhen = when;
        when = newWhen;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.WAIVER__WHEN, oldWhen, when));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Object eGet(int featureID, boolean resolve, boolean coreType) {
        switch (featureID) {
            case JobPackage.WAIVER__CHECK:
                return getCheck();
            case JobPackage.WAIVER__DESIGN:
                return getDesign();
            case JobPackage.WAIVER__SIDE:
                return getSide();
            case JobPackage.WAIVER__FINGERPRINT:
                return getFingerprint();
            case JobPackage.WAIVER__REASON:
                return getReason();
            case JobPackage.WAIVER__WHO:
                return getWho();
            case JobPackage.WAIVER__WHEN:
                return getWhen();
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
            case JobPackage.WAIVER__CHECK:
                setCheck((String)newValue);
                return;
            case JobPackage.WAIVER__DESIGN:
                setDesign((String)newValue);
                return;
            case JobPackage.WAIVER__SIDE:
                setSide((String)newValue);
                return;
            case JobPackage.WAIVER__FINGERPRINT:
                setFingerprint((String)newValue);
                return;
            case JobPackage.WAIVER__REASON:
                setReason((String)newValue);
                return;
            case JobPackage.WAIVER__WHO:
                setWho((String)newValue);
                return;
            case JobPackage.WAIVER__WHEN:
                setWhen((Instant)newValue);
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
            case JobPackage.WAIVER__CHECK:
                setCheck(CHECK_EDEFAULT);
                return;
            case JobPackage.WAIVER__DESIGN:
                setDesign(DESIGN_EDEFAULT);
                return;
            case JobPackage.WAIVER__SIDE:
                setSide(SIDE_EDEFAULT);
                return;
            case JobPackage.WAIVER__FINGERPRINT:
                setFingerprint(FINGERPRINT_EDEFAULT);
                return;
            case JobPackage.WAIVER__REASON:
                setReason(REASON_EDEFAULT);
                return;
            case JobPackage.WAIVER__WHO:
                setWho(WHO_EDEFAULT);
                return;
            case JobPackage.WAIVER__WHEN:
                setWhen(WHEN_EDEFAULT);
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
            case JobPackage.WAIVER__CHECK:
                return CHECK_EDEFAULT == null ? check != null : !CHECK_EDEFAULT.equals(check);
            case JobPackage.WAIVER__DESIGN:
                return DESIGN_EDEFAULT == null ? design != null : !DESIGN_EDEFAULT.equals(design);
            case JobPackage.WAIVER__SIDE:
                return SIDE_EDEFAULT == null ? side != null : !SIDE_EDEFAULT.equals(side);
            case JobPackage.WAIVER__FINGERPRINT:
                return FINGERPRINT_EDEFAULT == null ? fingerprint != null : !FINGERPRINT_EDEFAULT.equals(fingerprint);
            case JobPackage.WAIVER__REASON:
                return REASON_EDEFAULT == null ? reason != null : !REASON_EDEFAULT.equals(reason);
            case JobPackage.WAIVER__WHO:
                return WHO_EDEFAULT == null ? who != null : !WHO_EDEFAULT.equals(who);
            case JobPackage.WAIVER__WHEN:
                return WHEN_EDEFAULT == null ? when != null : !WHEN_EDEFAULT.equals(when);
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
        result.append(" (check: ");
        result.append(check);
        result.append(", design: ");
        result.append(design);
        result.append(", side: ");
        result.append(side);
        result.append(", fingerprint: ");
        result.append(fingerprint);
        result.append(", reason: ");
        result.append(reason);
        result.append(", who: ");
        result.append(who);
        result.append(", when: ");
        result.append(when);
        result.append(')');
        return result.toString();
    }

} //WaiverImpl
