/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.util.List;
import java.util.OptionalInt;

/**
 * What a piece of art means where it can be seen on its side, before inks are chosen: also the colours that stay bare.
 *
 * @param mark    id of the mark
 * @param ground  colour of the ground that it was drawn for, sRGB 0xRRGGBB; nothing when it has none
 * @param areas   its colours with where they show on the item; they do not overlap. Its ground is not among them
 */
public record MeantArt(String mark, OptionalInt ground, List<ColourArea> areas) {

    public MeantArt {
        areas = List.copyOf(areas);
    }
}
