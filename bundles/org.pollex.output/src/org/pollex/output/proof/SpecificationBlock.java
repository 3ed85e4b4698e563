/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.proof;

import java.util.ArrayList;
import java.util.List;
import org.pollex.geometry.shape.Polygons;
import org.pollex.model.catalogue.Method;
import org.pollex.model.store.EntryNames;
import org.pollex.output.drawing.HouseFont;
import org.pollex.output.page.Sheet;
import org.pollex.output.page.Words;
import org.pollex.print.Printed;
import org.pollex.print.PrintedSide;

/** What will be made, as a table of two columns. */
final class SpecificationBlock {

    private static final double LABEL = 17;
    private static final double LEADING = 3.1;
    private static final double GAP = 0.7;

    private record Row(String label, String value) {
    }

    private SpecificationBlock() {
    }

    /** Draws the block; returns the y below it. */
    static double draw(Sheet sheet, Printed printed, ProofFacts facts, double x, double y, double width) {
        double at = ProofStyle.heading(sheet, x, y, width, "Specification");
        for (Row row : rows(printed, facts)) {
            sheet.text(HouseFont.REGULAR, ProofStyle.BODY, ProofStyle.MUTED, x, at + 2.4, row.label());
            for (String line : Words.lines(sheet.font(HouseFont.REGULAR), ProofStyle.BODY, row.value(),
                    width - LABEL, 2)) {
                sheet.text(HouseFont.REGULAR, ProofStyle.BODY, ProofStyle.INK, x + LABEL, at + 2.4, line);
                at += LEADING;
            }
            at += GAP;
        }
        return at + 2.4;
    }

    private static List<Row> rows(Printed printed, ProofFacts facts) {
        List<Row> rows = new ArrayList<>();
        add(rows, "Client", facts.client());
        add(rows, "Job", facts.job());
        add(rows, "Quantity", facts.quantity().isPresent() ? facts.quantity().getAsInt() + " pieces" : "");
        add(rows, "Art", String.join(", ", facts.art()));
        add(rows, "Product", EntryNames.of(printed.item().product()));
        add(rows, "Size", mm(printed.item().width()) + " x " + mm(printed.item().height()) + " mm"
                + thickness(printed.item().product().getThickness()));
        add(rows, "Material", EntryNames.of(printed.material()));
        Method method = printed.method();
        add(rows, "Print", EntryNames.of(method));
        add(rows, "White", white(printed));
        add(rows, "Limits", "line " + mm(method.getLineMin()) + ", gap " + mm(method.getGapMin()) + ", x-height "
                + mm(method.getTypeMin()) + ", rim " + mm(method.getEdge()) + " mm; "
                + (method.isFullColour() ? "full colour" : "up to " + method.getInksMax()
                + (method.getInksMax() == 1 ? " ink" : " inks") + " a side"));
        return rows;
    }

    /** How much white lies below the colours of each side, on the item; empty when there is none. */
    private static String white(Printed printed) {
        List<String> sides = new ArrayList<>();
        for (PrintedSide side : printed.sides()) {
            double area = Polygons.intersection(printed.underbase().area(side), side.face().area()).getArea();
            if (area > 0) {
                sides.add(side.name() + " " + ProofStyle.number(area, 1) + " mm\u00b2");
            }
        }
        return sides.isEmpty() ? "" : "below, " + mm(printed.settings().choke()) + " mm inside the colours; "
                + String.join(", ", sides);
    }

    private static void add(List<Row> rows, String label, String value) {
        if (!value.isBlank()) {
            rows.add(new Row(label, value));
        }
    }

    private static String thickness(double mm) {
        return mm > 0 ? ", " + mm(mm) + " mm thick" : "";
    }

    private static String mm(double value) {
        return ProofStyle.number(value, 2);
    }
}
