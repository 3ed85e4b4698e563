/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.proof;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.util.List;
import org.pollex.colour.Srgb;
import org.pollex.print.PrintedTones;
import org.pollex.output.drawing.Shapes;
import org.pollex.output.drawing.ZoneLook;
import org.pollex.output.page.Sheet;
import org.pollex.print.Printed;
import org.pollex.print.ShownArea;
import org.pollex.print.item.ItemFace;

/** Draws a face as vectors: the material, the print cut at the outline, the outline, and the zones if asked. */
final class FaceDrawing {

    private final Sheet sheet;
    private final Printed printed;
    private final PrintedTones tones;

    FaceDrawing(Sheet sheet, Printed printed) {
        this.sheet = sheet;
        this.printed = printed;
        this.tones = PrintedTones.of(printed);
    }

    /** Draws the face with its middle at a place of the page, enlarged by a factor. */
    void draw(ItemFace face, double x, double y, double factor, boolean zones) {
        AffineTransform place = AffineTransform.getTranslateInstance(x, y);
        place.scale(factor, factor);
        Shape outline = Shapes.path(face.area());
        sheet.begin(place);
        sheet.fill(outline, Srgb.of(tones.ground()));
        for (ShownArea part : printed.side(face.name()).map(printed.underbase()::shown).orElse(List.of())) {
            sheet.fill(Shapes.path(Shapes.within(part.area(), face.area())), Srgb.of(tones.of(part)));
        }
        if (zones) {
            zones(face, factor);
        }
        sheet.draw(outline, ProofStyle.MUTED, 0.15 / factor);
        sheet.end();
    }

    private void zones(ItemFace face, double factor) {
        for (ZoneLook look : List.of(ZoneLook.WEAR_RISK, ZoneLook.UNPRINTABLE)) {
            Shape hatch = Shapes.path(look.hatch(face));
            sheet.draw(hatch, ProofStyle.PAPER, 0.5 / factor);
            sheet.draw(hatch, look.rgb(), 0.2 / factor);
        }
        Shape safe = Shapes.path(face.safe());
        sheet.draw(safe, ProofStyle.PAPER, 0.7 / factor);
        sheet.draw(safe, ZoneLook.SAFE.rgb(), 0.35 / factor, 2.4 / factor, 1.2 / factor);
    }
}
