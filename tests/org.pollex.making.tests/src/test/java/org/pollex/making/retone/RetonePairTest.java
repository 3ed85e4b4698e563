/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.retone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.colour.Srgb;
import org.pollex.making.desk.Desk;
import org.pollex.making.sample.SampleJob;
import org.pollex.making.session.Session;
import org.pollex.model.design.Design;
import org.pollex.model.design.Placement;
import org.pollex.output.picture.MaterialPicture;
import org.pollex.output.picture.PictureOptions;
import org.pollex.output.picture.PngFile;
import org.pollex.print.Printed;
import org.pollex.print.retone.RetoneStyle;
import org.pollex.rules.Contributions;
import org.pollex.rules.Finding;
import org.pollex.rules.Severity;
import org.pollex.rules.Suite;

/**
 * The badge of the sample job on its light material, only flipped and re-toned. Writes the three pictures in a row to
 * target/retone.png; the one in docs/pictures is a copy.
 */
class RetonePairTest {

    private static final int DPI = 420;
    private static final double PX = DPI / 25.4;

    @TempDir
    Path folder;

    private final PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream());

    /** Lightness of a place of the art of the front, in mm from the middle of its page. */
    private static double light(BufferedImage picture, Printed printed, Design design, double x, double y) {
        Placement mark = (Placement) design.getSides().get(0).getLayers().get(0).getMarks().get(0);
        double across = space(picture, printed) + printed.item().width() * PX / 2
                + (mark.getX() + x * mark.getScale()) * PX;
        double down = space(picture, printed) + printed.item().height() * PX / 2
                + (mark.getY() + y * mark.getScale()) * PX;
        return Srgb.lab(picture.getRGB((int) across, (int) down) & 0xffffff).l();
    }

    private static double space(BufferedImage picture, Printed printed) {
        int faces = printed.item().faces().size();
        return (picture.getWidth() - faces * printed.item().width() * PX) / (faces + 1);
    }

    @Test
    void lightStaysLightWhereTheFlipTurnsItDark() throws Exception {
        Session session = new Session(nowhere, nowhere, folder,
                Suite.of(Contributions.fromClassPath(RetonePairTest.class.getClassLoader())),
                LocalDate.of(2026, 11, 25), false);
        new SampleJob(session).write(folder, piece -> { });
        Path file = folder.resolve("deck-hands.design");
        Printed source = new Desk(session).open(file).printed();
        Design design = new Desk(session).open(file).design();
        RetoneOrder order = new RetoneOrder(file.toString(), "solid-black", Optional.of("white"),
                folder.resolve("dark.design").toString(), RetoneStyle.USUAL);
        Retoner retoner = new Retoner(session);
        Printed flip = retoner.flipped(order);
        try (RetoneDraft draft = retoner.draft(order, () -> false)) {
            Printed retoned = draft.printed();
            BufferedImage before = MaterialPicture.of(source, PictureOptions.of(DPI));
            BufferedImage turned = MaterialPicture.of(flip, PictureOptions.of(DPI));
            BufferedImage after = MaterialPicture.of(retoned, PictureOptions.of(DPI));
            // The gull's body is white and the sky beside it navy: which of them is the lighter one?
            assertTrue(light(before, source, design, 0, -1.5) > light(before, source, design, -6, -1) + 30);
            assertTrue(light(turned, source, design, 0, -1.5) < light(turned, source, design, -6, -1) - 30);
            assertTrue(light(after, source, design, 0, -1.5) > light(after, source, design, -6, -1) + 30);
            assertEquals(List.of("white"), draft.design().getInks());
            assertEquals(List.of(), negatives(source));
            assertEquals(List.of(Severity.ERROR), negatives(flip));
            assertEquals(List.of(), negatives(retoned));
            Path target = Path.of("target").toAbsolutePath();
            Files.createDirectories(target);
            Files.write(target.resolve("retone.png"), PngFile.bytes(row(List.of(before, turned, after), source), DPI));
        }
    }

    @Test
    void theBadgeInSeveralInksKeepsLinesAndGapsThatItsSourceDoesNot() throws Exception {
        Session session = new Session(nowhere, nowhere, folder,
                Suite.of(Contributions.fromClassPath(RetonePairTest.class.getClassLoader())),
                LocalDate.of(2026, 11, 25), false);
        new SampleJob(session).write(folder, piece -> { });
        Path file = folder.resolve("deck-hands.design");
        assertTrue(tooSmall(new Desk(session).open(file).printed()) > 0, "the source has a gap that two inks close");
        RetoneOrder order = new RetoneOrder(file.toString(), "solid-black", Optional.empty(),
                folder.resolve("dark.design").toString(), RetoneStyle.USUAL);
        try (RetoneDraft draft = new Retoner(session).draft(order, () -> false)) {
            assertEquals(List.of("white", "red", "gold"), draft.design().getInks());
            assertEquals(0, tooSmall(draft.printed()));
            assertTrue(draft.told().get(0).contains("Lines and gaps were brought to the limits."),
                    draft.told()::toString);
        }
    }

    /** How many errors the checks of lines, gaps and dots find in a print. */
    private static long tooSmall(Printed printed) throws InterruptedException {
        return Suite.of(Contributions.fromClassPath(RetonePairTest.class.getClassLoader())).check(printed).stream()
                .filter(finding -> finding.severity() == Severity.ERROR)
                .filter(finding -> Set.of("line-too-thin", "gap-too-narrow", "speck", "pinhole")
                        .contains(finding.check()))
                .count();
    }

    /** How bad the check for negatives finds a print. */
    private static List<Severity> negatives(Printed printed) throws InterruptedException {
        return Suite.of(Contributions.fromClassPath(RetonePairTest.class.getClassLoader())).check(printed).stream()
                .filter(finding -> finding.check().equals("reads-negative")).map(Finding::severity).toList();
    }

    /** The first face of each, side by side. */
    private static BufferedImage row(List<BufferedImage> pictures, Printed printed) {
        BufferedImage first = pictures.get(0);
        int space = (int) space(first, printed);
        int wide = (int) (printed.item().width() * PX) + space;
        BufferedImage row = new BufferedImage(pictures.size() * wide + space, first.getHeight(),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = row.createGraphics();
        g.setColor(new Color(PictureOptions.NEUTRAL));
        g.fillRect(0, 0, row.getWidth(), row.getHeight());
        for (int i = 0; i < pictures.size(); i++) {
            g.drawImage(pictures.get(i).getSubimage(space / 2, 0, wide, first.getHeight()), space / 2 + i * wide, 0,
                    null);
        }
        g.dispose();
        return row;
    }
}
