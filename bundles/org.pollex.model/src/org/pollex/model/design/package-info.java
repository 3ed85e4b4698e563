/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * What is printed on one product, as generated from {@code model/design.ecore}: sides hold layers, layers hold marks.
 * Start at {@link org.pollex.model.design.Design}; make objects with
 * {@link org.pollex.model.design.DesignFactory}. A design refers to catalogue entries by id and to art by relative path
 * and hash, so it opens without them. No behaviour belongs here.
 */
package org.pollex.model.design;
