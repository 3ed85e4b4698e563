/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.design;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Layer</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A stacking group of marks.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.pollex.model.design.Layer#getId <em>Id</em>}</li>
 *   <li>{@link org.pollex.model.design.Layer#getName <em>Name</em>}</li>
 *   <li>{@link org.pollex.model.design.Layer#isHidden <em>Hidden</em>}</li>
 *   <li>{@link org.pollex.model.design.Layer#isLocked <em>Locked</em>}</li>
 *   <li>{@link org.pollex.model.design.Layer#getMarks <em>Marks</em>}</li>
 * </ul>
 *
 * @see org.pollex.model.design.DesignPackage#getLayer()
 * @generated
 */
public interface Layer extends EObject {
    /**
     * Returns the value of the '<em><b>Id</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Unique in the design; given on save when absent.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Id</em>' attribute.
     * @see #setId(String)
     * @see org.pollex.model.design.DesignPackage#getLayer_Id()
     * @generated
     */
    String getId();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Layer#getId <em>Id</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Id</em>' attribute.
     * @see #getId()
     * @generated
     */
    void setId(String value);

    /**
     * Returns the value of the '<em><b>Name</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the value of the '<em>Name</em>' attribute.
     * @see #setName(String)
     * @see org.pollex.model.design.DesignPackage#getLayer_Name()
     * @generated
     */
    String getName();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Layer#getName <em>Name</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Name</em>' attribute.
     * @see #getName()
     * @generated
     */
    void setName(String value);

    /**
     * Returns the value of the '<em><b>Hidden</b></em>' attribute.
     * The default value is <code>"false"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Hidden layers are not printed.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Hidden</em>' attribute.
     * @see #setHidden(boolean)
     * @see org.pollex.model.design.DesignPackage#getLayer_Hidden()
     * @generated
     */
    boolean isHidden();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Layer#isHidden <em>Hidden</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Hidden</em>' attribute.
     * @see #isHidden()
     * @generated
     */
    void setHidden(boolean value);

    /**
     * Returns the value of the '<em><b>Locked</b></em>' attribute.
     * The default value is <code>"false"</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Locked layers are left alone by the editor; they print.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Locked</em>' attribute.
     * @see #setLocked(boolean)
     * @see org.pollex.model.design.DesignPackage#getLayer_Locked()
     * @generated
     */
    boolean isLocked();

    /**
     * Sets the value of the '{@link org.pollex.model.design.Layer#isLocked <em>Locked</em>}' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the new value of the '<em>Locked</em>' attribute.
     * @see #isLocked()
     * @generated
     */
    void setLocked(boolean value);

    /**
     * Returns the value of the '<em><b>Marks</b></em>' containment reference list.
     * The list contents are of type {@link org.pollex.model.design.Mark}.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Lowest first.
     * <!-- end-model-doc -->
     * @return the value of the '<em>Marks</em>' containment reference list.
     * @see org.pollex.model.design.DesignPackage#getLayer_Marks()
     * @generated
     */
    EList<Mark> getMarks();

} // Layer
