/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Optional;
import org.pollex.artwork.ArtException;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.output.picture.MaterialPicture;
import org.pollex.output.picture.PictureOptions;
import org.pollex.print.PrintException;
import org.pollex.print.Printed;
import org.pollex.print.ShippedLettering;
import org.pollex.print.item.Item;
import org.pollex.print.item.ItemException;
import org.pollex.rules.Suite;

/** Small pictures of products and materials, drawn without a display. */
public final class Swatches {

    private static final double MM_PER_INCH = 25.4;

    /** Room round an item, mm. */
    private static final double ROOM = 4;

    private Swatches() {
    }

    /**
     * The first face of a product on a material.
     *
     * @param height    of the picture, which is square, pixels
     * @param backdrop  colour behind it, sRGB 0xRRGGBB
     * @return empty when the product cannot be built
     */
    public static Optional<BufferedImage> item(Suite suite, String product, String material, boolean zones, int height,
            int backdrop) {
        try {
            return Optional.of(item(bare(suite, product, material), zones, height, backdrop));
        } catch (PrintException | ItemException | ArtException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /**
     * The first face of what is printed.
     *
     * @param height    of the picture, which is square, pixels
     * @param backdrop  colour behind it, sRGB 0xRRGGBB
     */
    public static BufferedImage item(Printed printed, boolean zones, int height, int backdrop) {
        Item item = printed.item();
        return square(front(printed, height / (Math.max(item.width(), item.height()) + ROOM), zones, backdrop), height,
                backdrop);
    }

    /** The first face of what is printed, {@code scale} pixels a mm, with some room round it. */
    public static BufferedImage front(Printed printed, double scale, boolean zones, int backdrop) {
        PictureOptions options = PictureOptions.of(Math.max(PictureOptions.DPI_MIN,
                (int) Math.round(scale * MM_PER_INCH))).on(backdrop);
        return face(MaterialPicture.of(printed, options.withZones(zones)), printed.item(), options.scale(), 0);
    }

    /**
     * A product of a material with nothing on it.
     *
     * @throws PrintException when a catalogue lacks one of them
     * @throws ItemException  when the product cannot be built
     */
    public static Printed bare(Suite suite, String product, String material)
            throws PrintException, ItemException, ArtException {
        Design design = DesignFactory.eINSTANCE.createDesign();
        design.setProduct(product);
        design.setMaterial(material);
        design.setMethod(suite.catalogues().methods().get(0).getId());
        return suite.printer(design, placement -> {
            throw new ArtException("", "an empty design has no art");
        }, new ShippedLettering()).print(design);
    }

    /**
     * Cuts one out of the faces, which stand in a row with the same space before, between and after them.
     *
     * @param scale  pixels for a millimetre
     * @param index  of the face, from 0
     */
    public static BufferedImage face(BufferedImage faces, Item item, double scale, int index) {
        int count = item.faces().size();
        double space = (faces.getWidth() - count * item.width() * scale) / (count + 1);
        int y = (int) (space / 2);
        int x = (int) (space / 2 + index * (item.width() * scale + space));
        int width = (int) Math.min(faces.getWidth() - x, item.width() * scale + space);
        int tall = (int) Math.min(faces.getHeight() - y, item.height() * scale + space);
        return faces.getSubimage(x, y, width, tall);
    }

    /** Rows of a table take the size of their first picture, so all are of one size. */
    private static BufferedImage square(BufferedImage picture, int size, int backdrop) {
        BufferedImage square = new BufferedImage(size, size, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = square.createGraphics();
        g.setColor(new Color(backdrop));
        g.fillRect(0, 0, size, size);
        g.drawImage(picture, (size - picture.getWidth()) / 2, (size - picture.getHeight()) / 2, null);
        g.dispose();
        return square;
    }

    /** An empty picture for a row that stands for no single thing. */
    public static BufferedImage blank(int width, int height, int backdrop) {
        BufferedImage blank = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = blank.createGraphics();
        g.setColor(new Color(backdrop));
        g.fillRect(0, 0, width, height);
        g.dispose();
        return blank;
    }
}
