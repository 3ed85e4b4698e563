/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.editparts.ZoomManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignPages;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.side.Shown;
import org.pollex.editor.view.RulerCanvas;

/** A designer looks closely: zooms about the pointer, pans, and chooses what shows besides the art. */
class EditorViewTest {

    @TempDir
    Path folder;

    private DesignEditor editor;
    private Control canvas;
    private ZoomManager zoom;

    @BeforeEach
    void open() throws Exception {
        Window.fill();
        editor = (DesignEditor) Window.open(Samples.ferry(folder, "close"));
        DesignSession session = editor.getAdapter(DesignSession.class);
        Window.until("the first print is there", session::fresh);
        Window.idle();
        canvas = editor.page().viewer().getControl();
        zoom = editor.page().root().getZoomManager();
    }

    @AfterEach
    void close() {
        for (Shown each : Shown.values()) {
            each.set(each != Shown.GRID);
        }
        Window.closeEditors();
    }

    private static void command(String id) throws Exception {
        Window.window().getService(IHandlerService.class).executeCommand("org.pollex.editor." + id, null);
        Window.idle();
    }

    private double[] under(int x, int y) {
        Point view = zoom.getViewport().getViewLocation();
        return new double[] {(view.x + x) / zoom.getZoom(), (view.y + y) / zoom.getZoom()};
    }

    private void wheel(int x, int y, int count) {
        Event event = new Event();
        event.type = SWT.MouseWheel;
        event.x = x;
        event.y = y;
        event.count = count;
        event.stateMask = SWT.MOD1;
        event.widget = canvas;
        event.doit = true;
        canvas.notifyListeners(SWT.MouseWheel, event);
    }

    @Test
    void theWheelKeepsThePlaceUnderThePointer() throws Exception {
        double[] before = under(640, 330);
        for (int i = 0; i < 10; i++) {
            wheel(640, 330, 3);
        }
        Window.idle();
        Picture.take(Window.display(), "editor-wheel");
        double[] after = under(640, 330);
        // half a pixel of rounding, for the view moves by whole pixels
        assertEquals(before[0], after[0], 0.6 / zoom.getZoom(), "um across");
        assertEquals(before[1], after[1], 0.6 / zoom.getZoom(), "um down");
        for (int i = 0; i < 10; i++) {
            wheel(640, 330, 3);
        }
        assertEquals(32, zoom.getZoom() * 25400 / 96, 1e-9, "3200 % is the most");
        Window.idle();
        Picture.take(Window.display(), "editor-closest");
    }

    @Test
    void keysZoomAndFit() throws Exception {
        double fit = zoom.getZoom();
        command("zoomIn");
        assertEquals(fit * 1.25, zoom.getZoom(), 1e-9);
        command("zoomOut");
        assertEquals(fit, zoom.getZoom(), 1e-9);
        command("zoomActual");
        assertEquals(96 / 25400.0, zoom.getZoom(), 1e-12);
        command("zoomFit");
        assertEquals(fit, zoom.getZoom(), fit / 100);
    }

    @Test
    void theMiddleButtonPans() {
        command("zoomIn", 6);
        Point before = zoom.getViewport().getViewLocation();
        Window.mouse(canvas, SWT.MouseMove, 600, 300, 0, 0);
        Window.mouse(canvas, SWT.MouseDown, 600, 300, 2, 0);
        Window.mouse(canvas, SWT.MouseMove, 560, 330, 0, SWT.BUTTON2);
        Window.mouse(canvas, SWT.MouseUp, 560, 330, 2, SWT.BUTTON2);
        Point after = zoom.getViewport().getViewLocation();
        assertEquals(40, after.x - before.x);
        assertEquals(-30, after.y - before.y);
        assertFalse(editor.isDirty(), "panning moved something");
    }

    private void command(String id, int times) {
        try {
            for (int i = 0; i < times; i++) {
                command(id);
            }
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void gridRulersAndZonesAreSwitched() throws Exception {
        int width = canvas.getSize().x;
        command("showGrid");
        assertTrue(Shown.GRID.on());
        Picture.take(Window.display(), "editor-grid");
        command("showRulers");
        assertNotEquals(width, canvas.getSize().x, "the rulers still take room");
        command("showSafe");
        command("showWear");
        command("showRim");
        command("showGrid");
        Picture.take(Window.display(), "editor-bare");
        assertFalse(Shown.RIM.on());
        command("showRulers");
        assertEquals(width, canvas.getSize().x);
    }

    /** Mean of red, green and blue in the left part of the drawing, so many pixels below its upper edge. */
    private int lightness(String picture, int below) throws Exception {
        ImageData shot = Picture.take(Window.display(), picture);
        org.eclipse.swt.graphics.Point at = canvas.toDisplay(3, below);
        RGB rgb = shot.palette.getRGB(shot.getPixel(at.x, at.y));
        return (rgb.red + rgb.green + rgb.blue) / 3;
    }

    @Test
    void theDarkThemeReachesTheDrawing() throws Exception {
        int light = lightness("editor-light", 30);
        int ruler = lightness("editor-light", -RulerCanvas.THICKNESS / 2);
        try {
            Window.dark(true);
            DesignSession session = editor.getAdapter(DesignSession.class);
            editor.getAdapter(DesignPages.class).select(session.design().getSides().get(0).getLayers().get(0)
                    .getMarks());
            Window.idle();
            assertTrue(lightness("editor-dark", 30) < light / 2, "the ground beside the item stays light");
            assertTrue(lightness("editor-dark", -RulerCanvas.THICKNESS / 2) < ruler / 2, "the ruler stays light");
        } finally {
            Window.dark(false);
        }
    }
}
