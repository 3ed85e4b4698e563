/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.word;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.pollex.commandline.listing.Table;
import org.pollex.commandline.report.RankReport;
import org.pollex.making.desk.Desk;
import org.pollex.making.desk.OpenDesign;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.SafeOutput;
import org.pollex.making.session.Session;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.store.Catalogues;
import org.pollex.output.colourways.ColourwaysPdf;
import org.pollex.output.page.PageSize;
import org.pollex.rules.Measures;
import org.pollex.rules.rank.Ranked;
import org.pollex.rules.rank.Ranking;
import org.pollex.rules.rank.StockNoise;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Ranks inks over materials for a design. */
@Command(name = "rank", description = {"Ranks inks over materials for a design, best first.",
    "Every material is tried with the inks of the design and with each of them exchanged for every other ink; the "
    + "score (0 to 100) is that of the border that shows least, and of the mean."})
public final class RankWord extends Word {

    @Parameters(paramLabel = "D.design", description = "the design")
    private String design;

    @Option(names = "--json", paramLabel = "F", description = "writes the whole ranking as JSON")
    private String json;

    @Option(names = "--page", paramLabel = "F.pdf",
            description = "writes a page at true size from which a client chooses inks and material")
    private String page;

    @Option(names = "--most", paramLabel = "N", defaultValue = "20",
            description = "how many lines are shown, 20 unless given; the inks and material of the design always are")
    private int most;

    public RankWord(Session session) {
        super(session);
    }

    @Override
    ExitCode work() throws Refusal {
        if (most < 1) {
            throw new Refusal(ExitCode.WRONG_USE, "--most takes 1 or more, not " + most + ".");
        }
        Path file = session().file(design);
        Path report = json == null ? null : session().file(json);
        Path sheet = page == null ? null : session().file(page);
        OpenDesign open = new Desk(session()).open(file);
        Catalogues catalogues = session().suiteNear(file.toAbsolutePath().getParent()).catalogues();
        List<Ranked> ranking = Ranking.of(open.printed(), catalogues, new StockNoise(open.printed(), catalogues));
        if (report != null) {
            SafeOutput.write(report, session().shown(report), RankReport.of(session().shown(file), ranking));
        }
        if (ranking.isEmpty()) {
            session().say(session().shown(file) + " prints nothing, so there is nothing to rank.");
            return ExitCode.CLEAN;
        }
        if (sheet != null) {
            SafeOutput.write(sheet, session().shown(sheet), colourways(open, ranking));
        }
        show(ranking);
        return ExitCode.CLEAN;
    }

    private byte[] colourways(OpenDesign open, List<Ranked> ranking) throws Refusal {
        try {
            return ColourwaysPdf.of(open.printed(), ranking, open.facts(session().today()), PageSize.A4);
        } catch (IllegalArgumentException e) {
            throw Refusal.wrongUse(e.getMessage());
        }
    }

    private void show(List<Ranked> ranking) {
        Table table = new Table();
        for (int i = 0; i < ranking.size(); i++) {
            Ranked each = ranking.get(i);
            if (i < most || each.own()) {
                table.row((i + 1) + ".", Measures.number(each.score(), 0), each.verdict().words(), inks(each),
                        each.material().getId(), (each.own() ? "(as it is) " : "") + each.reason());
            }
        }
        table.lines().forEach(session()::say);
        if (ranking.size() > most) {
            session().say(ranking.size() + " pairs in all; --json writes every one.");
        }
    }

    private static String inks(Ranked each) {
        return each.inks().isEmpty() ? "full colour"
                : each.inks().stream().map(Ink::getId).collect(Collectors.joining("+"));
    }
}
