/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * The window in which a swatch picture of a material is taken from a photograph: cropped, balanced by a grey, given its
 * scale, seen on an item, and kept in the studio's catalogue. What is computed of it stands in
 * {@code org.pollex.print.stock}.
 */
package org.pollex.ui.inks.swatch;
