/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork;

import java.util.List;

/**
 * A run of text of the art. Its glyph outlines are regions of the art; this keeps what outlines no longer say.
 *
 * @param text     the characters
 * @param asked    font family that the file asks for
 * @param used     shipped font whose outlines stand there
 * @param size     font size in mm as drawn, transforms included
 * @param xHeight  measured height of the lower-case x of the used font at that size, mm
 * @param regions  positions in {@link Art#regions()} that hold its outlines
 */
public record ArtText(String text, String asked, String used, double size, double xHeight, List<Integer> regions) {

    public ArtText {
        regions = List.copyOf(regions);
    }
}
