/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.proof;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.pollex.output.drawing.HouseFont;
import org.pollex.output.drawing.Hatch;
import org.pollex.output.drawing.Shapes;
import org.pollex.output.drawing.ZoneLook;
import org.pollex.output.page.Sheet;
import org.pollex.print.Printed;
import org.pollex.print.item.ItemFace;

/**
 * The printed faces one below the other, enlarged with their zones and the pins of the findings. Names and legend stand
 * in the lower corners where the outline leaves them free, else in a strip below.
 */
final class EnlargementBlock {

    private static final double GAP = 3;
    private static final double STRIP = 5;
    private static final double NAME_WIDTH = 31;
    private static final double NAME_HEIGHT = 8;
    private static final double LEGEND_HEIGHT = 13;

    private final Sheet sheet;
    private final Printed printed;
    private final List<ItemFace> faces;
    private final double factor;
    private final boolean corners;

    EnlargementBlock(Sheet sheet, Printed printed, List<ItemFace> faces, double factor) {
        this.sheet = sheet;
        this.printed = printed;
        this.faces = faces;
        this.factor = factor;
        this.corners = faces.stream().allMatch(this::cornersFree);
    }

    double width() {
        return printed.item().width() * factor;
    }

    double height() {
        return faces.size() * faceHeight() + (faces.size() - 1) * GAP;
    }

    private double faceHeight() {
        return printed.item().height() * factor + (corners ? 0 : STRIP);
    }

    private boolean cornersFree(ItemFace face) {
        double w = printed.item().width() / 2;
        double h = printed.item().height() / 2;
        Envelope left = new Envelope(-w, -w + NAME_WIDTH / factor, h - NAME_HEIGHT / factor, h);
        Envelope right = new Envelope(w - NAME_WIDTH / factor, w, h - LEGEND_HEIGHT / factor, h);
        Geometry both = new GeometryFactory().toGeometry(left).union(new GeometryFactory().toGeometry(right));
        return !both.intersects(face.area());
    }

    void draw(double x, double y, List<NumberedFinding> listed) {
        double at = y;
        FaceDrawing drawing = new FaceDrawing(sheet, printed);
        Rectangle2D limits = new Rectangle2D.Double(x - 1, y - 1, width() + 2, height() + 2);
        PinBoard pins = new PinBoard(sheet, limits);
        double high = printed.item().height() * factor;
        for (ItemFace face : faces) {
            drawing.draw(face, x + width() / 2, at + high / 2, factor, true);
            name(face, x, at + high, face == faces.get(0));
            pins.pin(listed.stream().filter(finding -> finding.on(face.name())).toList(), x + width() / 2,
                    at + high / 2, factor);
            at += faceHeight() + GAP;
        }
    }

    private void name(ItemFace face, double x, double bottom, boolean first) {
        String title = ProofStyle.title(face.name());
        String scale = factor == 1 ? "true size" : ProofStyle.number(factor, 2) + " times enlarged";
        if (corners) {
            sheet.text(HouseFont.BOLD, 9, ProofStyle.INK, x, bottom - 4, title);
            sheet.text(HouseFont.REGULAR, ProofStyle.SMALL, ProofStyle.MUTED, x, bottom - 0.8, scale);
            if (first) {
                double y = bottom - LEGEND_HEIGHT + 1;
                for (ZoneLook look : List.of(ZoneLook.SAFE, ZoneLook.WEAR_RISK, ZoneLook.UNPRINTABLE)) {
                    sample(look, x + width() - 21, y);
                    y += 4.2;
                }
            }
        } else {
            sheet.text(HouseFont.BOLD, ProofStyle.BODY, ProofStyle.INK, x, bottom + 3.4, title);
            double after = x + sheet.font(HouseFont.BOLD).width(title, ProofStyle.BODY) + 2;
            sheet.text(HouseFont.REGULAR, ProofStyle.SMALL, ProofStyle.MUTED, after, bottom + 3.4, scale);
            double right = x + width() - 3 * 22;
            if (first && right > after + 24) {
                for (ZoneLook look : List.of(ZoneLook.SAFE, ZoneLook.WEAR_RISK, ZoneLook.UNPRINTABLE)) {
                    sample(look, right, bottom + 1.2);
                    right += 22;
                }
            }
        }
    }

    private void sample(ZoneLook look, double x, double y) {
        Geometry box = new GeometryFactory().toGeometry(new Envelope(0, 4, 0, 2.6));
        sheet.begin(AffineTransform.getTranslateInstance(x, y));
        if (look.pitch() > 0) {
            sheet.draw(Shapes.path(Hatch.lines(box, look.angle(), look.pitch() > 0.7 ? 1.3 : 0.75)), look.rgb(), 0.2);
            sheet.draw(Shapes.path(box), look.rgb(), 0.2);
        } else {
            sheet.draw(Shapes.path(box), look.rgb(), 0.35, 1.6, 0.8);
        }
        sheet.end();
        sheet.text(HouseFont.REGULAR, ProofStyle.SMALL, ProofStyle.INK, x + 5.2, y + 2.1, look.label());
    }
}
