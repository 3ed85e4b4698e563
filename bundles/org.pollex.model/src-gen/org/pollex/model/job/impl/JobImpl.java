/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.job.impl;

import java.time.LocalDate;

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

import org.pollex.model.job.Job;
import org.pollex.model.job.JobDesign;
import org.pollex.model.job.JobPackage;
import org.pollex.model.job.Revision;
import org.pollex.model.job.Use;
import org.pollex.model.job.Waiver;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Job</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.job.impl.JobImpl#getFormat <em>Format</em>}</li>
 *   <li>{@link org.pollex.model.job.impl.JobImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.pollex.model.job.impl.JobImpl#getClient <em>Client</em>}</li>
 *   <li>{@link org.pollex.model.job.impl.JobImpl#getUse <em>Use</em>}</li>
 *   <li>{@link org.pollex.model.job.impl.JobImpl#getQuantity <em>Quantity</em>}</li>
 *   <li>{@link org.pollex.model.job.impl.JobImpl#getDue <em>Due</em>}</li>
 *   <li>{@link org.pollex.model.job.impl.JobImpl#getNote <em>Note</em>}</li>
 *   <li>{@link org.pollex.model.job.impl.JobImpl#getDesigns <em>Designs</em>}</li>
 *   <li>{@link org.pollex.model.job.impl.JobImpl#getRevisions <em>Revisions</em>}</li>
 *   <li>{@link org.pollex.model.job.impl.JobImpl#getWaivers <em>Waivers</em>}</li>
 * </ul>
 *
 * @generated
 */
public class JobImpl extends MinimalEObjectImpl.Container implements Job {
    /**
     * The default value of the '{@link #getFormat() <em>Format</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getFormat()
     * @generated
     * @ordered
     */
    protected static final int FORMAT_EDEFAULT = 0;

    /**
     * The cached value of the '{@link #getFormat() <em>Format</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getFormat()
     * @generated
     * @ordered
     */
    protected int format = FORMAT_EDEFAULT;

    /**
     * The default value of the '{@link #getName() <em>Name</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getName()
     * @generated
     * @ordered
     */
    protected static final String NAME_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getName() <em>Name</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getName()
     * @generated
     * @ordered
     */
    protected String name = NAME_EDEFAULT;

    /**
     * The default value of the '{@link #getClient() <em>Client</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getClient()
     * @generated
     * @ordered
     */
    protected static final String CLIENT_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getClient() <em>Client</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getClient()
     * @generated
     * @ordered
     */
    protected String client = CLIENT_EDEFAULT;

    /**
     * The default value of the '{@link #getUse() <em>Use</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getUse()
     * @generated
     * @ordered
     */
    protected static final Use USE_EDEFAULT = Use.GIVEAWAY;

    /**
     * The cached value of the '{@link #getUse() <em>Use</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getUse()
     * @generated
     * @ordered
     */
    protected Use use = USE_EDEFAULT;

    /**
     * The default value of the '{@link #getQuantity() <em>Quantity</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getQuantity()
     * @generated
     * @ordered
     */
    protected static final int QUANTITY_EDEFAULT = 0;

    /**
     * The cached value of the '{@link #getQuantity() <em>Quantity</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getQuantity()
     * @generated
     * @ordered
     */
    protected int quantity = QUANTITY_EDEFAULT;

    /**
     * The default value of the '{@link #getDue() <em>Due</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getDue()
     * @generated
     * @ordered
     */
    protected static final LocalDate DUE_EDEFAULT = null;

    /**
     * The cached value of the '{@link #getDue() <em>Due</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getDue()
     * @generated
     * @ordered
     */
    protected LocalDate due = DUE_EDEFAULT;

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
     * The cached value of the '{@link #getDesigns() <em>Designs</em>}' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getDesigns()
     * @generated
     * @ordered
     */
    protected EList<JobDesign> designs;

    /**
     * The cached value of the '{@link #getRevisions() <em>Revisions</em>}' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getRevisions()
     * @generated
     * @ordered
     */
    protected EList<Revision> revisions;

    /**
     * The cached value of the '{@link #getWaivers() <em>Waivers</em>}' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #getWaivers()
     * @generated
     * @ordered
     */
    protected EList<Waiver> waivers;

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    protected JobImpl() {
        super();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    protected EClass eStaticClass() {
        return JobPackage.Literals.JOB;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public int getFormat() {
        return format;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setFormat(int newFormat) {
        int oldFormat = format;
        format = newFormat;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.JOB__FORMAT, oldFormat, format));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getName() {
        return name;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setName(String newName) {
        String oldName = name;
        name = newName;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.JOB__NAME, oldName, name));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getClient() {
        return client;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setClient(String newClient) {
        String oldClient = client;
        client = newClient;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.JOB__CLIENT, oldClient, client));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Use getUse() {
        return use;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setUse(Use newUse) {
        Use oldUse = use;
        use = newUse == null ? USE_EDEFAULT : newUse;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.JOB__USE, oldUse, use));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public int getQuantity() {
        return quantity;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setQuantity(int newQuantity) {
        int oldQuantity = quantity;
        quantity = newQuantity;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.JOB__QUANTITY, oldQuantity, quantity));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public LocalDate getDue() {
        return due;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public void setDue(LocalDate newDue) {
        LocalDate oldDue = due;
        due = newDue;
        if (eNotificationRequired())
            eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.JOB__DUE, oldDue, due));
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
            eNotify(new ENotificationImpl(this, Notification.SET, JobPackage.JOB__NOTE, oldNote, note));
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public EList<JobDesign> getDesigns() {
        if (designs == null) {
            designs = new EObjectContainmentEList<JobDesign>(JobDesign.class, this, JobPackage.JOB__DESIGNS);
        }
        return designs;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public EList<Revision> getRevisions() {
        if (revisions == null) {
            revisions = new EObjectContainmentEList<Revision>(Revision.class, this, JobPackage.JOB__REVISIONS);
        }
        return revisions;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public EList<Waiver> getWaivers() {
        if (waivers == null) {
            waivers = new EObjectContainmentEList<Waiver>(Waiver.class, this, JobPackage.JOB__WAIVERS);
        }
        return waivers;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
        switch (featureID) {
            case JobPackage.JOB__DESIGNS:
                return ((InternalEList<?>)getDesigns()).basicRemove(otherEnd, msgs);
            case JobPackage.JOB__REVISIONS:
                return ((InternalEList<?>)getRevisions()).basicRemove(otherEnd, msgs);
            case JobPackage.JOB__WAIVERS:
                return ((InternalEList<?>)getWaivers()).basicRemove(otherEnd, msgs);
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
            case JobPackage.JOB__FORMAT:
                return getFormat();
            case JobPackage.JOB__NAME:
                return getName();
            case JobPackage.JOB__CLIENT:
                return getClient();
            case JobPackage.JOB__USE:
                return getUse();
            case JobPackage.JOB__QUANTITY:
                return getQuantity();
            case JobPackage.JOB__DUE:
                return getDue();
            case JobPackage.JOB__NOTE:
                return getNote();
            case JobPackage.JOB__DESIGNS:
                return getDesigns();
            case JobPackage.JOB__REVISIONS:
                return getRevisions();
            case JobPackage.JOB__WAIVERS:
                return getWaivers();
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
            case JobPackage.JOB__FORMAT:
                setFormat((Integer)newValue);
                return;
            case JobPackage.JOB__NAME:
                setName((String)newValue);
                return;
            case JobPackage.JOB__CLIENT:
                setClient((String)newValue);
                return;
            case JobPackage.JOB__USE:
                setUse((Use)newValue);
                return;
            case JobPackage.JOB__QUANTITY:
                setQuantity((Integer)newValue);
                return;
            case JobPackage.JOB__DUE:
                setDue((LocalDate)newValue);
                return;
            case JobPackage.JOB__NOTE:
                setNote((String)newValue);
                return;
            case JobPackage.JOB__DESIGNS:
                getDesigns().clear();
                getDesigns().addAll((Collection<? extends JobDesign>)newValue);
                return;
            case JobPackage.JOB__REVISIONS:
                getRevisions().clear();
                getRevisions().addAll((Collection<? extends Revision>)newValue);
                return;
            case JobPackage.JOB__WAIVERS:
                getWaivers().clear();
                getWaivers().addAll((Collection<? extends Waiver>)newValue);
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
            case JobPackage.JOB__FORMAT:
                setFormat(FORMAT_EDEFAULT);
                return;
            case JobPackage.JOB__NAME:
                setName(NAME_EDEFAULT);
                return;
            case JobPackage.JOB__CLIENT:
                setClient(CLIENT_EDEFAULT);
                return;
            case JobPackage.JOB__USE:
                setUse(USE_EDEFAULT);
                return;
            case JobPackage.JOB__QUANTITY:
                setQuantity(QUANTITY_EDEFAULT);
                return;
            case JobPackage.JOB__DUE:
                setDue(DUE_EDEFAULT);
                return;
            case JobPackage.JOB__NOTE:
                setNote(NOTE_EDEFAULT);
                return;
            case JobPackage.JOB__DESIGNS:
                getDesigns().clear();
                return;
            case JobPackage.JOB__REVISIONS:
                getRevisions().clear();
                return;
            case JobPackage.JOB__WAIVERS:
                getWaivers().clear();
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
            case JobPackage.JOB__FORMAT:
                return format != FORMAT_EDEFAULT;
            case JobPackage.JOB__NAME:
                return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
            case JobPackage.JOB__CLIENT:
                return CLIENT_EDEFAULT == null ? client != null : !CLIENT_EDEFAULT.equals(client);
            case JobPackage.JOB__USE:
                return use != USE_EDEFAULT;
            case JobPackage.JOB__QUANTITY:
                return quantity != QUANTITY_EDEFAULT;
            case JobPackage.JOB__DUE:
                return DUE_EDEFAULT == null ? due != null : !DUE_EDEFAULT.equals(due);
            case JobPackage.JOB__NOTE:
                return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
            case JobPackage.JOB__DESIGNS:
                return designs != null && !designs.isEmpty();
            case JobPackage.JOB__REVISIONS:
                return revisions != null && !revisions.isEmpty();
            case JobPackage.JOB__WAIVERS:
                return waivers != null && !waivers.isEmpty();
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
        result.append(" (format: ");
        result.append(format);
        result.append(", name: ");
        result.append(name);
        result.append(", client: ");
        result.append(client);
        result.append(", use: ");
        result.append(use);
        result.append(", quantity: ");
        result.append(quantity);
        result.append(", due: ");
        result.append(due);
        result.append(", note: ");
        result.append(note);
        result.append(')');
        return result.toString();
    }

} //JobImpl
