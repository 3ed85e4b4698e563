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
import org.pollex.model.job.SignOff;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Sign Off</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.job.impl.SignOffImpl#getWho <em>Who</em>}</li>
 *   <li>{@link org.pollex.model.job.impl.SignOffImpl#getWhen <em>When</em>}</li>
 *   <li>{@link org.pollex.model.job.impl.SignOffImpl#getNote <em>Note</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SignOffImpl extends MinimalEObjectImpl.Container implements SignOff {
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
     * The default value of the '{@link #getNote() <em>Note</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getNote()
     * @generated
     * @ordered
     */
    protected static final String NOTE_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getNote() <em>Note</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getNote()
     * @generated
     * @ordered
     */
    protected String note = NOTE_EDEFAULT;

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    protected SignOffImpl() {
        super();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    protected EClass eStaticClass() {
        return JobPackage.Literals.SIGN_OFF;
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
            eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.SIGN_OFF__WHO, oldWho, who));
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
            eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.SIGN_OFF__WHEN, oldWhen, when));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getNote() {
        return note;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setNote(String newNote) {
        String oldNote = note;
        note = newNote;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.SIGN_OFF__NOTE, oldNote, note));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Object eGet(int featureID, boolean resolve, boolean coreType) {
        switch (featureID) {
            case JobPackage.SIGN_OFF__WHO:
                return getWho();
            case JobPackage.SIGN_OFF__WHEN:
                return getWhen();
            case JobPackage.SIGN_OFF__NOTE:
                return getNote();
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
            case JobPackage.SIGN_OFF__WHO:
                setWho((String)newValue);
                return;
            case JobPackage.SIGN_OFF__WHEN:
                setWhen((Instant)newValue);
                return;
            case JobPackage.SIGN_OFF__NOTE:
                setNote((String)newValue);
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
            case JobPackage.SIGN_OFF__WHO:
                setWho(WHO_EDEFAULT);
                return;
            case JobPackage.SIGN_OFF__WHEN:
                setWhen(WHEN_EDEFAULT);
                return;
            case JobPackage.SIGN_OFF__NOTE:
                setNote(NOTE_EDEFAULT);
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
            case JobPackage.SIGN_OFF__WHO:
                return WHO_EDEFAULT == null ? who != null : !WHO_EDEFAULT.equals(who);
            case JobPackage.SIGN_OFF__WHEN:
                return WHEN_EDEFAULT == null ? when != null : !WHEN_EDEFAULT.equals(when);
            case JobPackage.SIGN_OFF__NOTE:
                return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
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
        result.append(" (who: ");
        result.append(who);
        result.append(", when: ");
        result.append(when);
        result.append(", note: ");
        result.append(note);
        result.append(')');
        return result.toString();
    }

} //SignOffImpl
