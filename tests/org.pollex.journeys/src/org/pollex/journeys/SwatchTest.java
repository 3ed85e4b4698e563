/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.app.look.Appearance;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Srgb;
import org.pollex.markers.StudioProject;
import org.pollex.markers.StudioSuite;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.Texture;
import org.pollex.model.catalogue.TextureKind;
import org.pollex.model.store.ModelFiles;
import org.pollex.print.FilmColour;
import org.pollex.print.stock.Stock;
import org.pollex.ui.photo.PhotoCanvas;

/** A studio photographs a stock and keeps it as a material: dropped, cropped, balanced, scaled, seen, kept. */
class SwatchTest {

    private static final String TITLE = "Swatch of a material";
    private static final int LONG = 60_000;
    private static final int SHELL = 0x8a5a3c;
    private static final int VEIN = 0xc9a86a;
    /** L* 50 to 0.1: the encoded value of luminance 0.1842. */
    private static final int GREY = 0x777777;
    /** A warm light. */
    private static final double[] CAST = {0.9, 0.7, 0.45};

    @TempDir
    Path folder;

    private StudioProject studio;
    private Path file;
    private Path photo;

    @BeforeEach
    void start() throws Exception {
        Window.fill();
        studio = StudioProject.open(new NullProgressMonitor());
        file = studio.home().resolve("studio.catalogue");
        clean();
        photo = photograph();
    }

    @AfterEach
    void clean() throws Exception {
        Appearance.SYSTEM.choose();
        Widgets.dialog(TITLE).ifPresent(Shell::close);
        for (String each : List.of("studio.catalogue", ".studio.catalogue.last", "shell.png")) {
            Files.deleteIfExists(file.resolveSibling(each));
        }
        studio.project().refreshLocal(IResource.DEPTH_ONE, null);
        Window.idle();
    }

    /** 1200 x 900 pixels: a stock in veins of 8 pixels at 300..1100, 100..800; a grey card; a ruler's two marks. */
    private Path photograph() throws Exception {
        BufferedImage picture = new BufferedImage(1200, 900, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < 900; y++) {
            for (int x = 0; x < 1200; x++) {
                boolean stock = x >= 300 && x < 1100 && y >= 100 && y < 800;
                boolean card = x >= 60 && x < 240 && y >= 60 && y < 240;
                boolean mark = y >= 850 && (Math.abs(x - 300) < 2 || Math.abs(x - 900) < 2);
                boolean vein = (x + 40 * Math.sin(y / 50.0)) % 60 < 18;
                picture.setRGB(x, y, cast(mark ? 0xf0f0f0 : card ? GREY : stock ? vein ? VEIN : SHELL : 0x202020));
            }
        }
        Path made = folder.resolve("shell.png");
        ImageIO.write(picture, "png", made.toFile());
        return made;
    }

    private static int cast(int rgb) {
        int seen = 0;
        for (int channel = 0; channel < 3; channel++) {
            double light = CAST[channel] * Srgb.decode((rgb >> 16 - 8 * channel & 0xff) / 255.0);
            seen = seen << 8 | (int) Math.round(255 * Srgb.encode(light));
        }
        return seen;
    }

    private static void inDialog(Widgets.Steps steps) throws Exception {
        Throwable[] failure = new Throwable[1];
        boolean[] over = new boolean[1];
        Widgets.whenOpen(TITLE, LONG, shell -> {
            try {
                Window.idle();
                steps.in(shell);
            } catch (Throwable e) {
                failure[0] = e;
            } finally {
                Widgets.dialog(TITLE).ifPresent(Shell::close);
                over[0] = true;
            }
        });
        InksTest.run("org.pollex.ui.inks.swatch");
        Window.until("the dialog is closed", LONG, () -> over[0]);
        if (failure[0] != null) {
            throw new AssertionError(failure[0].getMessage(), failure[0]);
        }
    }

    private static PhotoCanvas canvas(Shell shell) {
        return Widgets.all(shell, PhotoCanvas.class).get(0);
    }

    private static void drag(PhotoCanvas canvas, int x0, int y0, int x1, int y1) {
        Point from = canvas.at(x0, y0);
        Point to = canvas.at(x1, y1);
        Window.mouse(canvas, SWT.MouseDown, from.x, from.y, 1, 0);
        Window.mouse(canvas, SWT.MouseMove, (from.x + to.x) / 2, (from.y + to.y) / 2, 0, SWT.BUTTON1);
        Window.mouse(canvas, SWT.MouseMove, to.x, to.y, 0, SWT.BUTTON1);
        Window.mouse(canvas, SWT.MouseUp, to.x, to.y, 1, SWT.BUTTON1);
    }

