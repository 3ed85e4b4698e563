/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * The properties an element has after attributes, style sheet, inheritance and variables. Ways in:
 * {@link org.pollex.artwork.svg.reader.style.Cascade} makes a
 * {@link org.pollex.artwork.svg.reader.style.Style}. Drawing does not belong here.
 */
package org.pollex.artwork.svg.reader.style;
