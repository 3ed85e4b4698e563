/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.font;

/**
 * The font that serves a request.
 *
 * @param font      shipped font to draw with
 * @param asked     first family of the request, or the generic name when it asks for nothing else
 * @param replaced  whether the asked family is not shipped and another one stands in
 */
public record FontMatch(ShippedFont font, String asked, boolean replaced) {
}