    private static void click(PhotoCanvas canvas, int x, int y) {
        Point at = canvas.at(x, y);
        Window.mouse(canvas, SWT.MouseDown, at.x, at.y, 1, 0);
        Window.mouse(canvas, SWT.MouseUp, at.x, at.y, 1, SWT.BUTTON1);
    }

    private static void choose(Shell shell, String tool) {
        Widgets.all(shell, Button.class).stream().filter(each -> each.isVisible() && (each.getStyle() & SWT.RADIO) != 0
                && each.getSelection()).forEach(each -> {
                    each.setSelection(false);
                    each.notifyListeners(SWT.Selection, new Event());
                });
        Button radio = Widgets.button(shell, tool);
        radio.setSelection(true);
        radio.notifyListeners(SWT.Selection, new Event());
        Window.idle();
    }

    private static Text field(Shell shell, String label) {
        Label named = Widgets.all(shell, Label.class).stream().filter(each -> each.isVisible()
                && each.getText().replace("&", "").equals(label)).findFirst().orElseThrow();
        List<Control> row = Arrays.asList(named.getParent().getChildren());
        return (Text) row.stream().skip(row.indexOf(named) + 1L).filter(Text.class::isInstance).findFirst()
                .orElseThrow();
    }

    private static boolean ready(Shell shell) {
        return Widgets.button(shell, "Keep").isEnabled();
    }

    private void dropped(Shell shell) throws Exception {
        PhotoCanvas canvas = canvas(shell);
        Drops.files(canvas, null, 20, 60, photo);
        Window.until("the photograph is shown", canvas::isShown);
        Window.idle();
    }

    @Test
    void aStockIsPhotographedAndKept() throws Exception {
        byte[] before = Files.readAllBytes(photo);
        inDialog(shell -> {
            Picture.take(Window.display(), "swatch-empty");
            assertFalse(ready(shell), "nothing can be kept");
            dropped(shell);
            PhotoCanvas canvas = canvas(shell);
            drag(canvas, 320, 120, 1080, 780);
            choose(shell, "Grey card");
            click(canvas, 150, 150);
            choose(shell, "Two points");
            click(canvas, 300, 870);
            click(canvas, 900, 870);
            field(shell, "Distance:").setText("3cm");
            // 600 pixels are 30 mm, to the pixel of the screen, so 1200 are 60
            assertEquals(60, mm(shell, "Whole width:"), 0.6);
            assertFalse(ready(shell), "a material without a name can be kept");
            field(shell, "Name:").setText("Shell & vein");
            Window.until("it is seen", () -> ready(shell));
            Window.idle();
            Picture.take(Window.display(), "swatch-points");
            choose(shell, "Crop");
            Picture.take(Window.display(), "swatch-crop");
            keys(shell, canvas);
            Appearance.DARK.choose();
            choose(shell, "Grey card");
            Window.until("it is drawn for the dark theme", SwatchTest::drawn);
            Picture.take(Window.display(), "swatch-dark");
            assertEquals(List.of(), DarkViewsTest.faintBelow(shell));
            Appearance.LIGHT.choose();
            Window.until("it is seen", () -> drawn() && ready(shell));
            Widgets.press(shell, "Keep");
            Window.until("it is kept", () -> shell.isDisposed());
        });
        assertArrayEquals(before, Files.readAllBytes(photo), "the photograph was touched");
        assertArrayEquals(before, Files.readAllBytes(file.resolveSibling("shell.png")));
        Material kept = ModelFiles.CATALOGUES.load(file).getMaterials().get(0);
        assertEquals("Shell & vein", kept.getName());
        assertEquals("shell-vein", kept.getId());
        Texture texture = kept.getTexture();
        assertEquals(TextureKind.SWATCH, texture.getKind());
        assertEquals(60, texture.getScale(), 0.6);
        assertEquals(320, texture.getCrop().getX(), 3);
        assertEquals(500, texture.getCrop().getWidth(), 3);
        assertEquals(50, texture.getGrey().getLightness());
        Stock stock = Stock.of(kept);
        assertEquals("", stock.problem().orElse(""));
        // both colours of the stock without the warm light, to the rounding of eight bits
        for (int each : new int[] {SHELL, VEIN}) {
            double nearest = stock.palette().stream().mapToDouble(lab -> DeltaE.ciede2000(Srgb.lab(each), lab)).min()
                    .orElseThrow();
            assertEquals(0, nearest, 1);
        }
        assertEquals(0, DeltaE.ciede2000(FilmColour.lab(kept.getLab()), stock.mean()), 0.2);
    }

