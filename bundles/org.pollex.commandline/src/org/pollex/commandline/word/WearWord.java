/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.word;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.pollex.commandline.report.WearReport;
import org.pollex.making.desk.Desk;
import org.pollex.making.desk.OpenDesign;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.SafeOutput;
import org.pollex.making.session.Session;
import org.pollex.model.job.Use;
import org.pollex.model.store.EntryNames;
import org.pollex.model.store.StoreException;
import org.pollex.output.picture.PictureOptions;
import org.pollex.output.picture.PngFile;
import org.pollex.output.picture.WearPicture;
import org.pollex.print.FilmThickness;
import org.pollex.print.Printed;
import org.pollex.print.PrintedSide;
import org.pollex.print.wear.Abrasion;
import org.pollex.print.wear.RegionWear;
import org.pollex.print.wear.WearForecast;
import org.pollex.print.wear.WearRates;
import org.pollex.print.wear.WornSample;
import org.pollex.rules.CheckContext;
import org.pollex.rules.Measures;
import org.pollex.rules.wear.Calibration;
import org.pollex.rules.wear.Uses;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Forecasts what is worn off after hours of use. */
@Command(name = "wear", description = {"Forecasts what share of each ink is worn off after hours of use.",
    "A model by Archard's law over the wear field of the product; one worn sample calibrates its rate."})
public final class WearWord extends Word {

    private static final int DPI = 300;

    @Parameters(paramLabel = "D.design", description = "the design")
    private String design;

    @Option(names = "--hours", paramLabel = "H", required = true, description = "hours of use")
    private double hours;

    @Option(names = "--use", paramLabel = "USE",
            description = "giveaway, practice, stage or display; that of the job, or practice, unless given")
    private String use;

    @Option(names = "--half-gone", paramLabel = "MM", description = "a worn sample of this design: half of the ink is "
            + "gone so many mm from the tip of the front")
    private Double halfGone;

    @Option(names = "--after", paramLabel = "HOURS", description = "how long that sample was in this use")
    private Double after;

    @Option(names = "--keep", description = "keeps the rate of the sample for its material in the studio's "
            + Calibration.FILE)
    private boolean keep;

    @Option(names = "--abraded", paramLabel = "MG/TURNS,MG/TURNS", description = "what an abrader (ASTM D4060) took "
            + "off the ink that is printed, then off the ink that the rate of wear stands for, such as 42/500,30/500")
    private String abraded;

    @Option(names = "--png", paramLabel = "F", description = "writes a picture of the worn item")
    private String png;

    @Option(names = "--json", paramLabel = "F", description = "writes the forecast as JSON")
    private String json;

    public WearWord(Session session) {
        super(session);
    }

    @Override
    ExitCode work() throws Refusal {
        if (!(hours >= 0 && hours <= 1e5)) {
            throw new Refusal(ExitCode.WRONG_USE, "--hours takes 0 to 100000, not " + hours + ".");
        }
        Path file = session().file(design);
        Path picture = png == null ? null : session().file(png);
        Path report = json == null ? null : session().file(json);
        OpenDesign open = new Desk(session()).open(file);
        Printed printed = open.printed();
        Use how = use(open);
        CheckContext context = CheckContext.of(printed,
                session().suiteNear(file.toAbsolutePath().getParent()).catalogues());
        WearRates rates = Uses.rates(context, how);
        boolean calibrated = Calibration.of(context);
        if (halfGone != null || after != null || keep) {
            rates = calibrated(file, rates, printed, how);
            calibrated = true;
        }
        rates = abraded == null ? rates : abraded(rates);
        WearForecast forecast = WearForecast.of(printed, rates);
        if (report != null) {
            SafeOutput.write(report, session().shown(report),
                    WearReport.of(session().shown(file), hours, how.getLiteral(), rates, calibrated, forecast));
        }
        if (picture != null) {
            BufferedImage image = WearPicture.of(printed, PictureOptions.of(DPI), rates, Uses.coat(context),
                    hours);
            SafeOutput.write(picture, session().shown(picture), PngFile.bytes(image, DPI));
        }
        say(forecast, how, printed, calibrated);
        return ExitCode.CLEAN;
    }

