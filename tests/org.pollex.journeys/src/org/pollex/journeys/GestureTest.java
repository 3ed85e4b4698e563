/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.BitSet;
import java.util.List;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Control;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.side.Shown;
import org.pollex.model.design.Mark;

/** What is drawn while art follows the mouse, and that nothing of it stays. */
class GestureTest {

    private static final int REACH = 96;
    /** Scroll bars lie over the drawing and come and go with the mouse. */
    private static final int BARS = 20;

    @TempDir
    Path folder;

    private static final int ROUNDED = 40;

    private DesignEditor editor;
    private DesignSession session;
    private Control canvas;

    private void open(Path file) throws Exception {
        editor = Window.design(file);
        session = editor.getAdapter(DesignSession.class);
        canvas = editor.page().viewer().getControl();
    }

    @AfterEach
    void close() {
        Window.closeEditors();
    }

    private Mark mark() {
        return session.design().getSides().get(0).getLayers().get(0).getMarks().get(0);
    }

    private ImageData canvas(String name) throws Exception {
        Window.idle();
        ImageData screen = Picture.take(Window.display(), name);
        Point at = canvas.toDisplay(0, 0);
        ImageData part = new ImageData(canvas.getSize().x, canvas.getSize().y, 24, new PaletteData(
                0xff0000, 0xff00, 0xff));
        for (int y = 0; y < part.height; y++) {
            for (int x = 0; x < part.width; x++) {
                RGB rgb = screen.palette.getRGB(screen.getPixel(at.x + x, at.y + y));
                part.setPixel(x, y, rgb.red << 16 | rgb.green << 8 | rgb.blue);
            }
        }
        return part;
    }

    /** Pixels as red as what is wrong, of the middle of the drawing moved by some pixels. */
    private static BitSet wrong(ImageData data, int[] about, int dx) {
        BitSet set = new BitSet();
        int size = 2 * REACH + 1;
        for (int y = 0; y < size; y++) {
            for (int x = 0; x < size; x++) {
                int rgb = data.getPixel(about[0] - REACH + x + dx, about[1] - REACH + y);
                int red = rgb >> 16 & 255;
                if (red > 150 && red - (rgb >> 8 & 255) > 90 && red - (rgb & 255) > 60) {
                    set.set(y * size + x);
                }
            }
        }
        return set;
    }

    @Test
    void thinPlacesMoveWithTheArt() throws Exception {
        open(Samples.rings(folder, "rings"));
        int[] at = EditorTest.middle(editor, mark());
        Window.drag(canvas, at[0], at[1], at[0] + 8, at[1] + 4, false, SWT.ALT);
        Window.until("thin places are shown", () -> editor.live().marked() > 20);
        BitSet before = wrong(canvas("gesture-lines"), new int[] {at[0] + 8, at[1] + 4}, 0);
        assertTrue(before.cardinality() > 500, before.cardinality() + " pixels of thin places");
        Window.mouse(canvas, SWT.MouseMove, at[0] + 28, at[1] + 4, 0, SWT.BUTTON1 | SWT.ALT);
        BitSet after = wrong(canvas("gesture-lines-moved"), new int[] {at[0] + 8, at[1] + 4}, 20);
        int all = after.cardinality();
        after.and(before);
        assertTrue(after.cardinality() > 0.9 * Math.max(all, before.cardinality()), after.cardinality() + " of "
                + before.cardinality() + " and " + all + " pixels stand 20 pixels beside");
        Window.mouse(canvas, SWT.MouseUp, at[0] + 28, at[1] + 4, 1, SWT.BUTTON1 | SWT.ALT);
    }

    @Test
    void afterAGestureTheDrawingIsThatOfAFreshEditor() throws Exception {
        Path file = Samples.rings(folder, "rings");
        open(file);
        int[] at = EditorTest.middle(editor, mark());
        Window.drag(canvas, at[0], at[1], at[0] + 17, at[1] + 9, true, SWT.ALT);
        editor.page().select(List.of());
        Window.until("the print follows", session::fresh);
        editor.doSave(new NullProgressMonitor());
        Window.mouse(canvas, SWT.MouseMove, 5, 5, 0, 0);
        ImageData after = canvas("gesture-after");
        Window.closeEditors();
        open(file);
        ImageData fresh = canvas("gesture-fresh");
        assertEquals(after.width, fresh.width);
        int differing = 0;
        for (int y = 0; y < after.height - BARS; y++) {
            for (int x = 0; x < after.width - BARS; x++) {
                // what is painted in parts may be rounded a level away from what is painted at once
                differing += apart(rgb(after, x, y), rgb(fresh, x, y)) > 2 ? 1 : 0;
            }
        }
        assertEquals(0, differing, "pixels");
    }

    private static int apart(RGB one, RGB other) {
        return Math.max(Math.abs(one.red - other.red), Math.max(Math.abs(one.green - other.green),
                Math.abs(one.blue - other.blue)));
    }

    /** Drawn as a picture at the nearest whole pixel while it moves, so every pixel is like one beside it at rest. */
    @Test
    void whileItMovesTheArtLooksAsAtRest() throws Exception {
        open(Samples.ferry(folder, "moved"));
        Shown.LIVE.set(false);
        try {
            editor.page().zoom(2.2);
            Window.idle();
            int[] at = EditorTest.middle(editor, mark());
            Window.drag(canvas, at[0], at[1], at[0] + 17, at[1] + 9, false, SWT.ALT);
            ImageData moving = canvas("gesture-moving");
            Window.mouse(canvas, SWT.MouseUp, at[0] + 17, at[1] + 9, 1, SWT.BUTTON1 | SWT.ALT);
            Window.until("the print follows", session::fresh);
            ImageData rest = canvas("gesture-rested");
            // the thin line at the bottom of the boat is marked at rest
            int ink = 0;
            int strange = 0;
            for (int y = at[1] + 9 - REACH; y <= at[1] + 9 + REACH / 2; y++) {
                for (int x = at[0] + 17 - REACH; x <= at[0] + 17 + REACH; x++) {
                    RGB seen = rgb(moving, x, y);
                    ink += apart(seen, rgb(rest, at[0] + 17, at[1] + 9)) > 60 ? 1 : 0;
                    strange += between(seen, rest, x, y) ? 0 : 1;
                }
            }
            assertTrue(ink > 300, ink + " pixels of art about the middle");
            assertEquals(0, strange, "pixels unlike all about their place");
        } finally {
            Shown.LIVE.set(true);
        }
    }

    private static boolean between(RGB seen, ImageData rest, int x, int y) {
        int[] least = {255, 255, 255};
        int[] most = new int[3];
        for (int dy = -1; dy <= 1; dy++) {
            for (int dx = -1; dx <= 1; dx++) {
                RGB near = rgb(rest, x + dx, y + dy);
                int[] parts = {near.red, near.green, near.blue};
                for (int i = 0; i < parts.length; i++) {
                    least[i] = Math.min(least[i], parts[i]);
                    most[i] = Math.max(most[i], parts[i]);
                }
            }
        }
        int[] parts = {seen.red, seen.green, seen.blue};
        for (int i = 0; i < parts.length; i++) {
            if (parts[i] < least[i] - ROUNDED || parts[i] > most[i] + ROUNDED) {
                return false;
            }
        }
        return true;
    }

    private static RGB rgb(ImageData data, int x, int y) {
        return data.palette.getRGB(data.getPixel(x, y));
    }
}
