/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.job;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

/**
 * <!-- begin-user-doc -->
 * The <b>Package</b> for the model.
 * It contains accessors for the meta objects to represent
 * <ul>
 *   <li>each class,</li>
 *   <li>each feature of each class,</li>
 *   <li>each enum,</li>
 *   <li>and each data type</li>
 * </ul>
 * <!-- end-user-doc -->
 * @see org.pollex.model.job.JobFactory
 * @generated
 */
public interface JobPackage extends EPackage {
    /**
     * The package name.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    String eNAME = "job";

    /**
     * The package namespace URI.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    String eNS_URI = "http://pollex.org/model/job";

    /**
     * The package namespace name.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    String eNS_PREFIX = "job";

    /**
     * The singleton instance of the package.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    JobPackage eINSTANCE = org.pollex.model.job.impl.JobPackageImpl.init();

    /**
     * The meta object id for the '{@link org.pollex.model.job.impl.JobImpl <em>Job</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.job.impl.JobImpl
     * @see org.pollex.model.job.impl.JobPackageImpl#getJob()
     * @generated
     */
    int JOB = 0;

    /**
     * The feature id for the '<em><b>Format</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int JOB__FORMAT = 0;

    /**
     * The feature id for the '<em><b>Name</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int JOB__NAME = 1;

    /**
     * The feature id for the '<em><b>Client</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int JOB__CLIENT = 2;

    /**
     * The feature id for the '<em><b>Use</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int JOB__USE = 3;

    /**
     * The feature id for the '<em><b>Quantity</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int JOB__QUANTITY = 4;

    /**
     * The feature id for the '<em><b>Due</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int JOB__DUE = 5;

    /**
     * The feature id for the '<em><b>Note</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int JOB__NOTE = 6;

    /**
     * The feature id for the '<em><b>Designs</b></em>' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int JOB__DESIGNS = 7;

    /**
     * The feature id for the '<em><b>Revisions</b></em>' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int JOB__REVISIONS = 8;

    /**
     * The feature id for the '<em><b>Waivers</b></em>' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int JOB__WAIVERS = 9;

    /**
     * The number of structural features of the '<em>Job</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int JOB_FEATURE_COUNT = 10;

    /**
     * The meta object id for the '{@link org.pollex.model.job.impl.JobDesignImpl <em>Design</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.job.impl.JobDesignImpl
     * @see org.pollex.model.job.impl.JobPackageImpl#getJobDesign()
     * @generated
     */
    int JOB_DESIGN = 1;

    /**
     * The feature id for the '<em><b>Path</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int JOB_DESIGN__PATH = 0;

    /**
     * The feature id for the '<em><b>Quantity</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int JOB_DESIGN__QUANTITY = 1;

    /**
     * The number of structural features of the '<em>Design</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int JOB_DESIGN_FEATURE_COUNT = 2;

    /**
     * The meta object id for the '{@link org.pollex.model.job.impl.RevisionImpl <em>Revision</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.job.impl.RevisionImpl
     * @see org.pollex.model.job.impl.JobPackageImpl#getRevision()
     * @generated
     */
    int REVISION = 2;

    /**
     * The feature id for the '<em><b>Number</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int REVISION__NUMBER = 0;

    /**
     * The feature id for the '<em><b>When</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int REVISION__WHEN = 1;

    /**
     * The feature id for the '<em><b>Who</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int REVISION__WHO = 2;

    /**
     * The feature id for the '<em><b>Note</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int REVISION__NOTE = 3;

    /**
     * The feature id for the '<em><b>Snapshots</b></em>' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int REVISION__SNAPSHOTS = 4;

    /**
     * The feature id for the '<em><b>Sign Off</b></em>' containment reference.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int REVISION__SIGN_OFF = 5;

    /**
     * The number of structural features of the '<em>Revision</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int REVISION_FEATURE_COUNT = 6;

    /**
     * The meta object id for the '{@link org.pollex.model.job.impl.SnapshotImpl <em>Snapshot</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.job.impl.SnapshotImpl
     * @see org.pollex.model.job.impl.JobPackageImpl#getSnapshot()
     * @generated
     */
    int SNAPSHOT = 3;

