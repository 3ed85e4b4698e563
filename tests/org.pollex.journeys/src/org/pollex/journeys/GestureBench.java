/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Listener;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.view.Scale;
import org.pollex.model.design.Mark;

/**
 * How long one step of a gesture keeps the window's thread busy, findings and repaint included, with art of more than
 * 10,000 corners of which every line is thin. Run by hand; no part of the daily tests, and its figures hold for the
 * machine they were made on. Busy is the event, its dispatch and the painting, up to an answer of the window system,
 * without the wait for the next frame.
 */
class GestureBench {

    private static final int STEPS = 140;
    private static final int WARMING = 20;
    private static final long LONGEST_NANOS = 200_000_000L;

    @TempDir
    Path folder;

    private DesignEditor editor;
    private Control canvas;
    private boolean painted;

    /** One step of a gesture: where the mouse is. */
    private interface Way {
        int[] at(int step);
    }

    @AfterEach
    void close() {
        Window.closeEditors();
    }

    @Test
    void stepsOfGestures() throws Exception {
        Window.fill();
        editor = (DesignEditor) Window.open(Samples.rings(folder, "rings"));
        DesignSession session = editor.getAdapter(DesignSession.class);
        Window.until("the first print is there", session::fresh);
        Window.idle();
        canvas = editor.page().viewer().getControl();
        Listener paint = event -> painted = true;
        canvas.addListener(SWT.Paint, paint);
        Mark mark = session.design().getSides().get(0).getLayers().get(0).getMarks().get(0);
        for (int percent : new int[] {100, 600, 1200, 3200}) {
            zoom(percent, mark);
            int[] middle = EditorTest.middle(editor, mark);
            int reach = percent < 300 ? 12 : 60;
            measure("move", percent, mark, middle, step -> new int[] {
                middle[0] + (int) (reach * Math.sin(step / 9.0)), middle[1] + (int) (reach * Math.sin(step / 7.0))});
            session.history().undo();
            Window.until("printed again", session::fresh);
            Rectangle box = box(mark);
            int grip = box.y - 18;
            if (grip > 0) {
                editor.page().select(java.util.List.of(mark));
                Window.idle();
                int across = box.x + box.width / 2;
                measure("turn", percent, mark, new int[] {across, grip}, step -> new int[] {across + step,
                    grip + step / 5});
                session.history().undo();
                Window.until("printed again", session::fresh);
            }
            if (new Rectangle(0, 0, canvas.getSize().x, canvas.getSize().y).contains(box.right(), box.bottom())) {
                editor.page().select(java.util.List.of(mark));
                Window.idle();
                int[] corner = {box.right(), box.bottom()};
                measure("scale", percent, mark, corner, step -> new int[] {
                    corner[0] - step * box.width / 500 - step % 2, corner[1] - step * box.height / 500 - step % 2});
                session.history().undo();
                Window.until("printed again", session::fresh);
            }
            Window.idle();
        }
        assertTrue(session.fresh());
    }

    private Rectangle box(Mark mark) {
        GraphicalEditPart part = (GraphicalEditPart) editor.page().viewer().getEditPartRegistry().get(mark);
        Rectangle box = part.getFigure().getBounds().getCopy();
        part.getFigure().translateToAbsolute(box);
        return box;
    }

    private void zoom(int percent, Mark mark) {
        editor.page().root().getZoomManager().setZoom(percent / 100.0 * Scale.PX_UM);
        Window.idle();
        int[] at = EditorTest.middle(editor, mark);
        org.eclipse.draw2d.geometry.Point view = editor.page().root().getZoomManager().getViewport().getViewLocation();
        editor.page().root().getZoomManager().setViewLocation(view.getTranslated(at[0] - canvas.getSize().x / 2,
                at[1] - canvas.getSize().y / 2));
        Window.idle();
    }

    private void measure(String gesture, int percent, Mark mark, int[] from, Way way) {
        Window.mouse(canvas, SWT.MouseMove, from[0], from[1], 0, 0);
        Window.mouse(canvas, SWT.MouseDown, from[0], from[1], 1, 0);
        Window.idle();
        double[] busy = new double[STEPS];
        double[] own = new double[STEPS];
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        int missed = 0;
        int most = 0;
        for (int step = 0; step < STEPS; step++) {
            int[] at = way.at(step + 1);
            painted = false;
            long begin = System.nanoTime();
            long work = threads.getCurrentThreadCpuTime();
            Window.mouse(canvas, SWT.MouseMove, at[0], at[1], 0, SWT.BUTTON1);
            long spent = System.nanoTime() - begin;
            boolean more = true;
            while ((more || !painted) && System.nanoTime() - begin < LONGEST_NANOS) {
                long turn = System.nanoTime();
                more = canvas.getDisplay().readAndDispatch();
                if (painted && !more) {
                    // an answer of the window system: what was drawn is drawn
                    canvas.getDisplay().getCursorLocation();
                }
                spent += System.nanoTime() - turn;
                if (!more && !painted) {
                    rest();
                }
            }
            missed += painted ? 0 : 1;
            most = Math.max(most, editor.live().marked());
            busy[step] = spent / 1e6;
            own[step] = (threads.getCurrentThreadCpuTime() - work) / 1e6;
        }
        int[] last = way.at(STEPS);
        Window.mouse(canvas, SWT.MouseUp, last[0], last[1], 1, SWT.BUTTON1);
        Window.idle();
        double[] kept = Arrays.copyOfRange(busy, WARMING, STEPS);
        double[] worked = Arrays.copyOfRange(own, WARMING, STEPS);
        Arrays.sort(kept);
        Arrays.sort(worked);
        System.out.printf(Locale.ROOT, "%s %d %% busy ms median %.1f p95 %.1f most %.1f; work of the thread median"
                + " %.1f p95 %.1f; places %d; unpainted %d; mark %d x %d px%n", gesture, percent,
                kept[kept.length / 2], kept[kept.length * 95 / 100], kept[kept.length - 1], worked[worked.length / 2],
                worked[worked.length * 95 / 100], most, missed, box(mark).width, box(mark).height);
    }

    private static void rest() {
        try {
            Thread.sleep(1);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
