/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.retone;

import java.util.Optional;
import org.pollex.print.retone.RetoneStyle;

/**
 * What sibling of a design is asked for.
 *
 * @param design    file of the design
 * @param material  id of the material of the sibling
 * @param ink       id of the one ink it prints in; chosen when not given
 * @param out       file of the sibling
 * @param style     how re-toned art is drawn
 */
public record RetoneOrder(String design, String material, Optional<String> ink, String out, RetoneStyle style) {
}
