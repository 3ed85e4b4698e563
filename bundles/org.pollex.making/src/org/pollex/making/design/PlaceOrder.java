/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.design;

import java.util.Optional;

/**
 * How the art of a side is to be placed.
 *
 * @param design  file
 * @param side    name of the face
 * @param turn    degrees clockwise, or {@code best}; as it stands when not given
 * @param out     file to write; the design itself when not given
 */
public record PlaceOrder(String design, String side, Optional<String> turn, Optional<String> out) {
}