    /** Fields and keys do what the mouse does. */
    private static void keys(Shell shell, PhotoCanvas canvas) {
        Text across = field(shell, "Width:");
        across.setText("500 px");
        Window.idle();
        canvas.forceFocus();
        String left = field(shell, "Left:").getText();
        Event right = new Event();
        right.keyCode = SWT.ARROW_RIGHT;
        right.stateMask = SWT.SHIFT;
        canvas.notifyListeners(SWT.KeyDown, right);
        double moved = mm(shell, "Left:") - Double.parseDouble(left.replace(" mm", ""));
        // ten pixels of twenty a mm
        assertEquals(0.5, moved, 0.01);
        Event back = new Event();
        back.keyCode = SWT.ARROW_LEFT;
        back.stateMask = SWT.SHIFT;
        canvas.notifyListeners(SWT.KeyDown, back);
        assertEquals(left, field(shell, "Left:").getText());
        drag(canvas, 820, 450, 920, 450);
        assertEquals(30, mm(shell, "Width:"), 0.3, "the right edge was not dragged");
        drag(canvas, 920, 450, 820, 450);
        double stood = mm(shell, "Left:");
        drag(canvas, 500, 450, 560, 420);
        assertEquals(3, mm(shell, "Left:") - stood, 0.2, "the box was not dragged");
        assertEquals(25, mm(shell, "Width:"), 0.3, "dragging sized the box");
        drag(canvas, 560, 420, 500, 450);
        field(shell, "Left:").setText("9000 px");
        Window.until("a crop beside the photograph is refused", () -> said(shell, "does not lie on it"));
        assertFalse(ready(shell));
        field(shell, "Left:").setText(left);
        Window.until("it is seen", () -> ready(shell));
    }

    private static double mm(Shell shell, String label) {
        return Double.parseDouble(field(shell, label).getText().replace(" mm", ""));
    }

    private static boolean drawn() {
        Window.idle();
        return Arrays.stream(Job.getJobManager().find(null)).noneMatch(each -> each.getName()
                .equals("Drawing a swatch"));
    }

    private static boolean said(Shell shell, String words) {
        return Widgets.all(shell, Text.class).stream().anyMatch(each -> each.getText().contains(words));
    }

    /** A shipped material is not changed; its copy has the swatch, and designs of the studio see that. */
    @Test
    void ofAMaterialFromElsewhereACopyIsKept() throws Exception {
        Material shipped = StudioSuite.get().catalogues().material("solid-white").orElseThrow();
        inDialog(shell -> {
            dropped(shell);
            Combo materials = Widgets.all(shell, Combo.class).get(0);
            materials.setText("Solid white (a copy of it)");
            materials.notifyListeners(SWT.Selection, new Event());
            field(shell, "Whole width:").setText("2.4 in");
            Widgets.press(shell, "Take the colour of the material from it");
            Window.until("it is seen", () -> drawn() && ready(shell));
            Widgets.press(shell, "Keep");
            Window.until("it is kept", () -> shell.isDisposed());
        });
        Material kept = ModelFiles.CATALOGUES.load(file).getMaterials().get(0);
        assertEquals("solid-white", kept.getId());
        assertEquals(shipped.getLab(), kept.getLab(), "the colour was not to be taken");
        assertEquals(shipped.getWearFactor(), kept.getWearFactor());
        assertEquals(60.96, kept.getTexture().getScale(), 1e-6);
        assertEquals(kept.getTexture().getPicture(), StudioSuite.get().near(studio.home()).catalogues()
                .material("solid-white").orElseThrow().getTexture().getPicture());
    }

    @Test
    void cancelLeavesAllAsItIs() throws Exception {
        inDialog(shell -> {
            PhotoCanvas canvas = canvas(shell);
            Path none = Files.writeString(folder.resolve("none.jpg"), "no picture");
            Drops.files(canvas, null, 20, 60, none);
            Window.until("what is no photograph is refused", () -> canvas.asks().contains("cannot be read"));
            dropped(shell);
            Combo materials = Widgets.all(shell, Combo.class).get(0);
            Optional<String> white = Arrays.stream(materials.getItems()).filter(each -> each.startsWith("Solid white"))
                    .findFirst();
            materials.setText(white.orElseThrow());
            materials.notifyListeners(SWT.Selection, new Event());
            assertEquals("Solid white", field(shell, "Name:").getText());
            field(shell, "Whole width:").setText("60");
            Window.until("it is seen", () -> ready(shell));
            assertTrue(Widgets.all(shell, Label.class).stream().anyMatch(each -> each.getText()
                    .contains("from that of Solid white so far")), "how far it is from the material is not told");
            Widgets.press(shell, "Cancel");
        });
        Window.idle();
        assertFalse(Files.exists(file), "Cancel made a catalogue");
        assertFalse(Files.exists(file.resolveSibling("shell.png")), "Cancel copied the photograph");
    }
}
