/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.colourways;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.pollex.model.catalogue.CatalogueFactory;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.Material;
import org.pollex.model.LabColour;
import org.pollex.output.SampleDesign;
import org.pollex.output.page.PageSize;
import org.pollex.output.proof.ProofFacts;
import org.pollex.print.Printed;
import org.pollex.rules.rank.Ranked;
import org.pollex.rules.rank.Verdict;

/** What a client is shown, and that it can be read. */
class ColourwaysPdfTest {

    private static final ProofFacts FACTS = ProofFacts.of(LocalDate.of(2026, 3, 2), List.of());

    private static Printed printed() {
        SampleDesign sample = new SampleDesign();
        sample.front("white", 0xffffff, SampleDesign.FACTORY.createPoint(new org.locationtech.jts.geom.Coordinate(0,
                -2)).buffer(7));
        return sample.printed();
    }

    private static Ranked pair(String material, String lab, String ink, double score, Verdict verdict, boolean own) {
        Material stock = CatalogueFactory.eINSTANCE.createMaterial();
        stock.setId(material.toLowerCase());
        stock.setName(material);
        stock.setLab(LabColour.parse(lab));
        Ink film = CatalogueFactory.eINSTANCE.createInk();
        film.setId(ink.toLowerCase());
        film.setName(ink);
        film.setLab(LabColour.parse("95 0 2"));
        film.setLabOverBlack(LabColour.parse("84 -1 -1"));
        return new Ranked(stock, List.of(film), score, verdict, "The border of " + ink + " and " + material
                + " shows least.", 20, 30, 4, OptionalDouble.empty(), own);
    }

    private static List<Ranked> ranking() {
        List<Ranked> all = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            all.add(pair("Stock" + i / 2, 20 + i + " 0 0", "Ink" + i, 99 - i, Verdict.READS_WELL, i == 13));
        }
        all.add(pair("Murky", "60 0 0", "Haze", 10, Verdict.LOST, false));
        return all;
    }

    @Test
    void theDesignAsItIsComesFirstThenTheBestOfEachMaterial() {
        List<Ranked> shown = Choice.of(ranking(), 6);
        assertEquals(List.of("Ink13", "Ink0", "Ink2", "Ink4", "Ink6", "Ink8"),
                shown.stream().map(each -> each.inks().get(0).getName()).toList());
    }

    @Test
    void roomThatIsLeftGoesToFurtherInksNotToWhatIsLost() {
        List<Ranked> shown = Choice.of(ranking(), 50);
        assertEquals(20, shown.size());
        assertTrue(shown.stream().noneMatch(each -> each.verdict() == Verdict.LOST));
    }

    @Test
    void aLostDesignIsShownAsItIs() {
        List<Ranked> shown = Choice.of(List.of(pair("Murky", "60 0 0", "Haze", 5, Verdict.LOST, true)), 6);
        assertEquals(1, shown.size());
    }

    @Test
    void onePageNamesEveryPairAndIsTheSameEachTime() throws IOException {
        byte[] bytes = ColourwaysPdf.of(printed(), ranking(), FACTS, PageSize.A4);
        Path file = Path.of("target", "colourways.pdf");
        Files.createDirectories(file.getParent());
        Files.write(file, bytes);
        try (PDDocument document = Loader.loadPDF(bytes)) {
            assertEquals(1, document.getNumberOfPages());
            String text = new PDFTextStripper().getText(document);
            for (Ranked each : Choice.of(ranking(), 12)) {
                assertTrue(text.contains(each.inks().get(0).getName()) && text.contains("on "
                        + each.material().getName()), each + " in " + text);
            }
            assertTrue(text.contains("(as designed)"), text);
            assertFalse(text.contains("Haze"), text);
            PDResources resources = document.getPage(0).getResources();
            int pictures = 0;
            for (COSName name : resources.getXObjectNames()) {
                pictures += resources.isImageXObject(name) ? 1 : 0;
            }
            assertEquals(12, pictures);
        }
        assertArrayEquals(bytes, ColourwaysPdf.of(printed(), ranking(), FACTS, PageSize.A4));
    }

    @Test
    void nothingToShowAndNoRoomAreSaid() {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> ColourwaysPdf.of(printed(), List.of(), FACTS,
                PageSize.A4)).getMessage().contains("place art first"));
        SampleDesign large = new SampleDesign().size(190, 260);
        large.front("white", 0xffffff, SampleDesign.FACTORY.createPoint(new org.locationtech.jts.geom.Coordinate(0,
                0)).buffer(7));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> ColourwaysPdf.of(large.printed(), ranking(),
                FACTS, PageSize.A4)).getMessage().contains("larger page"));
    }
}
