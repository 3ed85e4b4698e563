/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Lays text out with the shipped fonts: white space, positions, anchors, spacing, baselines, text along a path,
 * decoration. Way in: {@link org.pollex.artwork.svg.reader.text.TextLayout}. Painting does not belong here.
 */
package org.pollex.artwork.svg.reader.text;
