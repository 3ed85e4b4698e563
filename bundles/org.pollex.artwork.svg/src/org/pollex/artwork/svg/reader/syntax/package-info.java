/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * The small languages inside attribute values: numbers, lengths, path data, transforms, view boxes and colours, as
 * SVG 2 and the CSS modules define them. Values only; elements and inheritance do not belong here. Ways in:
 * {@link org.pollex.artwork.svg.reader.syntax.PathData}, {@link org.pollex.artwork.svg.reader.syntax.Length},
 * {@link org.pollex.artwork.svg.reader.syntax.Transforms}, {@link org.pollex.artwork.svg.reader.syntax.Colours}.
 */
package org.pollex.artwork.svg.reader.syntax;
