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
import org.pollex.rules.CheckContext;
import org.pollex.rules.Measures;
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

    @Option(names = "--worn-at", paramLabel = "R,H", description = "a worn sample in the same inks and material: half "
            + "of the ink is gone R mm from the lowest place of the front after H hours")
    private String wornAt;

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
        rates = wornAt == null ? rates : calibrated(rates, printed);
        rates = abraded == null ? rates : abraded(rates);
        WearForecast forecast = WearForecast.of(printed, rates);
        if (report != null) {
            SafeOutput.write(report, session().shown(report),
                    WearReport.of(session().shown(file), hours, how.getLiteral(), rates, forecast));
        }
        if (picture != null) {
            BufferedImage image = WearPicture.of(printed, PictureOptions.of(DPI), rates, Uses.coat(context),
                    hours);
            SafeOutput.write(picture, session().shown(picture), PngFile.bytes(image, DPI));
        }
        say(forecast, how, printed);
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

    private WearRates calibrated(WearRates rates, Printed printed) throws Refusal {
        List<String> parts = List.of(wornAt.split(","));
        try {
            double away = Double.parseDouble(parts.get(0));
            double after = Double.parseDouble(parts.get(1));
            PrintedSide side = printed.sides().get(0);
            double bottom = side.face().area().getEnvelopeInternal().getMaxY();
            return rates.calibrated(FilmThickness.of(printed).of(side.inks().get(0)), after,
                    side.face().wear().at(0, bottom - away));
        } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
            throw new Refusal(ExitCode.WRONG_USE, "--worn-at takes a distance in mm and hours above 0, such as 4,20, "
                    + "for a design that prints something, not " + wornAt + ".", e);
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

    private void say(WearForecast forecast, Use how, Printed printed) {
        for (RegionWear each : forecast.after(hours)) {
            session().say(each.side() + ": " + Measures.percent(each.lost()) + " of " + name(each, printed)
                    + " is worn off after " + Measures.number(hours, 1) + " h of " + how.getLiteral() + " (film "
                    + Measures.number(each.film(), 0) + " um).");
        }
        double until = forecast.hoursUntil(0.2);
        session().say(Double.isInfinite(until) ? "A fifth of the print is never worn off."
                : "A fifth of the print is worn off after about " + Measures.number(until, 0) + " h.");
        session().say("This is a model, not a promise; calibrate it with a worn sample (--worn-at).");
    }

    private static String name(RegionWear each, Printed printed) {
        return printed.inks().stream().filter(ink -> ink.getId().equals(each.ink())).findFirst()
                .map(EntryNames::of).orElse("the full colour");
    }
}
