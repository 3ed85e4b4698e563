/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.figure;

import java.util.Optional;
import org.eclipse.swt.graphics.RGB;
import org.locationtech.jts.geom.Geometry;

/**
 * What is drawn of an item: its outline, its zones and the colour of its material. All in mm.
 *
 * @param edge     width of the rim that does not print
 * @param surface  pattern of the material; empty on a plain one
 */
public record ItemLook(Geometry area, Geometry safe, Geometry wearRisk, Geometry unprintable, double edge,
        RGB material, Optional<Surface> surface) {
}