    /**
     * The feature id for the '<em><b>Path</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int SNAPSHOT__PATH = 0;

    /**
     * The feature id for the '<em><b>Sha256</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int SNAPSHOT__SHA256 = 1;

    /**
     * The number of structural features of the '<em>Snapshot</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int SNAPSHOT_FEATURE_COUNT = 2;

    /**
     * The meta object id for the '{@link org.pollex.model.job.impl.SignOffImpl <em>Sign Off</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.job.impl.SignOffImpl
     * @see org.pollex.model.job.impl.JobPackageImpl#getSignOff()
     * @generated
     */
    int SIGN_OFF = 4;

    /**
     * The feature id for the '<em><b>Who</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int SIGN_OFF__WHO = 0;

    /**
     * The feature id for the '<em><b>When</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int SIGN_OFF__WHEN = 1;

    /**
     * The feature id for the '<em><b>Note</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int SIGN_OFF__NOTE = 2;

    /**
     * The number of structural features of the '<em>Sign Off</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int SIGN_OFF_FEATURE_COUNT = 3;

    /**
     * The meta object id for the '{@link org.pollex.model.job.impl.WaiverImpl <em>Waiver</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.job.impl.WaiverImpl
     * @see org.pollex.model.job.impl.JobPackageImpl#getWaiver()
     * @generated
     */
    int WAIVER = 5;

    /**
     * The feature id for the '<em><b>Check</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int WAIVER__CHECK = 0;

    /**
     * The feature id for the '<em><b>Design</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int WAIVER__DESIGN = 1;

    /**
     * The feature id for the '<em><b>Side</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int WAIVER__SIDE = 2;

    /**
     * The feature id for the '<em><b>Fingerprint</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int WAIVER__FINGERPRINT = 3;

    /**
     * The feature id for the '<em><b>Reason</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int WAIVER__REASON = 4;

    /**
     * The feature id for the '<em><b>Who</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int WAIVER__WHO = 5;

    /**
     * The feature id for the '<em><b>When</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int WAIVER__WHEN = 6;

    /**
     * The number of structural features of the '<em>Waiver</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int WAIVER_FEATURE_COUNT = 7;

    /**
     * The meta object id for the '{@link org.pollex.model.job.Use <em>Use</em>}' enum.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.job.Use
     * @see org.pollex.model.job.impl.JobPackageImpl#getUse()
     * @generated
     */
    int USE = 6;

    /**
     * The meta object id for the '<em>Local Date</em>' data type.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see java.time.LocalDate
     * @see org.pollex.model.job.impl.JobPackageImpl#getLocalDate()
     * @generated
     */
    int LOCAL_DATE = 7;

    /**
     * The meta object id for the '<em>Instant</em>' data type.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see java.time.Instant
     * @see org.pollex.model.job.impl.JobPackageImpl#getInstant()
     * @generated
     */
    int INSTANT = 8;


    /**
     * Returns the meta object for class '{@link org.pollex.model.job.Job <em>Job</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Job</em>'.
     * @see org.pollex.model.job.Job
     * @generated
     */
    EClass getJob();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.job.Job#getFormat <em>Format</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Format</em>'.
     * @see org.pollex.model.job.Job#getFormat()
     * @see #getJob()
     * @generated
     */
    EAttribute getJob_Format();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.job.Job#getName <em>Name</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Name</em>'.
     * @see org.pollex.model.job.Job#getName()
     * @see #getJob()
     * @generated
     */
    EAttribute getJob_Name();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.job.Job#getClient <em>Client</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Client</em>'.
     * @see org.pollex.model.job.Job#getClient()
     * @see #getJob()
     * @generated
     */
    EAttribute getJob_Client();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.job.Job#getUse <em>Use</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Use</em>'.
     * @see org.pollex.model.job.Job#getUse()
     * @see #getJob()
     * @generated
     */
    EAttribute getJob_Use();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.job.Job#getQuantity <em>Quantity</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Quantity</em>'.
     * @see org.pollex.model.job.Job#getQuantity()
     * @see #getJob()
     * @generated
     */
    EAttribute getJob_Quantity();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.job.Job#getDue <em>Due</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Due</em>'.
     * @see org.pollex.model.job.Job#getDue()
     * @see #getJob()
     * @generated
     */
    EAttribute getJob_Due();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.job.Job#getNote <em>Note</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Note</em>'.
     * @see org.pollex.model.job.Job#getNote()
     * @see #getJob()
     * @generated
     */
    EAttribute getJob_Note();

