/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class JunitReportTest {

    private static Document report(FailOn failOn) throws Exception {
        byte[] xml = new JunitReport(List.of("line-too-thin", "speck", "pinhole"), failOn).write(SampleFindings.ALL);
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(xml));
    }

    private static Element suite(Document report, int index) {
        return (Element) report.getElementsByTagName("testsuite").item(index);
    }

    @ParameterizedTest
    @CsvSource({"ERROR, 1", "WARNING, 2", "NEVER, 0"})
    void failsTheCasesThatCount(FailOn failOn, int failures) throws Exception {
        Document report = report(failOn);
        assertEquals(Integer.toString(failures), report.getDocumentElement().getAttribute("failures"));
        assertEquals(failures, report.getElementsByTagName("failure").getLength());
    }

    @Test
    void hasASuiteForEachDesignAndACaseForEachCheck() throws Exception {
        Document report = report(FailOn.ERROR);
        assertEquals("8", report.getDocumentElement().getAttribute("tests"));
        assertEquals("1", report.getDocumentElement().getAttribute("errors"));
        assertEquals("jobs/Tour \u00fc/a b.design", suite(report, 0).getAttribute("name"));
        assertEquals("4", suite(report, 0).getAttribute("tests"));
        assertEquals("3", suite(report, 1).getAttribute("tests"));
        NodeList cases = suite(report, 0).getElementsByTagName("testcase");
        assertEquals("line-too-thin", ((Element) cases.item(0)).getAttribute("name"));
        assertEquals("too-many-inks", ((Element) cases.item(3)).getAttribute("name"));
        assertEquals("0.012", suite(report, 0).getAttribute("time"));
    }

    @Test
    void tellsWhatWasFound() throws Exception {
        Document report = report(FailOn.ERROR);
        Element failure = (Element) report.getElementsByTagName("failure").item(0);
        assertEquals("Too thin: \"<0.15\" & 'so'.", failure.getAttribute("message"));
        assertEquals("error, front: Too thin: \"<0.15\" & 'so'.", failure.getTextContent());
        assertTrue(suite(report, 0).getTextContent().contains("error, waived, back: A speck."));
        Element error = (Element) report.getElementsByTagName("error").item(0);
        assertEquals("x:y.design: the file is empty.", error.getAttribute("message"));
    }

    @Test
    void leavesOutCharactersThatXmlCannotHold() {
        assertEquals("ab\ud83d\udd4a", JunitReport.clean("a\u0000b\u001b\uffff\ud83d\udd4a\ud800"));
    }
}
