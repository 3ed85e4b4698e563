/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Listener;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.view.Scale;
import org.pollex.model.design.Design;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.model.store.ArtFile;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.Opened;

/**
 * How long one step of a gesture keeps the window's thread busy, with art of some ten thousand vertices. Run by hand,
 * in
 * the real product; asserts nothing, prints. Busy is all time that the thread spends on a step: the event, its
 * dispatch,
 * painting, and a round trip to the display at the end of the paint, so that drawing there counts. 140 steps, the first
 * 20 dropped.
 */
class GestureMeasure {

    private static final int STEPS = 140;
    private static final int DROPPED = 20;

    @TempDir
    Path folder;

    private Canvas canvas;
    private DesignEditor editor;
    private DesignSession session;

    /** Wavy rings one in another, each a closed path of many corners. */
    private static String art(int rings, int corners) {
        StringBuilder svg = new StringBuilder("<svg xmlns='http://www.w3.org/2000/svg' width='14mm' height='14mm' "
                + "viewBox='-70 -70 140 140'>");
        for (int ring = 0; ring < rings; ring++) {
            double radius = 12 + ring * 56.0 / rings;
            svg.append("<path fill='#1b3a5c' fill-rule='evenodd' d='");
            for (int edge = 0; edge < 2; edge++) {
                for (int i = 0; i < corners; i++) {
                    double angle = 2 * Math.PI * i / corners;
                    double r = radius + edge * 1.9 + 0.35 * Math.sin(angle * 24);
                    svg.append(i == 0 ? 'M' : 'L').append(String.format(Locale.ROOT, "%.3f %.3f", r * Math.cos(angle),
                            r * Math.sin(angle)));
                }
                svg.append('z');
            }
            svg.append("'/>");
        }
        return svg.append("</svg>").toString();
    }

    @Test
    void steps() throws Exception {
        Window.fill();
        Path file = Samples.ferry(folder, "measured");
        Path art = folder.resolve("rings.svg");
        Files.write(art, art(14, 400).getBytes(StandardCharsets.UTF_8));
        ArtFile adopted = ArtFiles.adopt(file, art);
        Opened<Design> opened = ModelFiles.DESIGNS.open(file);
        Placement placement = (Placement) opened.model().getSides().get(0).getLayers().get(0).getMarks().get(0);
        placement.setArt(adopted.path());
        placement.setSha256(adopted.sha256());
        ModelFiles.DESIGNS.save(opened);
        editor = (DesignEditor) Window.open(file);
        session = editor.getAdapter(DesignSession.class);
        Window.until("the print is there", session::fresh);
        Window.idle();
        canvas = (Canvas) editor.page().viewer().getControl();
        Listener roundTrip = event -> {
            Image pixel = new Image(event.display, 1, 1);
            event.gc.copyArea(pixel, event.x, event.y);
            pixel.getImageData();
            pixel.dispose();
        };
        canvas.addListener(SWT.Paint, roundTrip);
        int vertices = session.known().orElseThrow().printed().side("front").orElseThrow().printed().getNumPoints();
        System.out.println("MEASURE vertices " + vertices + ", canvas " + canvas.getSize());
        for (int percent : new int[] {300, 600, 1200}) {
            editor.page().root().getZoomManager().setZoom(percent / 100.0 * Scale.PX_UM);
            editor.page().reveal(new org.locationtech.jts.geom.Envelope(-40.0 / (percent / 300.0),
                    40.0 / (percent / 300.0), -15, 15));
            editor.page().root().getZoomManager().setZoom(percent / 100.0 * Scale.PX_UM);
            Window.idle();
            measure("move " + percent + " %", 0);
            measure("scale " + percent + " %", 1);
            measure("turn " + percent + " %", 2);
        }
        Window.closeEditors();
    }

    private Mark mark() {
        return session.design().getSides().get(0).getLayers().get(0).getMarks().get(0);
    }

    private void measure(String name, int kind) throws Exception {
        int[] middle = EditorTest.middle(editor, mark());
        editor.page().select(java.util.List.of(mark()));
        Window.idle();
        Rectangle box = ((GraphicalEditPart) editor.page().viewer().getEditPartRegistry().get(mark())).getFigure()
                .getBounds().getCopy();
        ((GraphicalEditPart) editor.page().viewer().getEditPartRegistry().get(mark())).getFigure()
                .translateToAbsolute(box);
        int x = kind == 0 ? middle[0] + 3 : kind == 1 ? box.right() : box.x + box.width / 2;
        int y = kind == 0 ? middle[1] + 3 : kind == 1 ? box.bottom() : box.y - 18;
        Window.mouse(canvas, SWT.MouseMove, x, y, 0, 0);
        Window.mouse(canvas, SWT.MouseDown, x, y, 1, 0);
        double[] busy = new double[STEPS - DROPPED];
        for (int step = 0; step < STEPS; step++) {
            int dx = (int) (30 * Math.sin(step * 0.15));
            int dy = (int) (20 * Math.sin(step * 0.11));
            long spent = System.nanoTime();
            Window.mouse(canvas, SWT.MouseMove, x + dx, y + (kind == 1 ? dx : dy), 0, SWT.BUTTON1);
            spent = System.nanoTime() - spent;
            long end = System.nanoTime() + 34_000_000;
            while (System.nanoTime() < end) {
                long before = System.nanoTime();
                boolean worked = Display.getCurrent().readAndDispatch();
                if (worked) {
                    spent += System.nanoTime() - before;
                } else {
                    Thread.sleep(1);
                }
            }
            if (step >= DROPPED) {
                busy[step - DROPPED] = spent / 1e6;
            }
        }
        Window.mouse(canvas, SWT.KeyDown, 0, 0, 0, 0);
        Window.mouse(canvas, SWT.MouseUp, x, y, 1, SWT.BUTTON1);
        Window.idle();
        Window.until("the print follows", session::fresh);
        Arrays.sort(busy);
        System.out.printf(Locale.ROOT, "MEASURE %-12s median %.1f ms, p95 %.1f ms, worst %.1f ms%n", name,
                busy[busy.length / 2], busy[(int) (busy.length * 0.95)], busy[busy.length - 1]);
    }
}
