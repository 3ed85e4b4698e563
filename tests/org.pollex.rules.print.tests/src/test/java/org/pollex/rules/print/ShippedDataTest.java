/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.pollex.colour.DeltaE;
import org.pollex.model.catalogue.CatalogueFactory;
import org.pollex.model.catalogue.Entry;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.InkKind;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.TextureKind;
import org.pollex.model.catalogue.Method;
import org.pollex.model.catalogue.Product;
import org.pollex.model.catalogue.Setting;
import org.pollex.model.store.Catalogues;
import org.pollex.print.FilmColour;
import org.pollex.print.PressSettings;
import org.pollex.print.stock.Stock;
import org.pollex.rules.CheckEntry;
import org.pollex.rules.Contributions;
import org.pollex.rules.Suite;

/** The data that ships with the checks and with picks. */
class ShippedDataTest {

    private static Suite suite;
    private static Catalogues all;

    @BeforeAll
    static void install() {
        suite = Suite.of(Contributions.fromClassPath(ShippedDataTest.class.getClassLoader()));
        all = suite.catalogues();
    }

    @Test
    void hasThePlannedEntries() {
        assertEquals(List.of("standard-pick", "small-pick", "wide-triangle-pick"),
                all.products().stream().map(Product::getId).toList());
        assertTrue(all.materials().size() >= 18, all.materials().size() + " materials");
        long light = all.materials().stream().filter(material -> material.getLab().l() > 50).count();
        assertTrue(light >= 8 && all.materials().size() - light >= 8, light + " light materials");
        assertEquals(12, all.inks().size());
        assertTrue(all.inks().stream().anyMatch(ink -> ink.getKind() == InkKind.WHITE));
        assertEquals(List.of("pad-one-colour", "pad-spot", "full-colour-white"),
                all.methods().stream().map(Method::getId).toList());
        assertEquals(Set.of("line-too-thin", "gap-too-narrow", "speck", "pinhole", "type-too-small", "art-off-edge",
                "art-in-wear", "too-many-inks", "ink-unmatched", "weak-contrast", "fit-poor", "crowded-side",
                "raster-coarse", "art-unsupported", "busy-ground", "underbase-missing",
                "underbase-sliver", "underbase-rim",
                "register-tight", "felt-ink", "coat-wears-through", "short-lived-stock",
                "reads-negative", "shows-through"),
                new TreeSet<>(suite.checks().stream().map(CheckEntry::id).toList()));
    }

    @Test
    void everyEntrySaysWhereItsNumbersComeFrom() {
        for (List<? extends Entry> entries : List.of(all.families(), all.products(), all.materials(), all.inks(),
                all.methods())) {
            for (Entry entry : entries) {
                assertTrue(entry.getSource() != null && entry.getSource().startsWith("Common practice, no source"),
                        entry.getId());
                assertTrue(entry.getDescription() != null && !entry.getDescription().isBlank(), entry.getId());
                assertTrue(entry.getId().matches("[a-z0-9]+(-[a-z0-9]+)*"), entry.getId());
            }
        }
        for (var layer : all.layers()) {
            for (Setting setting : layer.getSettings()) {
                assertTrue(setting.getNote() != null && !setting.getNote().isBlank(), setting.getKey());
            }
        }
    }

    /** What printers publish has one shape: reversed detail needs at least what positive detail needs. */
    @Test
    void reversedLimitsAreNoFinerThanPositiveOnes() {
        for (Method method : all.methods()) {
            assertTrue(method.getLineMinReversed() >= method.getLineMin(), method.getId());
            assertTrue(method.getGapMinReversed() >= method.getGapMin(), method.getId());
            assertTrue(method.getPinholeMin() >= method.getSpeckMin(), method.getId());
            assertTrue(method.getLineMin() >= 0.07 && method.getLineMin() <= 0.25, method.getId());
            assertTrue(method.getTypeMin() > 2 * method.getLineMin(), method.getId());
            assertTrue(method.getEdge() > 0 && method.getRegister() > 0 && method.getChoke() > 0
                    && method.getInksMax() > 0 && method.getResolution() > 0, method.getId());
        }
        // Two inks: at least twice the limit of one, as published for printing on tubes (0.2 against 0.1 mm).
        assertTrue(all.setting("gap-too-narrow.two-ink-factor").orElseThrow() >= 2);
    }

    /** Regulation (EU) No 1169/2011, Article 13(3): 0.9 mm on packs with less than 80 cm2. */
    @Test
    void typeIsComparedWithTheRegulation() {
        assertEquals(0.9, all.setting("type.comparable").orElseThrow());
        // ISO 8596: 5 arc minutes a letter at visus 1; 0.5091 mm at 350 mm.
        double minutes = all.setting("type.letter-angle").orElseThrow();
        double distance = all.setting("type.reading-distance").orElseThrow();
        assertEquals(0.5091, distance * Math.tan(Math.toRadians(minutes / 60)), 1e-4);
    }

    /** What a design prints with is the same with and without catalogues. */
    @Test
    void settingsOfThePressAreTheUsualOnes() {
        for (Method method : all.methods()) {
            assertEquals(PressSettings.usual(method), PressSettings.of(all, method, method));
            assertTrue(method.getChoke() >= method.getRegister() || !method.isWhiteUnder(), method.getId());
        }
        Method bare = CatalogueFactory.eINSTANCE.createMethod();
        assertEquals(PressSettings.usual(bare), PressSettings.of(all, bare));
    }

    @Test
    void inksAndMaterialsAreTheirNames() {
        for (Ink ink : all.inks()) {
            assertTrue(ink.getLabOverBlack().l() <= ink.getLab().l(), ink.getId() + " is lighter over black");
            assertTrue(ink.getFilm() > 1 && ink.getFilm() < 50, ink.getId());
        }
        for (Ink one : all.inks()) {
            for (Ink other : all.inks()) {
                assertTrue(one == other || DeltaE.ciede2000(FilmColour.lab(one.getLab()),
                        FilmColour.lab(other.getLab())) > 10, one.getId() + " looks like " + other.getId());
            }
        }
        List<Material> plain = all.materials().stream().filter(each -> each.getId().startsWith("solid")).toList();
        for (Material one : plain) {
            for (Material other : plain) {
                assertTrue(one == other || DeltaE.ciede2000(FilmColour.lab(one.getLab()),
                        FilmColour.lab(other.getLab())) > 5, one.getId() + " looks like " + other.getId());
            }
        }
    }

    /** What a patterned material is called by, its mean colour, is that of its pattern. */
    @Test
    void patternsHaveTheColourOfTheirMaterial() {
        int patterned = 0;
        for (Material material : all.materials()) {
            if (Stock.patterned(material)) {
                patterned++;
                double deltaE = DeltaE.ciede2000(FilmColour.lab(material.getLab()), Stock.of(material).mean());
                assertTrue(deltaE < 1, material.getId() + " misses its mean colour by " + deltaE);
            }
        }
        assertTrue(patterned >= 12, patterned + " patterned materials");
    }

    /** Common practice, no source: glowing and camouflage stocks let a print wear sooner, others do not. */
    @Test
    void someStocksWearSooner() {
        for (Material material : all.materials()) {
            boolean sooner = material.isGlow() || material.getTexture().getKind() == TextureKind.CAMOUFLAGE;
            assertEquals(sooner, material.getWearFactor() > 1, material.getId());
        }
    }
}