    /**
     * Returns the meta object for the containment reference list '{@link org.pollex.model.job.Job#getDesigns <em>Designs</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the containment reference list '<em>Designs</em>'.
     * @see org.pollex.model.job.Job#getDesigns()
     * @see #getJob()
     * @generated
     */
    EReference getJob_Designs();

    /**
     * Returns the meta object for the containment reference list '{@link org.pollex.model.job.Job#getRevisions <em>Revisions</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the containment reference list '<em>Revisions</em>'.
     * @see org.pollex.model.job.Job#getRevisions()
     * @see #getJob()
     * @generated
     */
    EReference getJob_Revisions();

    /**
     * Returns the meta object for the containment reference list '{@link org.pollex.model.job.Job#getWaivers <em>Waivers</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the containment reference list '<em>Waivers</em>'.
     * @see org.pollex.model.job.Job#getWaivers()
     * @see #getJob()
     * @generated
     */
    EReference getJob_Waivers();

    /**
     * Returns the meta object for class '{@link org.pollex.model.job.JobDesign <em>Design</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Design</em>'.
     * @see org.pollex.model.job.JobDesign
     * @generated
     */
    EClass getJobDesign();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.job.JobDesign#getPath <em>Path</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Path</em>'.
     * @see org.pollex.model.job.JobDesign#getPath()
     * @see #getJobDesign()
     * @generated
     */
    EAttribute getJobDesign_Path();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.job.JobDesign#getQuantity <em>Quantity</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Quantity</em>'.
     * @see org.pollex.model.job.JobDesign#getQuantity()
     * @see #getJobDesign()
     * @generated
     */
    EAttribute getJobDesign_Quantity();

    /**
     * Returns the meta object for class '{@link org.pollex.model.job.Revision <em>Revision</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Revision</em>'.
     * @see org.pollex.model.job.Revision
     * @generated
     */
    EClass getRevision();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.job.Revision#getNumber <em>Number</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Number</em>'.
     * @see org.pollex.model.job.Revision#getNumber()
     * @see #getRevision()
     * @generated
     */
    EAttribute getRevision_Number();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.job.Revision#getWhen <em>When</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>When</em>'.
     * @see org.pollex.model.job.Revision#getWhen()
     * @see #getRevision()
     * @generated
     */
    EAttribute getRevision_When();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.job.Revision#getWho <em>Who</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Who</em>'.
     * @see org.pollex.model.job.Revision#getWho()
     * @see #getRevision()
     * @generated
     */
    EAttribute getRevision_Who();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.job.Revision#getNote <em>Note</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Note</em>'.
     * @see org.pollex.model.job.Revision#getNote()
     * @see #getRevision()
     * @generated
     */
    EAttribute getRevision_Note();

    /**
     * Returns the meta object for the containment reference list '{@link org.pollex.model.job.Revision#getSnapshots <em>Snapshots</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the containment reference list '<em>Snapshots</em>'.
     * @see org.pollex.model.job.Revision#getSnapshots()
     * @see #getRevision()
     * @generated
     */
    EReference getRevision_Snapshots();

    /**
     * Returns the meta object for the containment reference '{@link org.pollex.model.job.Revision#getSignOff <em>Sign Off</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the containment reference '<em>Sign Off</em>'.
     * @see org.pollex.model.job.Revision#getSignOff()
     * @see #getRevision()
     * @generated
     */
    EReference getRevision_SignOff();

