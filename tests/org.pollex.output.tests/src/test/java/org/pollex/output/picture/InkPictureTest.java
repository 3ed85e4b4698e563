/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.model.LabColour;
import org.pollex.model.catalogue.CatalogueFactory;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.TextureKind;
import org.pollex.print.stock.Stock;

/** The chip of an ink on a material shows the colours that films predict. */
class InkPictureTest {

    private static final double SCALE = 10;

    private static Ink ink(String white, String black) {
        Ink ink = CatalogueFactory.eINSTANCE.createInk();
        ink.setLab(LabColour.parse(white));
        ink.setLabOverBlack(LabColour.parse(black));
        return ink;
    }

    private static Material material(String lab) {
        Material material = CatalogueFactory.eINSTANCE.createMaterial();
        material.setLab(LabColour.parse(lab));
        return material;
    }

    private static Lab at(BufferedImage picture, double x, double y) {
        return Srgb.lab(picture.getRGB((int) (x * SCALE), (int) (y * SCALE)) & 0xffffff);
    }

    private static void near(Lab expected, Lab found) {
        assertTrue(DeltaE.ciede2000(expected, found) < 0.6, found + " in place of " + expected);
    }

    /** Over the cards of the drawdown the ink shows the two colours that it was measured with. */
    @Test
    void plainMaterials() {
        Ink red = ink("46 50 30", "30 34 18");
        BufferedImage black = InkPicture.of(red, Stock.of(material("22 0 0")), SCALE);
        assertEquals(120, black.getWidth());
        assertEquals(80, black.getHeight());
        near(new Lab(22, 0, 0), at(black, 0.5, 0.5));
        near(new Lab(30, 34, 18), at(black, 4, 4));
        BufferedImage white = InkPicture.of(red, Stock.of(material("95 0 -1")), SCALE);
        near(new Lab(46, 50, 30), at(white, 4, 4));
        Lab thin = at(white, 9, 4);
        assertTrue(thin.l() > 50 && thin.l() < 95 && thin.a() > 5, "half the film shows " + thin);
    }

    @Test
    void theHalfFilmOfACoveringInkIsStillCovering() {
        BufferedImage picture = InkPicture.of(ink("60 0 0", "60 0 0"), Stock.of(material("22 0 0")), SCALE);
        near(new Lab(60, 0, 0), at(picture, 4, 4));
        near(new Lab(60, 0, 0), at(picture, 9, 4));
    }

    @Test
    void patternsShowThroughAClearInkOnly() {
        Material camouflage = material("45 0 20");
        camouflage.setTexture(CatalogueFactory.eINSTANCE.createTexture());
        camouflage.getTexture().setKind(TextureKind.CAMOUFLAGE);
        camouflage.getTexture().setScale(2);
        camouflage.getTexture().getColours().add(LabColour.parse("25 0 10"));
        camouflage.getTexture().getColours().add(LabColour.parse("70 0 20"));
        Stock surface = Stock.of(camouflage);
        assertTrue(spread(InkPicture.of(ink("80 0 60", "40 -5 20"), surface, SCALE)) > 10);
        assertTrue(spread(InkPicture.of(ink("60 0 0", "60 0 0"), surface, SCALE)) < 0.5);
    }

    /** Difference of the lightest and the darkest place under the full film, L*. */
    private static double spread(BufferedImage picture) {
        Set<Double> seen = new HashSet<>();
        for (double x = 1.5; x < 7; x += 0.25) {
            for (double y = 1.5; y < 6.5; y += 0.25) {
                seen.add(at(picture, x, y).l());
            }
        }
        return seen.stream().mapToDouble(each -> each).max().orElseThrow()
                - seen.stream().mapToDouble(each -> each).min().orElseThrow();
    }
}
