/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.job.impl;

import java.time.Instant;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.pollex.model.job.JobPackage;
import org.pollex.model.job.Revision;
import org.pollex.model.job.SignOff;
import org.pollex.model.job.Snapshot;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Revision</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.job.impl.RevisionImpl#getNumber <em>Number</em>}</li>
 *   <li>{@link org.pollex.model.job.impl.RevisionImpl#getWhen <em>When</em>}</li>
 *   <li>{@link org.pollex.model.job.impl.RevisionImpl#getWho <em>Who</em>}</li>
 *   <li>{@link org.pollex.model.job.impl.RevisionImpl#getNote <em>Note</em>}</li>
 *   <li>{@link org.pollex.model.job.impl.RevisionImpl#getSnapshots <em>Snapshots</em>}</li>
 *   <li>{@link org.pollex.model.job.impl.RevisionImpl#getSignOff <em>Sign Off</em>}</li>
 * </ul>
 *
 * @generated
 */
public class RevisionImpl extends MinimalEObjectImpl.Container implements Revision {
    /**
     * The default value of the '{@link #getNumber() <em>Number</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getNumber()
     * @generated
     * @ordered
     */
    protected static final int NUMBER_EDEFAULT = 0;

    /**
     * The cached value of the '{@link #getNumber() <em>Number</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getNumber()
     * @generated
     * @ordered
     */
    protected int number = NUMBER_EDEFAULT;

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
     * The cached value of the '{@link #getSnapshots() <em>Snapshots</em>}' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getSnapshots()
     * @generated
     * @ordered
     */
    protected EList<Snapshot> snapshots;

    /**
     * The cached value of the '{@link #getSignOff() <em>Sign Off</em>}' containment reference.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getSignOff()
     * @generated
     * @ordered
     */
    protected SignOff signOff;

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    protected RevisionImpl() {
        super();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    protected EClass eStaticClass() {
        return JobPackage.Literals.REVISION;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public int getNumber() {
        return number;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setNumber(int newNumber) {
        int oldNumber = number;
        number = newNumber;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.REVISION__NUMBER, oldNumber, number));
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
            eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.REVISION__WHEN, oldWhen, when));
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
            eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.REVISION__WHO, oldWho, who));
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
            eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.REVISION__NOTE, oldNote, note));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public EList<Snapshot> getSnapshots() {
        if (snapshots == null) {
            snapshots = new EObjectContainmentEList<Snapshot>(Snapshot.class, this, JobPackage.REVISION__SNAPSHOTS);
        }
        return snapshots;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public SignOff getSignOff() {
        return signOff;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    public NotificationChain basicSetSignOff(SignOff newSignOff, NotificationChain msgs) {
        SignOff oldSignOff = signOff;
        signOff = newSignOff;
        if (eNotificationRequired()) {
            ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, JobPackage.REVISION__SIGN_OFF, oldSignOff, newSignOff);
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
    public void setSignOff(SignOff newSignOff) {
        if (newSignOff != signOff) {
            NotificationChain msgs = null;
            if (signOff != null)
                msgs = ((InternalEObject)signOff).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - JobPackage.REVISION__SIGN_OFF, null, msgs);
            if (newSignOff != null)
                msgs = ((InternalEObject)newSignOff).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - JobPackage.REVISION__SIGN_OFF, null, msgs);
            msgs = basicSetSignOff(newSignOff, msgs);
            if (msgs != null) msgs.dispatch();
        }
        else if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.REVISION__SIGN_OFF, newSignOff, newSignOff));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
        switch (featureID) {
            case JobPackage.REVISION__SNAPSHOTS:
                return ((InternalEList<?>)getSnapshots()).basicRemove(otherEnd, msgs);
            case JobPackage.REVISION__SIGN_OFF:
                return basicSetSignOff(null, msgs);
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
            case JobPackage.REVISION__NUMBER:
                return getNumber();
            case JobPackage.REVISION__WHEN:
                return getWhen();
            case JobPackage.REVISION__WHO:
                return getWho();
            case JobPackage.REVISION__NOTE:
                return getNote();
            case JobPackage.REVISION__SNAPSHOTS:
                return getSnapshots();
            case JobPackage.REVISION__SIGN_OFF:
                return getSignOff();
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
            case JobPackage.REVISION__NUMBER:
                setNumber((Integer)newValue);
                return;
            case JobPackage.REVISION__WHEN:
                setWhen((Instant)newValue);
                return;
            case JobPackage.REVISION__WHO:
                setWho((String)newValue);
                return;
            case JobPackage.REVISION__NOTE:
                setNote((String)newValue);
                return;
            case JobPackage.REVISION__SNAPSHOTS:
                getSnapshots().clear();
                getSnapshots().addAll((Collection<? extends Snapshot>)newValue);
                return;
            case JobPackage.REVISION__SIGN_OFF:
                setSignOff((SignOff)newValue);
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
            case JobPackage.REVISION__NUMBER:
                setNumber(NUMBER_EDEFAULT);
                return;
            case JobPackage.REVISION__WHEN:
                setWhen(WHEN_EDEFAULT);
                return;
            case JobPackage.REVISION__WHO:
                setWho(WHO_EDEFAULT);
                return;
            case JobPackage.REVISION__NOTE:
                setNote(NOTE_EDEFAULT);
                return;
            case JobPackage.REVISION__SNAPSHOTS:
                getSnapshots().clear();
                return;
            case JobPackage.REVISION__SIGN_OFF:
                setSignOff((SignOff)null);
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
            case JobPackage.REVISION__NUMBER:
                return number != NUMBER_EDEFAULT;
            case JobPackage.REVISION__WHEN:
                return WHEN_EDEFAULT == null ? when != null : !WHEN_EDEFAULT.equals(when);
            case JobPackage.REVISION__WHO:
                return WHO_EDEFAULT == null ? who != null : !WHO_EDEFAULT.equals(who);
            case JobPackage.REVISION__NOTE:
                return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
            case JobPackage.REVISION__SNAPSHOTS:
                return snapshots != null && !snapshots.isEmpty();
            case JobPackage.REVISION__SIGN_OFF:
                return signOff != null;
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
        result.append(" (number: ");
        result.append(number);
        result.append(", when: ");
        result.append(when);
        result.append(", who: ");
        result.append(who);
        result.append(", note: ");
        result.append(note);
        result.append(')');
        return result.toString();
    }

} //RevisionImpl
