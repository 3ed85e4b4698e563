/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.pollex.output.SampleDesign;
import org.pollex.rules.Finding;
import org.pollex.rules.Severity;

class FindingsPageTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private static String page(String name, List<Finding> findings) {
        return FindingsPage.of(name, SampleDesign.twoSided().printed(), findings, List.of(), DAY);
    }

    private static Finding waived(Finding finding) {
        return new Finding(finding.check(), finding.kind(), finding.severity(), finding.side(), finding.region(),
                finding.measured(), finding.limit(), finding.unit(), finding.where(), finding.message(),
                finding.fixes(), true);
    }

    @Test
    void saysSoWhenNothingWasFound() {
        String page = page("Harbour light", List.of());
        assertTrue(page.contains("Nothing found: this design prints as it is."), page);
        assertFalse(page.contains("<table>"), page);
    }

    @Test
    void countsAndListsEveryFinding() {
        String page = page("Harbour light", List.of(SampleDesign.finding(1, Severity.ERROR, "front", 0, 4),
                SampleDesign.finding(2, Severity.WARNING, "back", 0, 2),
                waived(SampleDesign.finding(3, Severity.ERROR, "front", 2, 2))));
        assertTrue(page.contains("Errors: 1, warnings: 1, waived: 1."), page);
        // a row for each, and the head of the table
        assertEquals(4, page.split("<tr>", -1).length - 1);
        assertTrue(page.contains("Error, front, waived"), page);
        assertTrue(page.contains("Warning, back"), page);
    }

    @Test
    void holdsItsPicturesInside() throws Exception {
        String page = page("Harbour light", List.of(SampleDesign.finding(1, Severity.ERROR, "front", 0, 4),
                SampleDesign.finding(2, Severity.WARNING, "back", 0, 2)));
        Matcher matcher = Pattern.compile("src=\"([^\"]*)\"").matcher(page);
        List<String> sources = new ArrayList<>();
        while (matcher.find()) {
            sources.add(matcher.group(1));
        }
        assertEquals(2, sources.size());
        for (String each : sources) {
            assertTrue(each.startsWith("data:image/png;base64,"), each);
            byte[] png = Base64.getDecoder().decode(each.substring(each.indexOf(',') + 1));
            assertEquals(150, ImageIO.read(new ByteArrayInputStream(png)).getWidth());
        }
    }

    @Test
    void aNameCannotBecomeMarkup() throws Exception {
        String page = page("<script>a & \"b\"</script>", List.of());
        assertFalse(page.contains("<script"), page);
        // what is left is well formed but for the two tags that HTML leaves open
        String xml = page.replace("<!DOCTYPE html>", "").replace("<meta charset=\"utf-8\">", "");
        assertEquals("<script>a & \"b\"</script>", DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8)))
                .getElementsByTagName("h1").item(0).getTextContent());
    }
}
