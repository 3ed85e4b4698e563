/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.model.LabColour;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.store.EntryNames;
import org.pollex.output.drawing.HouseFont;
import org.pollex.print.PrintedTones;
import org.pollex.output.page.Sheet;
import org.pollex.output.page.Words;
import org.pollex.print.ColourMatch;
import org.pollex.print.InkRegion;
import org.pollex.print.Printed;
import org.pollex.print.PrintedSide;

/** The inks with their predicted colour on the material, its Lab values and where they print. */
final class InkBlock {

    private static final double ROW = 6.2;
    private static final double SWATCH = 8;
    private static final int MOST = 7;

    private record Row(String name, String value, int rgb) {
    }

    private InkBlock() {
    }

    /** Draws the block; returns the y below it. */
    static double draw(Sheet sheet, Printed printed, double x, double y, double width) {
        double at = ProofStyle.heading(sheet, x, y, width, "Inks on this material") + 0.3;
        List<Row> rows = rows(printed);
        int shown = rows.size() > MOST ? MOST - 1 : rows.size();
        for (Row row : rows.subList(0, shown)) {
            sheet.fill(ProofStyle.box(x, at, SWATCH, ROW - 1.4), row.rgb());
            sheet.draw(ProofStyle.box(x, at, SWATCH, ROW - 1.4), ProofStyle.HAIRLINE, 0.15);
            line(sheet, HouseFont.BOLD, ProofStyle.BODY, ProofStyle.INK, x + SWATCH + 2.2, at + 2.2, row.name(),
                    width - SWATCH - 2.2);
            line(sheet, HouseFont.REGULAR, ProofStyle.SMALL, ProofStyle.MUTED, x + SWATCH + 2.2, at + 4.9,
                    row.value(), width - SWATCH - 2.2);
            at += ROW;
        }
        if (shown < rows.size()) {
            sheet.text(HouseFont.REGULAR, ProofStyle.SMALL, ProofStyle.MUTED, x, at + 2,
                    "and " + (rows.size() - shown) + " more colours");
            at += 3.4;
        }
        return at + 2.2;
    }

    private static void line(Sheet sheet, HouseFont font, double points, int rgb, double x, double y, String text,
            double width) {
        sheet.text(font, points, rgb, x, y, Words.fitted(sheet.font(font), points, text, width));
    }

    private static List<Row> rows(Printed printed) {
        PrintedTones tones = PrintedTones.of(printed);
        List<Row> rows = new ArrayList<>();
        for (Ink ink : printed.inks()) {
            Lab here = tones.of(ink);
            LabColour white = ink.getLab();
            String overWhite = white == null ? "" : "  (on white "
                    + ProofStyle.number(white.l(), 0) + ", " + ProofStyle.number(white.a(), 0) + ", "
                    + ProofStyle.number(white.b(), 0) + ")";
            rows.add(new Row(EntryNames.of(ink) + where(printed, ink.getId()),
                    ProofStyle.lab(here) + overWhite, Srgb.of(here)));
        }
        mixed(printed).forEach((rgb, area) -> rows.add(new Row("Full colour " + Srgb.format(rgb),
                ProofStyle.lab(tones.mixed(rgb)) + "  " + ProofStyle.number(area, 1) + " mm\u00b2",
                Srgb.of(tones.mixed(rgb)))));
        return rows;
    }

    private static String where(Printed printed, String ink) {
        String sides = printed.sides().stream().filter(side -> side.inks().contains(ink)).map(PrintedSide::name)
                .collect(Collectors.joining(" and "));
        return sides.isEmpty() ? ", not used" : ", " + sides;
    }

    /** Art colours mixed from process inks with their printed area in mm2, largest first. */
    private static Map<Integer, Double> mixed(Printed printed) {
        Map<Integer, Double> areas = new LinkedHashMap<>();
        for (PrintedSide side : printed.sides()) {
            for (InkRegion region : side.regions()) {
                if (region.ink().equals(ColourMatch.PROCESS)) {
                    areas.merge(region.rgb(), region.area().getArea(), Double::sum);
                }
            }
        }
        return areas.entrySet().stream()
                .sorted(Map.Entry.<Integer, Double>comparingByValue(Comparator.reverseOrder()))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue, (a, b) -> a, LinkedHashMap::new));
    }
}
