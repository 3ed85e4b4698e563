/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.report;

import java.awt.image.BufferedImage;
import java.time.LocalDate;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Envelope;
import org.pollex.output.picture.PlacePicture;
import org.pollex.output.picture.PngFile;
import org.pollex.print.Printed;
import org.pollex.print.item.ItemFace;
import org.pollex.rules.CheckEntry;
import org.pollex.rules.Finding;
import org.pollex.rules.Severity;

/** The findings of a design as one HTML file with its pictures inside: nothing has to lie beside it. */
public final class FindingsPage {

    private static final int SIZE = 150;
    private static final int DPI = 96;
    private static final double LEAST_MM = 6;
    private static final int PAPER = 0xf4f4f2;

    private static final String STYLE = """
            body { font: 15px/1.45 sans-serif; margin: 2em auto; max-width: 56em; padding: 0 1em; color: #222;
                   background: #fff; }
            table { border-collapse: collapse; width: 100%; } td, th { text-align: left; vertical-align: top;
                   padding: .6em; border-top: 1px solid #bbb; } img { display: block; }
            .why { color: #444; } .waived { text-decoration: line-through; }
            """;

    private FindingsPage() {
    }

    /**
     * Writes the page.
     *
     * @param name     of the design
     * @param checks   what is installed, for the reasons
     */
    public static String of(String name, Printed printed, List<Finding> findings, List<CheckEntry> checks,
            LocalDate date) {
        StringBuilder page = new StringBuilder();
        page.append("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><title>Findings: ")
                .append(text(name)).append("</title><style>").append(STYLE).append("</style></head><body>\n<h1>")
                .append(text(name)).append("</h1>\n<p>").append(date).append(", ")
                .append(text(printed.item().product().getName())).append(", ")
                .append(text(printed.material().getName())).append(", ").append(text(printed.method().getName()))
                .append("</p>\n<p>").append(count(findings)).append("</p>\n");
        if (!findings.isEmpty()) {
            page.append("<table>\n<tr><th>Place</th><th>Finding</th><th>Measured</th><th>Limit</th></tr>\n");
            findings.forEach(each -> row(page, printed, each, checks));
            page.append("</table>\n");
        }
        return page.append("</body></html>\n").toString();
    }

    private static String count(List<Finding> findings) {
        long waived = findings.stream().filter(Finding::waived).count();
        long errors = findings.stream().filter(each -> !each.waived() && each.severity() == Severity.ERROR).count();
        long warnings = findings.stream().filter(each -> !each.waived() && each.severity() == Severity.WARNING)
                .count();
        return findings.isEmpty() ? "Nothing found: this design prints as it is."
                : "Errors: " + errors + ", warnings: " + warnings + ", waived: " + waived + ".";
    }

    private static void row(StringBuilder page, Printed printed, Finding finding, List<CheckEntry> checks) {
        page.append("<tr><td>").append(picture(printed, finding)).append("</td><td><strong>")
                .append(text(finding.severity().name().charAt(0)
                        + finding.severity().name().substring(1).toLowerCase(Locale.ROOT)))
                .append(finding.side().isEmpty() ? "" : ", " + text(finding.side()))
                .append(finding.waived() ? ", waived" : "").append("</strong><br>")
                .append(finding.waived() ? "<span class=\"waived\">" : "").append(text(finding.message()))
                .append(finding.waived() ? "</span>" : "").append("<br><span class=\"why\">")
                .append(text(checks.stream().filter(each -> each.id().equals(finding.check())).findFirst()
                        .map(CheckEntry::description).orElse("")))
                .append("</span></td><td>").append(number(finding.measured(), finding.unit())).append("</td><td>")
                .append(number(finding.limit(), finding.unit())).append("</td></tr>\n");
    }

    private static String number(java.util.OptionalDouble value, String unit) {
        return value.isEmpty() ? "" : text(String.format(Locale.ROOT, "%.2f %s", value.getAsDouble(), unit).strip());
    }

    private static String picture(Printed printed, Finding finding) {
        ItemFace face = printed.item().face(finding.side()).orElse(null);
        if (face == null || finding.where().isEmpty()) {
            return "";
        }
        Envelope window = PlacePicture.about(finding.where(), face, LEAST_MM);
        BufferedImage image = new PlacePicture(printed, face).of(window.centre(),
                PlacePicture.scale(window, SIZE, SIZE), SIZE, SIZE, PAPER, finding.where());
        return "<img alt=\"the place on the " + text(finding.side()) + "\" width=\"" + SIZE + "\" height=\"" + SIZE
                + "\" src=\"data:image/png;base64," + Base64.getEncoder().encodeToString(PngFile.bytes(image, DPI))
                + "\">";
    }

    private static String text(String value) {
        return value == null ? "" : value.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
