/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour;

/**
 * A colour in CIELAB for D50 and the 2 degree observer.
 *
 * @param l lightness L*, 0 to 100
 * @param a green to red
 * @param b blue to yellow
 */
public record Lab(double l, double a, double b) {
}
