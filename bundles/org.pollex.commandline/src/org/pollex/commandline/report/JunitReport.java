/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.report;

import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.pollex.output.report.CheckedDesign;
import org.pollex.output.report.Plain;
import org.pollex.rules.CheckEntry;
import org.pollex.rules.Finding;
import org.pollex.rules.Suite;

/**
 * The report as JUnit XML, the form that build servers read: a suite for each design, a case for each check. A case
 * fails when a finding of it counts; findings that do not count are in its output. A design that could not be read is
 * one case with an error.
 */
public final class JunitReport {

    private final List<String> checks;
    private final FailOn failOn;

    /** A report with a case for each of these checks. */
    public JunitReport(List<String> checks, FailOn failOn) {
        this.checks = List.copyOf(checks);
        this.failOn = failOn;
    }

    /** The report with the checks of a suite, as UTF-8. */
    public static byte[] of(Suite suite, FailOn failOn, List<CheckedDesign> designs) {
        return new JunitReport(suite.checks().stream().map(CheckEntry::id).toList(), failOn).write(designs);
    }

    /** The report as UTF-8. */
    public byte[] write(List<CheckedDesign> designs) {
        StringWriter text = new StringWriter();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
            xml.writeStartDocument("UTF-8", "1.0");
            xml.writeCharacters("\n");
            xml.writeStartElement("testsuites");
            xml.writeAttribute("name", "Pollex");
            counts(xml, designs.stream().mapToLong(this::cases).sum(), designs.stream().mapToLong(this::failures).sum(),
                    designs.stream().filter(design -> !design.readable()).count(),
                    designs.stream().mapToLong(CheckedDesign::millis).sum());
            for (CheckedDesign design : designs) {
                suite(xml, design);
            }
            xml.writeCharacters("\n");
            xml.writeEndElement();
            xml.writeCharacters("\n");
            xml.writeEndDocument();
            xml.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException("A report could not be put together in memory.", e);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private void suite(XMLStreamWriter xml, CheckedDesign design) throws XMLStreamException {
        xml.writeCharacters("\n  ");
        xml.writeStartElement("testsuite");
        xml.writeAttribute("name", clean(design.path()));
        counts(xml, cases(design), failures(design), design.readable() ? 0 : 1, design.millis());
        if (design.readable()) {
            for (String check : names(design)) {
                List<Finding> findings = design.findings().stream().filter(f -> f.check().equals(check)).toList();
                testCase(xml, design, check, findings);
            }
        } else {
            xml.writeCharacters("\n    ");
            start(xml, design, "read");
            xml.writeStartElement("error");
            xml.writeAttribute("message", clean(design.error()));
            xml.writeEndElement();
            xml.writeEndElement();
        }
        xml.writeCharacters("\n  ");
        xml.writeEndElement();
    }

    private void testCase(XMLStreamWriter xml, CheckedDesign design, String check, List<Finding> findings)
            throws XMLStreamException {
        xml.writeCharacters("\n    ");
        start(xml, design, check);
        List<Finding> counting = findings.stream().filter(this::counts).toList();
        if (!counting.isEmpty()) {
            xml.writeStartElement("failure");
            xml.writeAttribute("type", counting.get(0).severity().word());
            xml.writeAttribute("message", clean(counting.get(0).message()));
            xml.writeCharacters(lines(counting));
            xml.writeEndElement();
        }
        List<Finding> others = findings.stream().filter(finding -> !counts(finding)).toList();
        if (!others.isEmpty()) {
            xml.writeStartElement("system-out");
            xml.writeCharacters(lines(others));
            xml.writeEndElement();
        }
        xml.writeEndElement();
    }

    private static void start(XMLStreamWriter xml, CheckedDesign design, String name) throws XMLStreamException {
        xml.writeStartElement("testcase");
        xml.writeAttribute("classname", clean(design.path()));
        xml.writeAttribute("name", name);
    }

    private static void counts(XMLStreamWriter xml, long tests, long failures, long errors, long millis)
            throws XMLStreamException {
        xml.writeAttribute("tests", Long.toString(tests));
        xml.writeAttribute("failures", Long.toString(failures));
        xml.writeAttribute("errors", Long.toString(errors));
        xml.writeAttribute("time", Plain.number(millis / 1000.0));
    }

    private List<String> names(CheckedDesign design) {
        return Stream.concat(checks.stream(), design.findings().stream().map(Finding::check))
                .distinct().toList();
    }

    private long cases(CheckedDesign design) {
        return design.readable() ? names(design).size() : 1;
    }

    private long failures(CheckedDesign design) {
        return design.findings().stream().filter(this::counts).map(Finding::check).distinct().count();
    }

    private boolean counts(Finding finding) {
        return !finding.waived() && failOn.fails(finding.severity());
    }

    private static String lines(List<Finding> findings) {
        return findings.stream().map(finding -> finding.severity().word()
                + (finding.waived() ? ", waived" : "") + (finding.side().isEmpty() ? "" : ", " + finding.side())
                + ": " + clean(finding.message())).collect(Collectors.joining("\n"));
    }

    /** The text without characters that XML 1.0 cannot hold. */
    static String clean(String text) {
        return text.codePoints().filter(c -> c == '\t' || c == '\n' || c >= 0x20 && c <= 0xd7ff
                || c >= 0xe000 && c <= 0xfffd || c >= 0x10000)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
    }
}