    /**
     * Returns the meta object for class '{@link org.pollex.model.job.Snapshot <em>Snapshot</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Snapshot</em>'.
     * @see org.pollex.model.job.Snapshot
     * @generated
     */
    EClass getSnapshot();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.job.Snapshot#getPath <em>Path</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Path</em>'.
     * @see org.pollex.model.job.Snapshot#getPath()
     * @see #getSnapshot()
     * @generated
     */
    EAttribute getSnapshot_Path();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.job.Snapshot#getSha256 <em>Sha256</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Sha256</em>'.
     * @see org.pollex.model.job.Snapshot#getSha256()
     * @see #getSnapshot()
     * @generated
     */
    EAttribute getSnapshot_Sha256();

    /**
     * Returns the meta object for class '{@link org.pollex.model.job.SignOff <em>Sign Off</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Sign Off</em>'.
     * @see org.pollex.model.job.SignOff
     * @generated
     */
    EClass getSignOff();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.job.SignOff#getWho <em>Who</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Who</em>'.
     * @see org.pollex.model.job.SignOff#getWho()
     * @see #getSignOff()
     * @generated
     */
    EAttribute getSignOff_Who();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.job.SignOff#getWhen <em>When</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>When</em>'.
     * @see org.pollex.model.job.SignOff#getWhen()
     * @see #getSignOff()
     * @generated
     */
    EAttribute getSignOff_When();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.job.SignOff#getNote <em>Note</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Note</em>'.
     * @see org.pollex.model.job.SignOff#getNote()
     * @see #getSignOff()
     * @generated
     */
    EAttribute getSignOff_Note();

    /**
     * Returns the meta object for class '{@link org.pollex.model.job.Waiver <em>Waiver</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Waiver</em>'.
     * @see org.pollex.model.job.Waiver
     * @generated
     */
    EClass getWaiver();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.job.Waiver#getCheck <em>Check</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Check</em>'.
     * @see org.pollex.model.job.Waiver#getCheck()
     * @see #getWaiver()
     * @generated
     */
    EAttribute getWaiver_Check();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.job.Waiver#getDesign <em>Design</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Design</em>'.
     * @see org.pollex.model.job.Waiver#getDesign()
     * @see #getWaiver()
     * @generated
     */
    EAttribute getWaiver_Design();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.job.Waiver#getSide <em>Side</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Side</em>'.
     * @see org.pollex.model.job.Waiver#getSide()
     * @see #getWaiver()
     * @generated
     */
    EAttribute getWaiver_Side();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.job.Waiver#getFingerprint <em>Fingerprint</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Fingerprint</em>'.
     * @see org.pollex.model.job.Waiver#getFingerprint()
     * @see #getWaiver()
     * @generated
     */
    EAttribute getWaiver_Fingerprint();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.job.Waiver#getReason <em>Reason</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Reason</em>'.
     * @see org.pollex.model.job.Waiver#getReason()
     * @see #getWaiver()
     * @generated
     */
    EAttribute getWaiver_Reason();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.job.Waiver#getWho <em>Who</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Who</em>'.
     * @see org.pollex.model.job.Waiver#getWho()
     * @see #getWaiver()
     * @generated
     */
    EAttribute getWaiver_Who();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.job.Waiver#getWhen <em>When</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>When</em>'.
     * @see org.pollex.model.job.Waiver#getWhen()
     * @see #getWaiver()
     * @generated
     */
    EAttribute getWaiver_When();

    /**
     * Returns the meta object for enum '{@link org.pollex.model.job.Use <em>Use</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for enum '<em>Use</em>'.
     * @see org.pollex.model.job.Use
     * @generated
     */
    EEnum getUse();

    /**
     * Returns the meta object for data type '{@link java.time.LocalDate <em>Local Date</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for data type '<em>Local Date</em>'.
     * @see java.time.LocalDate
     * @generated
     */
    EDataType getLocalDate();

