/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.pictures.output;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.Version;
import org.pollex.editor.session.Known;
import org.pollex.model.design.Design;
import org.pollex.model.store.StoreException;
import org.pollex.output.colourways.ColourwaysPdf;
import org.pollex.output.page.PageSize;
import org.pollex.output.picture.MaterialPicture;
import org.pollex.output.picture.PngFile;
import org.pollex.output.proof.ProofPdf;
import org.pollex.output.report.CheckedDesign;
import org.pollex.output.report.FindingsPage;
import org.pollex.output.report.JsonReport;
import org.pollex.output.report.SarifReport;
import org.pollex.rules.Suite;
import org.pollex.rules.rank.Ranking;
import org.pollex.rules.rank.StockNoise;

/** What can be made from a design. */
public enum Output {
    /** All sides on their material. */
    PICTURE("picture", "png"),
    /** The page that the client signs. */
    PROOF("proof", "pdf"),
    /** Inks over materials at true size, for the client to choose from. */
    COLOURWAYS("page of colourways", "pdf"),
    /** The findings, as a page to read and keep unless another format is wished. */
    REPORT("report of findings", "html");

    private final String words;
    private final String extension;

    Output(String words, String extension) {
        this.words = words;
        this.extension = extension;
    }

    /** As the user calls it. */
    public String words() {
        return words;
    }

    /** Of the file, without a dot. */
    String extension(Wishes wishes) {
        return this == REPORT ? wishes.report().extension() : extension;
    }

    /** What the file is called unless the user says otherwise. */
    public String nameFor(Path design, Wishes wishes) {
        String name = design.getFileName().toString().replaceFirst("\\.design$", "");
        String kind = this == REPORT ? "-findings" : this == COLOURWAYS ? "-colourways" : "";
        return name + kind + "." + extension(wishes);
    }

    /**
     * The bytes of the file; throws when the job of the design cannot be read. Takes a second or two.
     *
     * @param millis  time that reading and checking took
     */
    byte[] of(Path design, Known known, Suite suite, Wishes wishes, long millis) throws StoreException {
        return switch (this) {
            case PICTURE -> PngFile.bytes(MaterialPicture.of(known.printed(), wishes.picture()),
                    wishes.picture().dpi());
            case PROOF -> ProofPdf.of(known.printed(), known.findings(),
                    JobFacts.of(design, known, LocalDate.now()), PageSize.A4);
            case COLOURWAYS -> ColourwaysPdf.of(known.printed(), Ranking.of(known.printed(), suite.catalogues(),
                    new StockNoise(known.printed(), suite.catalogues())),
                    JobFacts.of(design, known, LocalDate.now()), PageSize.A4);
            case REPORT -> report(design, known, suite, wishes.report(), millis);
        };
    }

    private static byte[] report(Path design, Known known, Suite suite, ReportFormat format, long millis) {
        if (format == ReportFormat.PAGE) {
            return FindingsPage.of(title(design, known), known.printed(), known.findings(), suite.checks(),
                    LocalDate.now()).getBytes(StandardCharsets.UTF_8);
        }
        Design model = known.printed().design();
        List<CheckedDesign> checked = List.of(new CheckedDesign(design.getFileName().toString(), model.getProduct(),
                model.getMaterial(), model.getMethod(), known.findings(), "", millis));
        return format == ReportFormat.JSON ? JsonReport.of(checked) : SarifReport.of(suite, version(), checked);
    }

    private static String version() {
        Version version = FrameworkUtil.getBundle(Output.class).getVersion();
        return version.getMajor() + "." + version.getMinor() + "." + version.getMicro();
    }

    private static String title(Path design, Known known) {
        String name = known.printed().design().getName();
        return name == null ? design.getFileName().toString() : name;
    }
}
