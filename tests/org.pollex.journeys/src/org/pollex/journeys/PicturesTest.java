/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Scale;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.app.look.Appearance;
import org.pollex.edit.ChooseMaterialCommand;
import org.pollex.editor.figure.SurfaceImage;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignSession;
import org.pollex.rules.rank.Ranked;
import org.pollex.ui.ScreenScale;
import org.pollex.ui.pictures.AfarView;
import org.pollex.ui.pictures.LoupeView;
import org.pollex.ui.pictures.MockupView;
import org.pollex.ui.pictures.RankView;
import org.pollex.ui.pictures.SamplePhoto;
import org.pollex.ui.pictures.TrueSizeView;
import org.pollex.ui.pictures.WearView;

/** A designer looks at a design at true size, through the loupe, on its material and from afar. */
class PicturesTest {

    @TempDir
    Path folder;

    private DesignEditor editor;

    @AfterEach
    void close() {
        for (String id : new String[] {TrueSizeView.ID, LoupeView.ID, MockupView.ID, AfarView.ID,
            WearView.ID, RankView.ID}) {
            IViewPart view = Window.page().findView(id);
            if (view != null) {
                Window.page().hideView(view);
            }
        }
        Window.closeEditors();
    }

    private void open() throws Exception {
        editor = Window.design(Samples.ferry(folder, "seen"));
    }

    @Test
    void trueSizeFollowsTheMeasuredScreen() throws Exception {
        open();
        ScreenScale.set(Window.window().getShell(), 5);
        TrueSizeView view = (TrueSizeView) Window.page().showView(TrueSizeView.ID);
        Window.until("it is painted", view::painted);
        Window.idle();
        Picture.take(Window.display(), "pictures-truesize");
        Point before = view.pictureSize();
        ScreenScale.set(Window.window().getShell(), 8);
        Window.until("it follows the measure", () -> view.pictureSize().x > before.x);
        assertEquals(8.0 / 5, (double) view.pictureSize().x / before.x, 0.02);
        // two picks of 26 mm and their margins
        assertEquals((3 * 4 + 2 * 26) * 8, view.pictureSize().x, 12);
        Window.idle();
        Picture.take(Window.display(), "pictures-truesize-scrolled");
        Canvas canvas = view.picture();
        assertTrue(canvas.getHorizontalBar().isVisible(), "what does not fit cannot be reached");
        // the loupe follows the pointer over this picture too: the middle of the front, then an arrow key
        LoupeView loupe = (LoupeView) Window.page().showView(LoupeView.ID, null, IWorkbenchPage.VIEW_CREATE);
        Point place = view.pixel("front", 0, 0);
        Window.mouse(canvas, SWT.MouseMove, place.x, place.y, 0, 0);
        assertEquals(0, loupe.place().x, 0.2);
        assertEquals(0, loupe.place().y, 0.2);
        double beside = loupe.place().x;
        loupe.picture().notifyListeners(SWT.KeyDown, key(SWT.ARROW_RIGHT));
        assertEquals(0.1, loupe.place().x - beside, 1e-9);
        int left = canvas.getHorizontalBar().getSelection();
        canvas.notifyListeners(SWT.KeyDown, key(SWT.ARROW_RIGHT));
        assertTrue(canvas.getHorizontalBar().getSelection() > left, "the arrow keys do not move the picture");
    }