    private Use use(OpenDesign open) throws Refusal {
        if (use == null) {
            return open.job().map(job -> job.job().getUse()).orElse(Use.PRACTICE);
        }
        Use named = Use.get(use);
        if (named == null) {
            throw new Refusal(ExitCode.WRONG_USE, "--use takes " + String.join(", ", Uses.names()) + ", not " + use
                    + ".");
        }
        return named;
    }

    private WearRates calibrated(Path file, WearRates rates, Printed printed, Use how) throws Refusal {
        if (halfGone == null || after == null) {
            throw new Refusal(ExitCode.WRONG_USE, "A worn sample is given by both --half-gone MM and --after HOURS.");
        }
        if (printed.sides().isEmpty()) {
            throw new Refusal(ExitCode.WRONG_USE, "--half-gone takes a design that prints something.");
        }
        PrintedSide side = printed.sides().get(0);
        double film = FilmThickness.of(printed).of(side.inks().get(0));
        try {
            WornSample sample = new WornSample(halfGone, after);
            WearRates found = sample.calibrated(rates, side.face(), film);
            session().say("By the sample " + Measures.number(found.rate(), 3) + " um an hour are worn off at the tip. "
                    + Calibration.uncertainty(sample.nearer(side.face()), sample.farther(side.face())));
            if (keep) {
                keep(file, printed, found, Calibration.note(sample, how.getLiteral(), film,
                        EntryNames.of(printed.item().product())));
            }
            return found;
        } catch (IllegalArgumentException e) {
            throw new Refusal(ExitCode.WRONG_USE, "--half-gone and --after take a distance in mm and hours above "
                    + "0, such as 4 and 20: " + e.getMessage(), e);
        }
    }

    private WearRates abraded(WearRates rates) throws Refusal {
        try {
            List<Abrasion> both = Stream.of(abraded.split(",", -1)).map(WearWord::abrasion).toList();
            if (both.size() == 2) {
                return rates.tested(both.get(0), both.get(1));
            }
        } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
            throw wrongAbraded(e);
        }
        throw wrongAbraded(null);
    }

    private static Abrasion abrasion(String text) {
        List<String> parts = List.of(text.split("/", -1));
        return Abrasion.of(Double.parseDouble(parts.get(0)), Double.parseDouble(parts.get(1)));
    }

    private Refusal wrongAbraded(Exception cause) {
        return new Refusal(ExitCode.WRONG_USE, "--abraded takes mg lost in so many turns for two inks, such as "
                + "42/500,30/500, not " + abraded + ".", cause);
    }

    private void keep(Path design, Printed printed, WearRates found, String note) throws Refusal {
        Path catalogue = Calibration.file(design.toAbsolutePath().getParent());
        try {
            Calibration.keep(catalogue, printed.material(), found.rate(), note);
        } catch (StoreException e) {
            throw new Refusal(ExitCode.NOT_WRITTEN, e.getMessage(), e);
        }
        session().say("Kept for " + EntryNames.of(printed.material()) + " in " + session().shown(catalogue) + ".");
    }

    private void say(WearForecast forecast, Use how, Printed printed, boolean calibrated) {
        for (RegionWear each : forecast.after(hours)) {
            session().say(each.side() + ": " + Measures.percent(each.lost()) + " of " + name(each, printed)
                    + " is worn off after " + Measures.number(hours, 1) + " h of " + how.getLiteral() + " (film "
                    + Measures.number(each.film(), 0) + " um).");
        }
        double until = forecast.hoursUntil(0.2);
        session().say(Double.isInfinite(until) ? "A fifth of the print is never worn off."
                : "A fifth of the print is worn off after about " + Measures.number(until, 0) + " h.");
        session().say(calibrated ? "This is a model, calibrated from one sample, and no promise."
                : "This is a model, not calibrated, and no promise; one worn sample calibrates it (--half-gone, "
                        + "--after).");
    }

    private static String name(RegionWear each, Printed printed) {
        return printed.inks().stream().filter(ink -> ink.getId().equals(each.ink())).findFirst()
                .map(EntryNames::of).orElse("the full colour");
    }
}
