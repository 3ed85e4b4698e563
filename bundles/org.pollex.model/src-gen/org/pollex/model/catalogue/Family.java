/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.catalogue;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Family</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A kind of item; its outline generator and wear field are contributed under the same id.
 * <!-- end-model-doc -->
 *
 *
 * @see org.pollex.model.catalogue.CataloguePackage#getFamily()
 * @generated
 */
public interface Family extends Entry {
} // Family
