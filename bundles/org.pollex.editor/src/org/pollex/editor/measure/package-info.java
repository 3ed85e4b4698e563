/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: understands what people write into fields for lengths, sizes and turns.
 *
 * <p>Way in: {@link org.pollex.editor.measure.Measure}.
 *
 * <p>Does not belong: widgets; this runs without a window.
 */
package org.pollex.editor.measure;
