/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Client art as plain values, whatever file it came from: filled areas in millimetres with a paint, in painting order.
 * Way in: {@link org.pollex.artwork.ArtReaders}. Readers of file formats live in bundles of their own; placing,
 * colour matching and flattening do not belong here.
 */
package org.pollex.artwork;
