/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * The fonts that come with the suite, so that text has the same outlines on every machine. Way in:
 * {@link org.pollex.artwork.font.ShippedFonts}. Laying out lines and runs of text, and fonts of the machine, do not
 * belong here.
 */
package org.pollex.artwork.font;