    @Test
    void aCardAgainstTheScreenMeasuresIt() throws Exception {
        open();
        TrueSizeView view = (TrueSizeView) Window.page().showView(TrueSizeView.ID);
        Window.until("it is painted", view::painted);
        ScreenScale.set(Window.window().getShell(), 5);
        Exception[] wrong = new Exception[1];
        Runnable answer = new Runnable() {
            @Override
            public void run() {
                if (Widgets.dialog("Measure this screen").isEmpty()) {
                    Window.display().timerExec(50, this);
                    return;
                }
                Shell shell = Widgets.dialog("Measure this screen").get();
                Window.idle();
                Scale slider = Widgets.all(shell, Scale.class).get(0);
                slider.setSelection(599);
                slider.notifyListeners(SWT.Selection, new Event());
                Window.idle();
                try {
                    Picture.take(Window.display(), "pictures-measure");
                } catch (Exception e) {
                    wrong[0] = e;
                }
                Widgets.press(shell, "OK");
            }
        };
        Window.display().timerExec(50, answer);
        Widgets.press(view.picture().getParent(), "Measure this screen\u2026");
        assertNull(wrong[0]);
        // a bank card is 85.60 mm wide (ISO/IEC 7810, format ID-1)
        assertEquals(599 / 85.60, ScreenScale.pixelsPerMm(Window.window().getShell()), 1e-9);
        Window.until("the picture follows", () -> Math.abs(view.pictureSize().x - (3 * 4 + 2 * 26) * 599 / 85.60) < 12);
    }

    private static Event key(int code) {
        Event event = new Event();
        event.keyCode = code;
        return event;
    }

    @Test
    void theLoupeFollowsThePointer() throws Exception {
        open();
        LoupeView view = (LoupeView) Window.page().showView(LoupeView.ID);
        Window.idle();
        Control canvas = editor.page().viewer().getControl();
        int[] at = EditorTest.middle(editor, editor.getAdapter(DesignSession.class).design().getSides().get(0)
                .getLayers().get(0).getMarks().get(0));
        Window.mouse(canvas, SWT.MouseMove, at[0], at[1], 0, 0);
        Window.until("it is painted", view::painted);
        Window.idle();
        Picture.take(Window.display(), "pictures-loupe");
        assertEquals(0, view.place().x, 0.2);
        assertEquals(-3, view.place().y, 0.2);
    }

    @Test
    void onMaterialAndFromAfar() throws Exception {
        open();
        MockupView mockup = (MockupView) Window.page().showView(MockupView.ID, null, IWorkbenchPage.VIEW_VISIBLE);
        Window.until("the mock-up is painted", mockup::painted);
        Window.idle();
        Picture.take(Window.display(), "pictures-mockup");
        AfarView afar = (AfarView) Window.page().showView(AfarView.ID, null, IWorkbenchPage.VIEW_VISIBLE);
        Window.until("the view from afar is painted", afar::painted);
        Window.idle();
        Picture.take(Window.display(), "pictures-afar");
        assertTrue(afar.pictureSize().x > 100);
    }

    /** The slider takes ink off, and the view says that a model says so. */
    @Test
    void wearOnASlider() throws Exception {
        open();
        WearView view = (WearView) Window.page().showView(WearView.ID, null, IWorkbenchPage.VIEW_VISIBLE);
        Window.until("the forecast is painted", view::painted);
        Window.until("it is told", () -> view.told().contains("after 20 h of practice"));
        String before = view.told();
        int measured = view.measured();
        view.slider().setSelection(200);
        view.slider().notifyListeners(SWT.Selection, new Event());
        Window.until("more hours are told", () -> view.told().contains("after 200 h"));
        Window.idle();
        Picture.take(Window.display(), "pictures-wear");
        assertEquals(measured, view.measured(), "a step of the slider measured the print again");
        assertTrue(view.told().endsWith("(a model, not calibrated)") && !view.told().equals(before), view.told());
    }

