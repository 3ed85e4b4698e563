/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.proof;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pollex.output.SampleDesign;
import org.pollex.output.page.PageSize;
import org.pollex.print.Printed;
import org.pollex.rules.Finding;
import org.pollex.rules.Severity;

class ProofPdfTest {

    private static final ProofFacts FACTS = new ProofFacts("Skerry Light Ferries", "Summer season", OptionalInt.of(2),
            LocalDate.of(2026, 11, 25), OptionalInt.of(500), List.of("lighthouse.svg"));

    private static byte[] proof(Printed printed, List<Finding> findings) {
        return ProofPdf.of(printed, findings, FACTS, PageSize.A4);
    }

    private static String text(byte[] pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    @Test
    void isOnePageOfA4() throws Exception {
        try (PDDocument document = Loader.loadPDF(proof(SampleDesign.twoSided().printed(), List.of()))) {
            assertEquals(1, document.getNumberOfPages());
            assertEquals(595.28, document.getPage(0).getMediaBox().getWidth(), 0.01);
            assertEquals(841.89, document.getPage(0).getMediaBox().getHeight(), 0.01);
        }
    }

    @Test
    void embedsItsFonts() throws Exception {
        try (PDDocument document = Loader.loadPDF(proof(SampleDesign.twoSided().printed(), List.of()))) {
            PDResources resources = document.getPage(0).getResources();
            int fonts = 0;
            for (COSName name : resources.getFontNames()) {
                assertTrue(resources.getFont(name).isEmbedded(), name.getName());
                fonts++;
            }
            assertEquals(2, fonts);
        }
    }

    @Test
    void saysWhatTheClientNeedsToKnow() throws Exception {
        String text = text(proof(SampleDesign.twoSided().printed(), List.of()));
        for (String needed : List.of("Harbour light", "Skerry Light Ferries", "Summer season", "Revision 2",
                "25 November 2026", "500 pieces", "lighthouse.svg", "Standard pick", "26 x 31 mm, 0.81 mm thick",
                "Black", "Spot colour pad print", "line 0.15, gap 0.2", "Signal red, front and back",
                "L* 38 a* 50 b* 30",
                "NOT FOR PRODUCTION", "50 mm", "4 times enlarged", "Safe zone", "Wear risk", "Does not print", "Front",
                "Back", "Name", "Date", "Signature", "The checks found nothing to change.")) {
            assertTrue(text.contains(needed), needed + " in: " + text);
        }
    }

    @Test
    void tellsTheWhiteBelow() throws Exception {
        SampleDesign design = new SampleDesign().front("process", 0x3366cc, SampleDesign.box(-3, -5, 6, 6));
        assertFalse(text(proof(design.printed(), List.of())).contains("inside the colours"));
        design.method().setFullColour(true);
        design.method().setWhiteUnder(true);
        design.method().setChoke(0.1);
        String text = text(proof(design.printed(), List.of()));
        assertTrue(text.contains("below, 0.1 mm inside the colours; front 33.6 mm\u00b2"), text);
    }

    @Test
    void numbersFindingsWorstFirst() throws Exception {
        String text = text(proof(SampleDesign.twoSided().printed(), List.of(
                SampleDesign.finding(7, Severity.WARNING, "front", 0, 4), SampleDesign.finding(8, Severity.ERROR,
                        "back", 0, 6))));
        assertTrue(text.indexOf("(place 8)") < text.indexOf("(place 7)"), text);
    }

    @Test
    void saysHowMuchAFindingMatters() throws Exception {
        SampleDesign design = new SampleDesign().front("signal-red", 0xff0000, SampleDesign.disc(0, 0, 5));
        String text = text(proof(design.printed(), List.of(SampleDesign.finding(7, Severity.WARNING, "front", 0, 4),
                SampleDesign.finding(8, Severity.ERROR, "front", 0, 6))));
        assertTrue(text.contains("Must change, front"), text);
        assertTrue(text.contains("Please look, front"), text);
    }

    @Test
    void countsWhatDoesNotFitAndWhatIsWaived() throws Exception {
        List<Finding> many = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            many.add(SampleDesign.finding(i, Severity.ERROR, "front", i % 7 - 3, i % 11 - 6));
        }
        Finding first = many.get(0);
        many.set(0, new Finding(first.check(), first.kind(), first.severity(), first.side(), first.region(),
                first.measured(), first.limit(), first.unit(), first.where(), first.message(), first.fixes(), true));
        SampleDesign design = new SampleDesign().front("signal-red", 0xff0000, SampleDesign.disc(0, 0, 5));
        String text = text(proof(design.printed(), many));
        Matcher more = Pattern.compile("and (\\d+) more, listed by check").matcher(text);
        assertTrue(more.find(), text);
        int listed = text.split("Must change, front", -1).length - 1;
        assertEquals(59, listed + Integer.parseInt(more.group(1)));
        assertTrue(listed > 5, "listed " + listed);
        assertFalse(text.contains("(place 0)"));
        assertTrue(text.contains("One more finding is meant as it is and was waived."), text);
    }

    @Test
    void survivesNamesThatAreLongOrOfAnyScript() throws Exception {
        String start = "\u0421\u043a\u0430\u043b\u0430 \u03a6\u03ac\u03c1\u03bf\u03c2 ";
        String name = start + "\u6f22\u5b57 " + "very ".repeat(60) + "long";
        String text = text(proof(SampleDesign.twoSided().named(name).printed(), List.of()));
        assertTrue(text.contains(start + "??"), text);
    }

    @Test
    void isTheSameBytesEachTime() {
        assertArrayEquals(proof(SampleDesign.twoSided().printed(), List.of()),
                proof(SampleDesign.twoSided().printed(), List.of()));
    }

    @Test
    void drawsTheItemAtTrueSizeAsVectors() throws Exception {
        try (PDDocument document = Loader.loadPDF(proof(SampleDesign.twoSided().printed(), List.of()))) {
            PDPage page = document.getPage(0);
            DrawnBoxes boxes = new DrawnBoxes(page);
            boxes.processPage(page);
            assertTrue(boxes.has(26, 31), "true size");
            assertTrue(boxes.has(104, 124), "four times enlarged");
            assertTrue(boxes.hasLine(50), "check bar");
        }
    }

    @ParameterizedTest
    @CsvSource({"30, 30, 4 times enlarged", "26, 31, 4 times enlarged", "22, 26, 4 times enlarged",
        "40, 40, 2.5 times enlarged", "58, 58, Front true size"})
    void enlargesAsFarAsThePageAllows(double width, double height, String words) throws Exception {
        SampleDesign design = SampleDesign.twoSided().size(width, height);
        String text = text(proof(design.printed(), List.of()));
        assertTrue(text.contains(words), text);
    }

    @Test
    void refusesAnItemThatThePageCannotHold() {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class,
                () -> proof(SampleDesign.twoSided().size(150, 150).printed(), List.of()));
        assertTrue(refused.getMessage().contains("choose a larger page"), refused.getMessage());
    }

    @Test
    void showsABareDesign() throws Exception {
        assertTrue(text(proof(new SampleDesign().printed(), List.of())).contains("Front"));
    }

    @Test
    void keepsEverythingOnThePage() throws Exception {
        try (PDDocument document = Loader.loadPDF(proof(SampleDesign.twoSided().printed(), List.of(
                SampleDesign.finding(1, Severity.ERROR, "front", 60, 60))))) {
            PDPage page = document.getPage(0);
            DrawnBoxes boxes = new DrawnBoxes(page);
            boxes.processPage(page);
            assertEquals(List.of(), boxes.fillsBeyond(210, 297));
        }
    }
}
