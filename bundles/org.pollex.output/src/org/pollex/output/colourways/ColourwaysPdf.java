/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.colourways;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.pollex.model.store.EntryNames;
import org.pollex.output.drawing.HouseFont;
import org.pollex.output.page.PageSize;
import org.pollex.output.page.Sheet;
import org.pollex.output.page.Words;
import org.pollex.output.picture.PairPicture;
import org.pollex.output.proof.ProofFacts;
import org.pollex.output.proof.ProofStyle;
import org.pollex.print.Printed;
import org.pollex.print.item.ItemFace;
import org.pollex.rules.rank.Ranked;

/**
 * One page of PDF that shows a client a design in several inks on several materials, each at true size with a box to
 * tick, how well it reads and why. The design as it is comes first, then the best of each material. The same design,
 * ranking and facts give the same bytes. Scripts that need shaping are set letter by letter.
 */
public final class ColourwaysPdf {

    private static final int INK = ProofStyle.INK;
    private static final int MUTED = ProofStyle.MUTED;
    private static final int HAIRLINE = ProofStyle.HAIRLINE;
    private static final int PAPER = ProofStyle.PAPER;

    private static final double MARGIN = 14;
    private static final double TOP = 34;
    private static final double FOOT = 16;
    private static final double CARD_MIN = 56;
    private static final double GAP = 5;
    /** Below a picture: a line for the inks, one for the material, one for the score, three for the reason. */
    private static final double WORDS = 25;
    private static final int REASON_LINES = 3;
    private static final int DPI = 400;
    private static final double INCH = 25.4;
    private static final double TICK = 4;

    private final Sheet sheet;
    private final Printed printed;
    private final ProofFacts facts;
    private final double width;
    private final double height;

    private ColourwaysPdf(Sheet sheet, Printed printed, ProofFacts facts) {
        this.sheet = sheet;
        this.printed = printed;
        this.facts = facts;
        ItemFace face = printed.sides().isEmpty() ? printed.item().faces().get(0) : printed.sides().get(0).face();
        width = face.area().getEnvelopeInternal().getWidth();
        height = face.area().getEnvelopeInternal().getHeight();
    }

    /**
     * Makes the page.
     *
     * @param ranking  of the design, best first; not empty
     * @throws IllegalArgumentException when there is nothing to show, or the page cannot hold the item at true size
     */
    public static byte[] of(Printed printed, List<Ranked> ranking, ProofFacts facts, PageSize size) {
        if (ranking.isEmpty()) {
            throw new IllegalArgumentException("Nothing is printed, so there are no colourways to show; place art "
                    + "first.");
        }
        try (Sheet sheet = new Sheet(size)) {
            ColourwaysPdf page = new ColourwaysPdf(sheet, printed, facts);
            page.draw(ranking);
            return sheet.finish("Colourways: " + page.name(), facts.date());
        }
    }

    private String name() {
        String name = printed.design().getName();
        return name == null || name.isBlank() ? "Design without a name" : name;
    }

    private void draw(List<Ranked> ranking) {
        double room = sheet.size().width() - 2 * MARGIN;
        int columns = (int) Math.floor((room + GAP) / (Math.max(CARD_MIN, width) + GAP));
        int rows = (int) Math.floor((sheet.size().height() - TOP - FOOT) / (height + WORDS));
        if (columns < 1 || rows < 1) {
            throw new IllegalArgumentException("A page of " + sheet.size().name() + " cannot hold an item of "
                    + Math.round(width) + " x " + Math.round(height) + " mm with its words; choose a larger page.");
        }
        head(room);
        List<Ranked> shown = Choice.of(ranking, columns * rows);
        double card = (room - (columns - 1) * GAP) / columns;
        double tall = (sheet.size().height() - TOP - FOOT) / rows;
        for (int i = 0; i < shown.size(); i++) {
            card(shown.get(i), MARGIN + i % columns * (card + GAP), TOP + i / columns * tall, card);
        }
        foot();
    }

    private void head(double room) {
        sheet.text(HouseFont.BOLD, 15, INK, MARGIN, 17, Words.fitted(sheet.font(HouseFont.BOLD), 15, name(),
                room * 0.7));
        String about = List.of("Inks and materials to choose from", facts.client(), facts.job()).stream()
                .filter(each -> !each.isBlank()).collect(Collectors.joining(", "));
        sheet.text(HouseFont.REGULAR, 9, MUTED, MARGIN, 23, Words.fitted(sheet.font(HouseFont.REGULAR), 9, about,
                room));
        sheet.textEnding(HouseFont.REGULAR, 9, MUTED, MARGIN + room, 17, facts.date().toString());
        sheet.draw(new Line2D.Double(MARGIN, 27, MARGIN + room, 27), HAIRLINE, 0.2);
    }

    private void card(Ranked each, double x, double y, double card) {
        BufferedImage picture = PairPicture.of(printed, each, (int) Math.round(height * DPI / INCH) + 2, PAPER);
        double pixel = INCH / DPI;
        sheet.picture(picture, x + (card - width) / 2, y, picture.getWidth() * pixel, picture.getHeight() * pixel);
        sheet.draw(new Rectangle2D.Double(x + 0.2, y + 0.2, TICK, TICK), MUTED, 0.25);
        double base = y + height + 5;
        line(HouseFont.BOLD, 8.4, INK, x, base, card, inks(each) + (each.own() ? " (as designed)" : ""));
        line(HouseFont.REGULAR, 8.4, INK, x, base + 3.9, card, "on " + EntryNames.of(each.material()));
        line(HouseFont.REGULAR, 7, MUTED, x, base + 7.6, card, String.format(Locale.ROOT, "%.0f of 100: %s",
                each.score(), each.verdict().words()));
        double at = base + 11;
        for (String line : Words.lines(sheet.font(HouseFont.REGULAR), 6.6, each.reason(), card, REASON_LINES)) {
            sheet.text(HouseFont.REGULAR, 6.6, MUTED, x, at, line);
            at += 2.8;
        }
    }

    private void line(HouseFont font, double points, int rgb, double x, double y, double width, String text) {
        sheet.text(font, points, rgb, x, y, Words.fitted(sheet.font(font), points, text, width));
    }

    private static String inks(Ranked each) {
        return each.inks().isEmpty() ? "Full colour"
                : each.inkNames();
    }

    private void foot() {
        double y = sheet.size().height() - 9;
        sheet.text(HouseFont.REGULAR, 7, MUTED, MARGIN, y - 3, "Printed at 100 % these are true size. Colours on paper "
                + "and on a screen are a likeness; what counts is a print on the material.");
        sheet.text(HouseFont.REGULAR, 7, MUTED, MARGIN, y, "The number says how well the print stands out from the "
                + "material where it does so least: 0 cannot be seen, 100 could not stand out more.");
    }
}
