/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.wizard;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.TexturePaint;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.Optional;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.Material;
import org.pollex.output.picture.StockChip;
import org.pollex.print.Laid;
import org.pollex.print.PrintedTones;
import org.pollex.print.stock.Stock;

/**
 * Chips of inks on one material, drawn without a display: a piece of its surface, pattern and all, the ink on its right
 * half. Not safe for threads.
 */
public final class InkChips {

    /** Height of the surface shown, mm. */
    private static final double SHOWN = 8;

    private final Stock stock;
    private final StockChip surface;
    private final int width;
    private final int height;
    private final int backdrop;
    private final int rim;

    /**
     * Looks at the surface, which takes a while when it is a photograph.
     *
     * @param width     of a chip, pixels
     * @param height    of a chip, pixels
     * @param backdrop  colour behind it, sRGB 0xRRGGBB
     * @param rim       colour of its edge
     */
    public InkChips(Material material, int width, int height, int backdrop, int rim) {
        this.width = width;
        this.height = height;
        this.backdrop = backdrop;
        this.rim = rim;
        stock = Stock.of(material);
        surface = new StockChip(stock, -SHOWN, -SHOWN / 2, height / SHOWN, width, height);
    }

    /** The chip of an ink. */
    public BufferedImage of(Ink ink) {
        Laid film = PrintedTones.film(ink);
        return chip(Optional.of(paint(surface.under(stock.plain() ? film::over : film::quick))));
    }

    /** The chip of the material alone. */
    public BufferedImage bare() {
        return chip(Optional.empty());
    }

    private BufferedImage chip(Optional<TexturePaint> printed) {
        BufferedImage chip = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = chip.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(new Color(backdrop));
        g.fillRect(0, 0, width, height);
        g.setPaint(paint(surface.bare()));
        g.fillRoundRect(1, 1, width - 3, height - 3, 4, 4);
        printed.ifPresent(paint -> {
            g.setPaint(paint);
            g.fillRoundRect(width / 2 - 2, 5, width / 2 - 4, height - 11, 2, 2);
        });
        g.setColor(new Color(rim));
        g.drawRoundRect(1, 1, width - 3, height - 3, 4, 4);
        g.dispose();
        return chip;
    }

    private TexturePaint paint(BufferedImage all) {
        return new TexturePaint(all, new Rectangle2D.Double(0, 0, width, height));
    }
}
