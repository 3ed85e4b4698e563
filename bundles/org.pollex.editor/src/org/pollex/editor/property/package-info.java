/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: the properties of what is selected as fields to type in: place, size, text, inks; or of the whole design.
 *
 * <p>Way in: {@link org.pollex.editor.property.PropertyPage}, which the editor hands to the platform's view.
 *
 * <p>Does not belong: how numbers are read; that is in {@code measure}.
 */
package org.pollex.editor.property;
