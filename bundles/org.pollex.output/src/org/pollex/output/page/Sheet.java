/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.page;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.EnumMap;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.pollex.output.drawing.HouseFont;

/**
 * A document of one page, drawn in mm with y down from the top left corner. Sizes of type are in points. The same
 * calls give the same bytes. Not for several threads; close it after use.
 */
public final class Sheet implements AutoCloseable {

    /** A point in mm. */
    public static final double POINT = 25.4 / 72;

    private final PDDocument document = new PDDocument();
    private final PDPage page;
    private final PDResources resources = new PDResources();
    private final Map<HouseFont, PageFont> fonts = new EnumMap<>(HouseFont.class);
    private final Map<HouseFont, COSName> names = new EnumMap<>(HouseFont.class);
    private final Marking marking = new Marking();
    private final PageSize size;

    /** An empty page. */
    public Sheet(PageSize size) {
        this.size = size;
        page = new PDPage(new PDRectangle((float) (size.width() / POINT), (float) (size.height() / POINT)));
        page.setResources(resources);
        document.addPage(page);
        document.setVersion(1.6f);
        document.getDocument().setVersion(1.6f);
        for (HouseFont house : HouseFont.values()) {
            PageFont font = new PageFont(document, house.font().bytes());
            fonts.put(house, font);
            names.put(house, resources.add(font.font()));
        }
        double k = 1 / POINT;
        marking.numbers("cm", k, 0, 0, -k, 0, size.height() * k);
    }

    /** Size of the page. */
    public PageSize size() {
        return size;
    }

    /** Measures of a font of this page. */
    public PageFont font(HouseFont house) {
        return fonts.get(house);
    }

    /** Fills a shape by its own winding rule. */
    public void fill(Shape shape, int rgb) {
        marking.colour("rg", rgb).path(shape).add(Marking.fill(shape));
    }

    /**
     * Draws a line along a shape, with round joins.
     *
     * @param width  mm, under the scale in force
     * @param dashes lengths of dash and gap in turn; none for a solid line
     */
    public void draw(Shape shape, int rgb, double width, double... dashes) {
        StringBuilder dash = new StringBuilder("[");
        for (double length : dashes) {
            dash.append(Marking.number(length)).append(' ');
        }
        marking.colour("RG", rgb).numbers("w", width).add("1 j " + dash + "] 0 d").path(shape).add("S");
    }

    /** Draws everything that follows, until {@link #end()}, under a transform. */
    public void begin(AffineTransform transform) {
        double[] m = new double[6];
        transform.getMatrix(m);
        marking.add("q").numbers("cm", m);
    }

    /** Cuts everything that follows, until {@link #end()}, at a shape. */
    public void beginWithin(Shape shape) {
        marking.add("q").path(shape).add(Marking.fill(shape).equals("f") ? "W n" : "W* n");
    }

    /** Ends what the last begin began. */
    public void end() {
        marking.add("Q");
    }

    /** A line of text with the left end of its base line at a place. */
    public void text(HouseFont house, double points, int rgb, double x, double y, String text) {
        byte[] codes = fonts.get(house).encode(text);
        if (codes.length > 0) {
            marking.add("BT").colour("rg", rgb)
                    .add("/" + names.get(house).getName() + " " + Marking.number(points * POINT) + " Tf")
                    .numbers("Tm", 1, 0, 0, -1, x, y).hex(codes, "Tj").add("ET");
        }
    }

    /** A line of text that ends at a place. */
    public void textEnding(HouseFont house, double points, int rgb, double x, double y, String text) {
        text(house, points, rgb, x - font(house).width(text, points), y, text);
    }

    /** A line of text with its middle at a place. */
    public void textCentred(HouseFont house, double points, int rgb, double x, double y, String text) {
        text(house, points, rgb, x - font(house).width(text, points) / 2, y, text);
    }

    /** A picture of pixels, without loss. */
    public void picture(BufferedImage image, double x, double y, double width, double height) {
        try {
            COSName name = resources.add(LosslessFactory.createFromImage(document, image));
            marking.add("q").numbers("cm", width, 0, 0, -height, x, y + height).add("/" + name.getName() + " Do")
                    .add("Q");
        } catch (IOException e) {
            throw new UncheckedIOException("A picture cannot be put on the page.", e);
        }
    }

    /**
     * The finished document; nothing can be drawn afterwards.
     *
     * @param date  day of making, the only time in the file
     */
    public byte[] finish(String title, LocalDate date) {
        try {
            fonts.values().forEach(PageFont::finish);
            PDStream stream = new PDStream(document);
            try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
                out.write(marking.bytes());
            }
            page.setContents(stream);
            PDDocumentInformation about = document.getDocumentInformation();
            about.setTitle(title);
            about.setCreator("Pollex");
            Calendar day = GregorianCalendar.from(date.atStartOfDay(ZoneOffset.UTC));
            day.setTimeZone(TimeZone.getTimeZone("UTC"));
            about.setCreationDate(day);
            about.setModificationDate(day);
            document.getDocumentCatalog().setLanguage(Locale.ENGLISH.toLanguageTag());
            document.setDocumentId((long) title.hashCode() << 20 ^ date.toEpochDay());
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes, CompressParameters.NO_COMPRESSION);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("The page cannot be finished.", e);
        }
    }

    @Override
    public void close() {
        try {
            document.close();
        } catch (IOException e) {
            throw new UncheckedIOException("The page cannot be closed.", e);
        }
    }
}
