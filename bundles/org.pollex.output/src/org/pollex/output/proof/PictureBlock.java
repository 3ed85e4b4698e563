/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.proof;

import java.awt.image.BufferedImage;
import org.pollex.output.page.Sheet;
import org.pollex.output.picture.MaterialPicture;
import org.pollex.output.picture.PictureOptions;
import org.pollex.print.Printed;

/** The item on its material, as a picture. */
final class PictureBlock {

    private static final int DPI = 400;
    private PictureBlock() {
    }

    /** Draws the block, at most so tall; returns the y below it. */
    static double draw(Sheet sheet, Printed printed, double x, double y, double width, double tallest) {
        double at = ProofStyle.heading(sheet, x, y, width, "On the material");
        BufferedImage image = MaterialPicture.of(printed, PictureOptions.of(DPI).on(ProofStyle.BACKDROP));
        double factor = Math.min(width / image.getWidth(), tallest / image.getHeight());
        double wide = image.getWidth() * factor;
        double high = image.getHeight() * factor;
        sheet.fill(ProofStyle.box(x, at, width, high), ProofStyle.BACKDROP);
        sheet.picture(image, x + (width - wide) / 2, at, wide, high);
        return at + high + 3.4;
    }
}