    /** One worn sample is typed; its rate is kept beside the design, and the forecast says so. */
    @Test
    void wearIsCalibratedWithOneSample() throws Exception {
        open();
        WearView view = (WearView) Window.page().showView(WearView.ID, null, IWorkbenchPage.VIEW_VISIBLE);
        Window.until("the forecast is told", () -> view.told().contains("not calibrated"));
        Exception[] wrong = new Exception[1];
        Window.display().timerExec(50, new Runnable() {
            @Override
            public void run() {
                if (Widgets.dialog("Calibrate the forecast of wear").isEmpty()) {
                    Window.display().timerExec(50, this);
                    return;
                }
                Shell shell = Widgets.dialog("Calibrate the forecast of wear").get();
                Window.idle();
                List<Spinner> numbers = Widgets.all(shell, Spinner.class);
                numbers.get(0).setSelection(62);
                numbers.get(1).setSelection(90);
                Window.idle();
                try {
                    Picture.take(Window.display(), "pictures-wear-far");
                    numbers.get(0).setSelection(35);
                    Window.idle();
                    Picture.take(Window.display(), "pictures-wear-sample");
                } catch (Exception e) {
                    wrong[0] = e;
                }
                Widgets.press(shell, "Keep");
            }
        });
        Widgets.press(view.picture().getParent(), "Calibrate\u2026");
        assertNull(wrong[0]);
        Window.until("it is calibrated", () -> view.told().endsWith("(a model, calibrated from one sample)"));
        assertTrue(Files.readString(folder.resolve("wear.catalogue")).contains("3.5 mm from the tip after 9 h"));
        Window.idle();
        Picture.take(Window.display(), "pictures-wear-calibrated");
    }

