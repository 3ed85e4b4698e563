/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.artwork.ArtException;
import org.pollex.model.catalogue.Catalogue;
import org.pollex.model.catalogue.CatalogueFactory;
import org.pollex.model.catalogue.Product;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Placement;
import org.pollex.model.design.PlainShape;
import org.pollex.model.design.Side;
import org.pollex.model.store.Catalogues;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.StoreException;
import org.pollex.print.ArtSupply;
import org.pollex.print.PrintException;
import org.pollex.print.Printed;
import org.pollex.print.item.ItemException;

/** The way in: items, catalogues of the studio, thresholds, placement. */
class SuiteTest {

    @TempDir
    private Path folder;

    private static Suite tiles() {
        return Suite.of(Contributions.collect().with(Tiles.entry(Tiles::catalogue))
                .with(new FamilyEntry("tile", "org.example.tiles", Tiles::builder)).finish());
    }

    @Test
    void itemsAreBuiltOnce() throws Exception {
        Suite suite = tiles();
        assertEquals(20, suite.item("tile-20").width());
        assertSame(suite.item("tile-20"), suite.item("tile-20"));
        ItemException refused = assertThrows(ItemException.class, () -> suite.item("plate"));
        assertTrue(refused.getMessage().contains("\"plate\" is in no catalogue; choose one of tile-20"),
                refused.getMessage());
    }

    @Test
    void builderThatFailsIsNamed() {
        Suite suite = Suite.of(Contributions.collect().with(Tiles.entry(Tiles::catalogue))
                .with(new FamilyEntry("tile", "org.example.tiles", () -> product -> null)).finish());
        ItemException refused = assertThrows(ItemException.class, () -> suite.item("tile-20"));
        assertTrue(refused.getMessage().contains("org.example.tiles"), refused.getMessage());
    }

    private Path studio(String path, double width) throws Exception {
        Catalogue catalogue = CatalogueFactory.eINSTANCE.createCatalogue();
        Product product = Tiles.product();
        product.getDimensions().get(0).setValue(width);
        catalogue.getProducts().add(product);
        Path file = folder.resolve(path);
        Files.createDirectories(file.getParent());
        Files.write(file, ModelFiles.CATALOGUES.write(catalogue));
        return file;
    }

    @Test
    void cataloguesAboveADesignOverrideTheInstalledAndNearOnesTheFar() throws Exception {
        studio("studio.catalogue", 30);
        studio("jobs/ferry/ferry.catalogue", 40);
        studio("jobs/ferry/.hidden.catalogue", 50);
        Path job = folder.resolve("jobs/ferry");
        Suite suite = tiles();
        assertEquals(40, suite.near(job).item("tile-20").width());
        assertEquals(30, suite.near(folder.resolve("jobs")).item("tile-20").width());
        assertEquals(20, suite.item("tile-20").width());
        Suite known = suite.near(job);
        assertSame(known, suite.near(job));
        assertEquals(30, suite.nearWithout(job.resolve("ferry.catalogue")).item("tile-20").width());
        assertEquals(40, suite.nearWithout(job.resolve("new.catalogue")).item("tile-20").width());
        studio("jobs/ferry/ferry.catalogue", 45.5);
        assertNotSame(known, suite.near(job));
        assertEquals(45.5, suite.near(job).item("tile-20").width());
        Files.writeString(folder.resolve("jobs/broken.catalogue"), "half a fi");
        StoreException refused = assertThrows(StoreException.class, () -> suite.near(job));
        assertTrue(refused.getMessage().contains("broken.catalogue"), refused.getMessage());
    }

    @Test
    void designThatNamesWhatIsNotThereIsRefused() {
        Design design = DesignFactory.eINSTANCE.createDesign();
        design.setProduct("tile-20");
        design.setMaterial("clay");
        design.setMethod("stamp");
        design.getInks().add("moss");
        PrintException refused = assertThrows(PrintException.class,
                () -> tiles().printer(design, placement -> null, line -> null));
        assertTrue(refused.getMessage().contains("names ink \"moss\", which no catalogue has"), refused.getMessage());
    }

    @Test
    void artIsFoundBesideTheDesignOrNamed() throws Exception {
        ArtSupply supply = tiles().artBeside(folder.resolve("a.design"));
        Placement placement = DesignFactory.eINSTANCE.createPlacement();
        placement.setArt("art/ferry.svg");
        refused(supply, placement, "art/ferry.svg: the file is missing beside a.design");
        placement.setArt("../ferry.svg");
        refused(supply, placement, "no path inside the folder of the design");
        Files.createDirectories(folder.resolve("art"));
        Files.writeString(folder.resolve("art/ferry.svg"), "<svg/>");
        placement.setArt("art/ferry.svg");
        placement.setSha256("00");
        refused(supply, placement, "not the one that was placed");
        placement.setSha256(null);
        // Nothing that reads art is installed here, and that is what is said.
        refused(supply, placement, "ferry.svg");
    }

