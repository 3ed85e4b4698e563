/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.stock;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.model.LabColour;
import org.pollex.model.catalogue.Catalogue;
import org.pollex.model.catalogue.CatalogueFactory;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.Material;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.StoreException;
import org.pollex.print.stock.SwatchShot.Box;

/** What is chosen in a photograph looks the same before and after it is kept, and the photograph stays as it is. */
class SwatchShotTest {

    @TempDir
    private Path folder;

    private Path photo;
    private Path catalogue;
    private final Material shell = CatalogueFactory.eINSTANCE.createMaterial();

    @BeforeEach
    void takeThePhotograph() throws IOException {
        photo = photo("photos", 0x8a5a3c);
        catalogue = Files.createDirectory(folder.resolve("studio")).resolve("studio.catalogue");
        shell.setId("shell");
        shell.setName("Shell");
        shell.setLab(new LabColour(45, 14, 22));
    }

    /** Stripes of 10 pixels, a grey patch on the left. */
    private Path photo(String below, int stripe) throws IOException {
        BufferedImage picture = new BufferedImage(300, 200, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < 200; y++) {
            for (int x = 0; x < 300; x++) {
                picture.setRGB(x, y, x < 60 ? 0x807060 : x / 10 % 2 == 0 ? stripe : 0xc9a86a);
            }
        }
        Path file = Files.createDirectories(folder.resolve(below)).resolve("shell.png");
        ImageIO.write(picture, "png", file.toFile());
        return file;
    }

    private SwatchShot shot() {
        return new SwatchShot(photo, 60, Optional.of(new Box(60, 0, 240, 200)), Optional.of(new Box(10, 10, 40, 40)),
                50);
    }

    private static void same(Stock one, Stock other) {
        assertEquals("", one.problem().orElse(""));
        assertEquals("", other.problem().orElse(""));
        assertEquals(one.palette(), other.palette());
        assertArrayEquals(one.raster(-20, -15, 0.2, 200, 150, false), other.raster(-20, -15, 0.2, 200, 150, false));
    }

    @Test
    void itLooksTheSameBeforeAndAfter() throws Exception {
        byte[] before = Files.readAllBytes(photo);
        Stock previewed = Stock.of(shot().on(shell));
        assertTrue(previewed.palette().size() > 1, "the stripes are not seen");
        shot().keep(catalogue, shell);
        Catalogue kept = ModelFiles.CATALOGUES.load(catalogue);
        same(previewed, Stock.of(kept.getMaterials().get(0)));
        assertArrayEquals(before, Files.readAllBytes(photo));
        assertArrayEquals(before, Files.readAllBytes(catalogue.resolveSibling("shell.png")));
        assertNull(shell.getTexture(), "the material it was made for is changed");
    }

    @Test
    void otherEntriesAndOtherPicturesStay() throws Exception {
        Catalogue own = CatalogueFactory.eINSTANCE.createCatalogue();
        own.setName("Lamp Rock Print");
        Ink ink = CatalogueFactory.eINSTANCE.createInk();
        ink.setId("fog");
        ink.setLab(new LabColour(88, -1, 2));
        own.getInks().add(ink);
        ModelFiles.CATALOGUES.create(own, catalogue);
        shot().keep(catalogue, shell);
        Path other = photo("others", 0x203040);
        byte[] first = Files.readAllBytes(catalogue.resolveSibling("shell.png"));
        new SwatchShot(other, 30, Optional.empty(), Optional.empty(), 50).keep(catalogue, shell);
        shot().keep(catalogue, material("second"));
        Catalogue kept = ModelFiles.CATALOGUES.load(catalogue);
        assertEquals("Lamp Rock Print", kept.getName());
        assertEquals(List.of("fog"), kept.getInks().stream().map(Ink::getId).toList());
        assertEquals(List.of("shell", "second"), kept.getMaterials().stream().map(Material::getId).toList());
        String named = kept.getMaterials().get(0).getTexture().getPicture();
        assertFalse(named.equals("shell.png"), "the picture of another material is replaced");
        assertArrayEquals(Files.readAllBytes(other), Files.readAllBytes(catalogue.resolveSibling(named)));
        assertEquals("shell.png", kept.getMaterials().get(1).getTexture().getPicture());
        assertArrayEquals(first, Files.readAllBytes(catalogue.resolveSibling("shell.png")));
    }

    private static Material material(String id) {
        Material material = CatalogueFactory.eINSTANCE.createMaterial();
        material.setId(id);
        material.setLab(new LabColour(50, 0, 0));
        return material;
    }

    @Test
    void aDamagedCatalogueStaysAsItIsAndNothingIsCopied() throws Exception {
        Files.writeString(catalogue, "<catalogue");
        assertThrows(StoreException.class, () -> shot().keep(catalogue, shell));
        assertEquals("<catalogue", Files.readString(catalogue));
        assertFalse(Files.exists(catalogue.resolveSibling("shell.png")));
    }

    /** A photograph that lies beside the catalogue already is not copied. */
    @Test
    void aPhotographThatIsThereIsUsed() throws Exception {
        Path there = Files.copy(photo, catalogue.resolveSibling("mine.png"));
        new SwatchShot(there, 60, Optional.empty(), Optional.empty(), 50).keep(catalogue, shell);
        assertEquals("mine.png", ModelFiles.CATALOGUES.load(catalogue).getMaterials().get(0).getTexture().getPicture());
        assertFalse(Files.exists(catalogue.resolveSibling("mine-2.png")));
    }

    /** 300 pixels across, two points 50 pixels apart that are 10 mm apart: 5 pixels a mm. */
    @Test
    void twoPointsGiveTheWidth() {
        assertEquals(60, SwatchShot.width(300, 50, 10), 1e-12);
    }

    @Test
    void aPhotographWithoutAWidthIsRefused() {
        assertThrows(IllegalArgumentException.class,
                () -> new SwatchShot(photo, 0, Optional.empty(), Optional.empty(), 50));
        assertThrows(IllegalArgumentException.class,
                () -> new SwatchShot(photo, Double.NaN, Optional.empty(), Optional.empty(), 50));
    }
}