    /**
     * Returns the meta object for data type '{@link java.time.Instant <em>Instant</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for data type '<em>Instant</em>'.
     * @see java.time.Instant
     * @generated
     */
    EDataType getInstant();

    /**
     * Returns the factory that creates the instances of the model.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the factory that creates the instances of the model.
     * @generated
     */
    JobFactory getJobFactory();

    /**
     * <!-- begin-user-doc -->
     * Defines literals for the meta objects that represent
     * <ul>
     *   <li>each class,</li>
     *   <li>each feature of each class,</li>
     *   <li>each enum,</li>
     *   <li>and each data type</li>
     * </ul>
     * <!-- end-user-doc -->
     * @generated
     */
    interface Literals {
        /**
         * The meta object literal for the '{@link org.pollex.model.job.impl.JobImpl <em>Job</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.job.impl.JobImpl
         * @see org.pollex.model.job.impl.JobPackageImpl#getJob()
         * @generated
         */
        EClass JOB = eINSTANCE.getJob();

        /**
         * The meta object literal for the '<em><b>Format</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute JOB__FORMAT = eINSTANCE.getJob_Format();

        /**
         * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute JOB__NAME = eINSTANCE.getJob_Name();

        /**
         * The meta object literal for the '<em><b>Client</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute JOB__CLIENT = eINSTANCE.getJob_Client();

        /**
         * The meta object literal for the '<em><b>Use</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute JOB__USE = eINSTANCE.getJob_Use();

        /**
         * The meta object literal for the '<em><b>Quantity</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute JOB__QUANTITY = eINSTANCE.getJob_Quantity();

        /**
         * The meta object literal for the '<em><b>Due</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute JOB__DUE = eINSTANCE.getJob_Due();

        /**
         * The meta object literal for the '<em><b>Note</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute JOB__NOTE = eINSTANCE.getJob_Note();

        /**
         * The meta object literal for the '<em><b>Designs</b></em>' containment reference list feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EReference JOB__DESIGNS = eINSTANCE.getJob_Designs();

        /**
         * The meta object literal for the '<em><b>Revisions</b></em>' containment reference list feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EReference JOB__REVISIONS = eINSTANCE.getJob_Revisions();

        /**
         * The meta object literal for the '<em><b>Waivers</b></em>' containment reference list feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EReference JOB__WAIVERS = eINSTANCE.getJob_Waivers();

        /**
         * The meta object literal for the '{@link org.pollex.model.job.impl.JobDesignImpl <em>Design</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.job.impl.JobDesignImpl
         * @see org.pollex.model.job.impl.JobPackageImpl#getJobDesign()
         * @generated
         */
        EClass JOB_DESIGN = eINSTANCE.getJobDesign();

        /**
         * The meta object literal for the '<em><b>Path</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute JOB_DESIGN__PATH = eINSTANCE.getJobDesign_Path();

        /**
         * The meta object literal for the '<em><b>Quantity</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute JOB_DESIGN__QUANTITY = eINSTANCE.getJobDesign_Quantity();

        /**
         * The meta object literal for the '{@link org.pollex.model.job.impl.RevisionImpl <em>Revision</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.job.impl.RevisionImpl
         * @see org.pollex.model.job.impl.JobPackageImpl#getRevision()
         * @generated
         */
        EClass REVISION = eINSTANCE.getRevision();