    private static void refused(ArtSupply supply, Placement placement, String reason) {
        ArtException refused = assertThrows(ArtException.class, () -> supply.art(placement));
        assertTrue(refused.getMessage().contains(reason), refused.getMessage());
    }

    @Test
    void nearestThresholdWins() throws Exception {
        Catalogue catalogue = Tiles.catalogue();
        Printed printed = Tiles.printed();
        CheckContext context = CheckContext.of(printed, Catalogues.of(catalogue));
        MissingSettingException missing = assertThrows(MissingSettingException.class, () -> context.setting("dots"));
        assertTrue(missing.getMessage().contains("\"dots\"") && missing.getMessage().contains("\"Tiles\""));
        catalogue.getSettings().add(Tiles.setting("dots", 1));
        assertEquals(1, context.setting("dots"));
        printed.material().getSettings().add(Tiles.setting("dots", 2));
        assertEquals(2, context.setting("dots"));
        printed.method().getSettings().add(Tiles.setting("dots", 3));
        assertEquals(3, context.setting("dots"));
        catalogue.getFamilies().get(0).getSettings().add(Tiles.setting("dots", 4));
        assertEquals(4, CheckContext.of(printed, Catalogues.of(catalogue)).setting("dots"));
        printed.item().product().getSettings().add(Tiles.setting("dots", 5));
        assertEquals(5, context.setting("dots"));
    }

    @Test
    void findingsComeWorstFirstThenByPlace() throws Exception {
        Check many = (context, sink) -> {
            sink.info("").on("front").say("Third, 1.");
            sink.error("").on("front").at(Tiles.box(0, 5, 1, 6)).say("Second, 1.");
            sink.error("").on("front").at(Tiles.box(0, 2, 1, 3)).say("First, 1.");
            sink.error("").say("Whole design, 1.");
        };
        Suite suite = Suite.of(Contributions.collect().with(Tiles.check("many", "a", many)).finish());
        assertEquals(List.of("Whole design, 1.", "First, 1.", "Second, 1.", "Third, 1."),
                suite.check(Tiles.printed()).stream().map(Finding::message).toList());
    }

    /** A square of 3 mm in a safe zone of 18 x 15 mm grows five times; everything moves along. */
    @Test
    void fitMovesEveryMarkAlong() throws Exception {
        Printed printed = Tiles.printed(Tiles.box(2, 2, 5, 5));
        SideFit fit = tiles().fit(printed, "front", OptionalDouble.of(0)).orElseThrow();
        assertEquals(5, fit.fit().scale(), 1e-9);
        assertEquals(15 * 15 / (18.0 * 15), fit.share(), 1e-9);
        Side side = DesignFactory.eINSTANCE.createSide();
        side.getLayers().add(DesignFactory.eINSTANCE.createLayer());
        PlainShape square = DesignFactory.eINSTANCE.createPlainShape();
        square.setX(3.5);
        square.setY(3.5);
        side.getLayers().get(0).getMarks().add(square);
        SideFit.Moved moved = fit.moved(side).get(0);
        assertEquals(5, moved.scale(), 1e-9);
        assertEquals(-9 + 7.5, moved.y(), 1e-6);
        assertTrue(Math.abs(moved.x()) <= 1.5 + 1e-6);
        assertEquals(1, square.getScale());
        moved.apply();
        assertEquals(5, square.getScale(), 1e-9);
    }

    @Test
    void halfTurnIsAddedToTheTurnOfAMark() throws Exception {
        SideFit fit = tiles().fit(Tiles.printed(Tiles.box(2, 2, 5, 5)), "front", OptionalDouble.of(180)).orElseThrow();
        Side side = DesignFactory.eINSTANCE.createSide();
        side.getLayers().add(DesignFactory.eINSTANCE.createLayer());
        PlainShape square = DesignFactory.eINSTANCE.createPlainShape();
        square.setX(3.5);
        square.setY(3.5);
        square.setTurn(90);
        side.getLayers().get(0).getMarks().add(square);
        SideFit.Moved moved = fit.moved(side).get(0);
        assertEquals(-90, moved.turn(), 1e-9);
        assertEquals(-9 + 7.5, moved.y(), 1e-6);
        assertTrue(tiles().fit(Tiles.printed(), "front", OptionalDouble.empty()).isEmpty());
        assertTrue(tiles().fit(Tiles.printed(), "back", OptionalDouble.empty()).isEmpty());
    }
}
