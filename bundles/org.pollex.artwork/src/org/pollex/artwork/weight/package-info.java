/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Weighs art before anyone resolves its crossings: an arrangement of lines grows with the number of crossings, which
 * a short file can drive into the millions.
 * Way in: {@link org.pollex.artwork.weight.ArtWeight}. Resolving crossings does not belong here.
 */
package org.pollex.artwork.weight;
