/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignSession;
import org.pollex.model.design.Mark;

/** A designer drags art to the tip, over the edge and back, and makes it smaller, and sees at once what that does. */
class LiveFindingsTest {

    @TempDir
    Path folder;

    private DesignEditor editor;
    private DesignSession session;
    private Control canvas;

    @BeforeEach
    void open() throws Exception {
        Window.fill();
        editor = (DesignEditor) Window.open(Samples.ferry(folder, "one"));
        session = editor.getAdapter(DesignSession.class);
        Window.until("the first print is there", session::fresh);
        Window.until("it is measured", () -> editor.live().readout().contains("0.12 of"));
        Window.idle();
        canvas = editor.page().viewer().getControl();
    }

    @AfterEach
    void close() {
        Window.closeEditors();
    }

    private Mark boat() {
        return session.design().getSides().get(0).getLayers().get(0).getMarks().get(0);
    }

    private void move(int x, int y) {
        Window.mouse(canvas, SWT.MouseMove, x, y, 0, SWT.BUTTON1);
        Window.idle();
    }

    @Test
    void toTheTipOverTheEdgeAndBack() throws Exception {
        int[] at = EditorTest.middle(editor, boat());
        double px = editor.page().root().getZoomManager().getZoom() * 1000;
        int grab = at[1] + (int) (2 * px);
        assertTrue(editor.live().marked() > 0, "the thin line is not marked");
        Window.drag(canvas, at[0], grab, at[0], grab + (int) (9 * px), false);
        Window.until("the wearing part is tinted", () -> editor.live().showsWear());
        Window.until("thin places follow the art", () -> editor.live().marked() > 0);
        assertTrue(editor.live().readout().contains("0.12 of 0.15"), editor.live().readout());
        Window.idle();
        Picture.take(Window.display(), "live-wear");
        move(at[0] + (int) (9 * px), grab);
        Window.until("the part off the edge is tinted", () -> editor.live().showsOff());
        Window.idle();
        Picture.take(Window.display(), "live-off-edge");
        move(at[0] + 3, grab);
        assertFalse(editor.live().showsOff());
        assertFalse(editor.live().showsWear());
        Window.mouse(canvas, SWT.MouseUp, at[0] + 3, grab, 1, SWT.BUTTON1);
        Window.idle();
        Window.until("the exact findings are back", () -> session.fresh() && editor.live().marked() > 0);
        Picture.take(Window.display(), "live-exact");
    }

    @Test
    void smallerMakesLinesThinner() throws Exception {
        int[] at = EditorTest.middle(editor, boat());
        Window.drag(canvas, at[0], at[1] + 20, at[0], at[1] + 20, true);
        Window.idle();
        org.eclipse.draw2d.geometry.Rectangle box = ((org.eclipse.gef.GraphicalEditPart) editor.page().viewer()
                .getEditPartRegistry().get(boat())).getFigure().getBounds().getCopy();
        ((org.eclipse.gef.GraphicalEditPart) editor.page().viewer().getEditPartRegistry().get(boat())).getFigure()
                .translateToAbsolute(box);
        Window.drag(canvas, box.right(), box.bottom(), box.x + box.width * 7 / 10, box.y + box.height * 7 / 10, false);
        Window.until("the readout follows: " + editor.live().readout(),
                () -> editor.live().readout().contains("0.08 of"));
        Picture.take(Window.display(), "live-smaller");
        Window.mouse(canvas, SWT.MouseUp, box.x + box.width * 7 / 10, box.y + box.height * 7 / 10, 1, SWT.BUTTON1);
        Window.until("the exact check says the same", () -> session.fresh()
                && editor.live().readout().contains("0.08 of"));
        assertEquals(0.7, boat().getScale(), 0.03);
    }

    /** The wave below the boat is too thin; resting on it says so, resting on the item says nothing. */
    @Test
    void aPinSaysWhatWasFound() throws Exception {
        int[] at = EditorTest.middle(editor, boat());
        double px = editor.page().root().getZoomManager().getZoom() * 1000;
        Window.until("places are marked", () -> editor.live().marked() > 0);
        // the box of the boat reaches from the top of the sail to the lower edge of the wave
        int wave = at[1] + (int) (8.86 / 2 * px);
        Window.mouse(canvas, SWT.MouseMove, at[0], wave, 0, 0);
        assertTrue(String.valueOf(canvas.getToolTipText()).contains("only 0.12 mm wide"), canvas.getToolTipText());
        Window.mouse(canvas, SWT.MouseMove, at[0], wave + (int) (3 * px), 0, 0);
        assertEquals(null, canvas.getToolTipText());
    }

    @Test
    void theNumbersAreReadAloudWithWordsForTheSigns() {
        org.eclipse.swt.custom.CLabel line = Widgets.all(editor.page().footer(), org.eclipse.swt.custom.CLabel.class)
                .get(0);
        assertTrue(line.getText().contains("0.12 of 0.15 mm"), line.getText());
        assertEquals(7, Widgets.all(editor.page().footer(), org.eclipse.swt.custom.CLabel.class).size());
        assertTrue(editor.live().readoutAloud().startsWith("Too small: Line 0.12 of 0.15 mm; "),
                editor.live().readoutAloud());
        assertFalse(editor.live().readoutAloud().contains("\u2713"), "a sign is read as it is");
    }
}
