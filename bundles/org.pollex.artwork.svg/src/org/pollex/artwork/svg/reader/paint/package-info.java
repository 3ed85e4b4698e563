/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Walks the elements of a file and turns them into regions of art. Way in:
 * {@link org.pollex.artwork.svg.reader.paint.Reading}. Syntax, style and stroking have packages of their own.
 */
package org.pollex.artwork.svg.reader.paint;
