/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * The gate that every SVG from outside passes before a reader with more abilities than the common subset sees it: it
 * bounds size, depth and expansion, takes out what could reach for other files or run, and gives back a plain tree.
 * Way in: {@link org.pollex.artwork.svg.gate.SvgGate}. How a shape is drawn does not belong here.
 */
package org.pollex.artwork.svg.gate;
