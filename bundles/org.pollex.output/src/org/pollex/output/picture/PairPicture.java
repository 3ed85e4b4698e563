/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.pollex.model.catalogue.Ink;
import org.pollex.print.InkRegion;
import org.pollex.print.Overprint;
import org.pollex.print.Printed;
import org.pollex.print.PrintedSide;
import org.pollex.print.item.ItemFace;
import org.pollex.rules.rank.Ranked;
import org.pollex.rules.rank.Ranking;

/** A small picture of a design in other inks on another material, as a ranking has them. */
public final class PairPicture {

    private PairPicture() {
    }

    /**
     * The first printed side, cut at its outline.
     *
     * @param height    of the picture, pixels
     * @param backdrop  colour beside the item
     */
    public static BufferedImage of(Printed printed, Ranked pair, int height, int backdrop) {
        List<Ink> own = Ranking.inks(printed);
        List<PrintedSide> sides = new ArrayList<>();
        for (PrintedSide side : printed.sides()) {
            List<InkRegion> regions = side.regions().stream().map(each -> in(each, own, pair)).toList();
            List<Overprint> overprints = side.overprints().stream().map(each -> new Overprint(each.laid().stream()
                    .map(region -> in(region, own, pair)).toList(), each.area())).toList();
            sides.add(new PrintedSide(side.face(), regions, side.marks(), side.types(), side.matches(), side.rasters(),
                    side.notices(), overprints, side.meant()));
        }
        Printed other = printed.with(pair.material(), pair.inks(), sides);
        ItemFace face = sides.isEmpty() ? printed.item().faces().get(0) : sides.get(0).face();
        Envelope box = face.area().getEnvelopeInternal();
        double scale = (height - 2) / box.getHeight();
        BufferedImage layer = new BufferedImage((int) Math.ceil(box.getWidth() * scale) + 2, height,
                BufferedImage.TYPE_INT_ARGB);
        AffineTransform place = AffineTransform.getTranslateInstance(1, 1);
        place.scale(scale, scale);
        place.translate(-box.getMinX(), -box.getMinY());
        new PrintPainter(other).paint(layer, place, face);
        BufferedImage image = new BufferedImage(layer.getWidth(), height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(new Color(backdrop));
        g.fillRect(0, 0, image.getWidth(), height);
        g.drawImage(layer, 0, 0, null);
        g.dispose();
        return image;
    }

    /** A region in the ink that stands in for its own. */
    private static InkRegion in(InkRegion region, List<Ink> own, Ranked pair) {
        for (int i = 0; i < own.size() && i < pair.inks().size(); i++) {
            if (region.ink().equals(own.get(i).getId())) {
                return new InkRegion(pair.inks().get(i).getId(), region.rgb(), region.area());
            }
        }
        return region;
    }
}
