/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * What a studio prints on and with: families, products, materials, inks and print methods, as generated from
 * {@code model/catalogue.ecore}. Start at {@link org.pollex.model.catalogue.Catalogue}; make objects with
 * {@link org.pollex.model.catalogue.CatalogueFactory}. Entries refer to each other by id, never by link. No behaviour
 * belongs here: look-ups are in the store, geometry is with the families.
 */
package org.pollex.model.catalogue;