    /** A pick 260 pixels wide, so 10 to the mm, whose ink is half gone 45 pixels above its tip. */
    private Path photograph() throws Exception {
        BufferedImage picture = new BufferedImage(400, 500, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = picture.createGraphics();
        g.setColor(new Color(0x8a8580));
        g.fillRect(0, 0, 400, 500);
        g.setColor(new Color(0xf2c431));
        g.fillPolygon(new int[] {70, 200, 330, 200}, new int[] {200, 60, 200, 480}, 4);
        g.setColor(new Color(0x22304a));
        g.fillPolygon(new int[] {110, 290, 219, 181}, new int[] {220, 220, 435, 435}, 4);
        g.dispose();
        Path file = folder.resolve("worn.png");
        ImageIO.write(picture, "png", file.toFile());
        return file;
    }

    /** Four clicks in a photograph measure the sample, by the width of the item. */
    @Test
    void aWornSampleIsMeasuredInAPhotograph() throws Exception {
        open();
        WearView view = (WearView) Window.page().showView(WearView.ID, null, IWorkbenchPage.VIEW_VISIBLE);
        Window.until("the forecast is told", () -> view.told().contains("not calibrated"));
        Path photograph = photograph();
        Throwable[] wrong = new Throwable[1];
        int[] read = new int[1];
        Window.display().timerExec(50, new Runnable() {
            @Override
            public void run() {
                if (Widgets.dialog("Calibrate the forecast of wear").isEmpty()) {
                    Window.display().timerExec(50, this);
                    return;
                }
                Shell shell = Widgets.dialog("Calibrate the forecast of wear").get();
                try {
                    SamplePhoto photo = Widgets.all(shell, SamplePhoto.class).get(0);
                    photo.open(folder.resolve("seen.design"));
                    Window.until("what is no photograph is refused", () -> photo.asks().contains("cannot be read"));
                    photo.open(photograph);
                    Window.until("the photograph is shown", photo::isShown);
                    Window.idle();
                    for (int[] at : new int[][] {{70, 200}, {330, 200}, {200, 480}, {200, 435}}) {
                        Point there = photo.at(at[0], at[1]);
                        Window.mouse(photo, SWT.MouseDown, there.x, there.y, 1, 0);
                        Window.mouse(photo, SWT.MouseUp, there.x, there.y, 1, 0);
                    }
                    Window.idle();
                    Picture.take(Window.display(), "pictures-wear-photo");
                    Appearance.DARK.choose();
                    Window.idle();
                    Picture.take(Window.display(), "pictures-wear-photo-dark");
                    assertEquals(List.of(), DarkViewsTest.faintBelow(shell));
                    Appearance.LIGHT.choose();
                    read[0] = Widgets.all(shell, Spinner.class).get(0).getSelection();
                } catch (Exception | AssertionError e) {
                    wrong[0] = e;
                }
                Widgets.press(shell, "Cancel");
            }
        });
        Widgets.press(view.picture().getParent(), "Calibrate\u2026");
        assertNull(wrong[0], () -> wrong[0].toString());
        // a pixel of the small picture is about a quarter of a millimetre
        assertEquals(45, read[0], 3);
        assertFalse(Files.exists(folder.resolve("wear.catalogue")), "Cancel kept the sample");
    }

    /** Every ink over every material, best first, and sorted by material when its heading is pressed. */
    @Test
    void inksOverMaterialsRanked() throws Exception {
        open();
        RankView view = (RankView) Window.page().showView(RankView.ID, null, IWorkbenchPage.VIEW_VISIBLE);
        Window.until("it is said that work goes on", () -> view.getContentDescription().startsWith("Working\u2026"));
        Window.idle();
        Picture.take(Window.display(), "pictures-rank-working");
        Window.until("the ranking is there", () -> view.table().getItemCount() > 100);
        Window.until("its pictures are there", () -> view.table().getItem(0).getImage(0) != null);
        Window.idle();
        Picture.take(Window.display(), "pictures-rank");
        assertEquals("", view.getContentDescription());
        assertTrue(view.table().getItem(0).getText(2).contains("reads well"), view.table().getItem(0).getText(2));
        view.table().getColumn(1).notifyListeners(SWT.Selection, new Event());
        String first = view.table().getItem(0).getText(1);
        String last = view.table().getItem(view.table().getItemCount() - 1).getText(1);
        assertTrue(first.compareTo(last) < 0, first + " before " + last);
        DesignSession session = editor.getAdapter(DesignSession.class);
        String own = session.design().getMaterial();
        Ranked chosen = (Ranked) view.table().getItem(0).getData();
        assertFalse(chosen.material().getId().equals(own), "another material comes first");
        view.table().setSelection(0);
        view.table().notifyListeners(SWT.DefaultSelection, new Event());
        assertEquals(chosen.material().getId(), session.design().getMaterial());
        Window.until("it is printed anew", session::fresh);
        Window.until("it is ranked anew", () -> view.getContentDescription().isEmpty());
        Picture.take(Window.display(), "pictures-rank-chosen");
        session.history().undo();
        assertEquals(own, session.design().getMaterial());
    }

    /** The pattern of the material is under the art while it is drawn, and goes when a plain one is chosen again. */
    @Test
    void theEditorShowsThePatternOfTheMaterial() throws Exception {
        open();
        DesignSession session = editor.getAdapter(DesignSession.class);
        Window.idle();
        ImageData plain = Picture.take(Window.display(), "pattern-none");
        session.run(new ChooseMaterialCommand(session.design(), "camouflage-green"));
        Window.until("it is printed anew", session::fresh);
        Window.until("the pattern is drawn", () -> Job.getJobManager().find(SurfaceImage.class).length == 0);
        Window.idle();
        ImageData patterned = Picture.take(Window.display(), "pattern-camouflage");
        assertTrue(colours(patterned) > colours(plain) + 3, colours(patterned) + " against " + colours(plain));
        session.history().undo();
        Window.until("it is printed anew", session::fresh);
        Window.idle();
        assertEquals(colours(plain), colours(Picture.take(Window.display(), "pattern-undone")), 2);
    }

    /** Colours that fill at least two hundred pixels of the drawing. */
    private static long colours(ImageData image) {
        Map<Integer, Integer> counts = new HashMap<>();
        for (int y = image.height / 6; y < image.height / 2; y++) {
            for (int x = image.width / 4; x < image.width * 3 / 4; x++) {
                counts.merge(image.getPixel(x, y), 1, Integer::sum);
            }
        }
        return counts.values().stream().filter(count -> count >= 200).count();
    }
}