        /**
         * The meta object literal for the '<em><b>Number</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute REVISION__NUMBER = eINSTANCE.getRevision_Number();

        /**
         * The meta object literal for the '<em><b>When</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute REVISION__WHEN = eINSTANCE.getRevision_When();

        /**
         * The meta object literal for the '<em><b>Who</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute REVISION__WHO = eINSTANCE.getRevision_Who();

        /**
         * The meta object literal for the '<em><b>Note</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute REVISION__NOTE = eINSTANCE.getRevision_Note();

        /**
         * The meta object literal for the '<em><b>Snapshots</b></em>' containment reference list feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EReference REVISION__SNAPSHOTS = eINSTANCE.getRevision_Snapshots();

        /**
         * The meta object literal for the '<em><b>Sign Off</b></em>' containment reference feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EReference REVISION__SIGN_OFF = eINSTANCE.getRevision_SignOff();

        /**
         * The meta object literal for the '{@link org.pollex.model.job.impl.SnapshotImpl <em>Snapshot</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.job.impl.SnapshotImpl
         * @see org.pollex.model.job.impl.JobPackageImpl#getSnapshot()
         * @generated
         */
        EClass SNAPSHOT = eINSTANCE.getSnapshot();

        /**
         * The meta object literal for the '<em><b>Path</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute SNAPSHOT__PATH = eINSTANCE.getSnapshot_Path();

        /**
         * The meta object literal for the '<em><b>Sha256</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute SNAPSHOT__SHA256 = eINSTANCE.getSnapshot_Sha256();

        /**
         * The meta object literal for the '{@link org.pollex.model.job.impl.SignOffImpl <em>Sign Off</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.job.impl.SignOffImpl
         * @see org.pollex.model.job.impl.JobPackageImpl#getSignOff()
         * @generated
         */
        EClass SIGN_OFF = eINSTANCE.getSignOff();

        /**
         * The meta object literal for the '<em><b>Who</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute SIGN_OFF__WHO = eINSTANCE.getSignOff_Who();

        /**
         * The meta object literal for the '<em><b>When</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute SIGN_OFF__WHEN = eINSTANCE.getSignOff_When();

        /**
         * The meta object literal for the '<em><b>Note</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute SIGN_OFF__NOTE = eINSTANCE.getSignOff_Note();

        /**
         * The meta object literal for the '{@link org.pollex.model.job.impl.WaiverImpl <em>Waiver</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.job.impl.WaiverImpl
         * @see org.pollex.model.job.impl.JobPackageImpl#getWaiver()
         * @generated
         */
        EClass WAIVER = eINSTANCE.getWaiver();

        /**
         * The meta object literal for the '<em><b>Check</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute WAIVER__CHECK = eINSTANCE.getWaiver_Check();

        /**
         * The meta object literal for the '<em><b>Design</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute WAIVER__DESIGN = eINSTANCE.getWaiver_Design();

        /**
         * The meta object literal for the '<em><b>Side</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute WAIVER__SIDE = eINSTANCE.getWaiver_Side();

        /**
         * The meta object literal for the '<em><b>Fingerprint</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute WAIVER__FINGERPRINT = eINSTANCE.getWaiver_Fingerprint();

        /**
         * The meta object literal for the '<em><b>Reason</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute WAIVER__REASON = eINSTANCE.getWaiver_Reason();

        /**
         * The meta object literal for the '<em><b>Who</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute WAIVER__WHO = eINSTANCE.getWaiver_Who();

        /**
         * The meta object literal for the '<em><b>When</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute WAIVER__WHEN = eINSTANCE.getWaiver_When();

        /**
         * The meta object literal for the '{@link org.pollex.model.job.Use <em>Use</em>}' enum.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.job.Use
         * @see org.pollex.model.job.impl.JobPackageImpl#getUse()
         * @generated
         */
        EEnum USE = eINSTANCE.getUse();

        /**
         * The meta object literal for the '<em>Local Date</em>' data type.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see java.time.LocalDate
         * @see org.pollex.model.job.impl.JobPackageImpl#getLocalDate()
         * @generated
         */
        EDataType LOCAL_DATE = eINSTANCE.getLocalDate();

        /**
         * The meta object literal for the '<em>Instant</em>' data type.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see java.time.Instant
         * @see org.pollex.model.job.impl.JobPackageImpl#getInstant()
         * @generated
         */
        EDataType INSTANT = eINSTANCE.getInstant();

    }

} //JobPackage
