/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.edit.ChooseMaterialCommand;
import org.pollex.editor.figure.SurfaceImage;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.side.SidePage;
import org.pollex.editor.view.Scale;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Layer;
import org.pollex.model.design.PlainShape;
import org.pollex.model.design.ShapeKind;
import org.pollex.model.design.Side;
import org.pollex.model.store.ModelFiles;
import org.pollex.output.picture.MaterialPicture;
import org.pollex.output.picture.PictureOptions;
import org.pollex.print.Printed;
import org.pollex.print.ShippedLettering;

/** On clear stock the drawing shows the print of the other side, in the colours of the picture of the item. */
class ShowsThroughTest {

    private static final int DPI = 254;
    /** Half of the side of the square that is compared, mm. */
    private static final double HALF = 0.6;
    /** Distance of the places that are compared, mm. */
    private static final double STEP = 0.1;

    @TempDir
    Path folder;

    private DesignEditor editor;
    private DesignSession session;

    @AfterEach
    void close() {
        Window.closeEditors();
    }

    private static void rectangle(Design design, String face, double x, double y, String ink) {
        Side side = DesignFactory.eINSTANCE.createSide();
        side.setName(face);
        Layer layer = DesignFactory.eINSTANCE.createLayer();
        PlainShape shape = DesignFactory.eINSTANCE.createPlainShape();
        shape.setKind(ShapeKind.RECTANGLE);
        shape.setWidth(6);
        shape.setHeight(6);
        shape.setX(x);
        shape.setY(y);
        shape.setInk(ink);
        layer.getMarks().add(shape);
        side.getLayers().add(layer);
        design.getSides().add(side);
    }

    /** Red on the front at -5..1 across, navy on the back at -5..1, which is -1..5 from the front; both -6..0 down. */
    private void open(String material) throws Exception {
        Design design = DesignFactory.eINSTANCE.createDesign();
        design.setProduct("standard-pick");
        design.setMaterial(material);
        design.setMethod("pad-spot");
        design.getInks().add("red");
        design.getInks().add("navy");
        rectangle(design, "front", -2, -3, "red");
        rectangle(design, "back", -2, -3, "navy");
        Path file = folder.resolve(material + ".design");
        ModelFiles.DESIGNS.create(design, file);
        Window.fill();
        editor = Window.design(file);
        session = editor.getAdapter(DesignSession.class);
        settled();
    }

    private void settled() {
        Window.until("it is printed", session::fresh);
        Window.until("the pattern is drawn", () -> Job.getJobManager().find(SurfaceImage.class).length == 0);
        Window.idle();
    }

    /** Mean colour of a square round a place of the front, as the drawing shows it. */
    private double[] drawn(ImageData shot, double x, double y) {
        SidePage page = editor.page();
        Point view = page.root().getZoomManager().getViewport().getViewLocation();
        double pixels = page.root().getZoomManager().getZoom() * Scale.UM;
        org.eclipse.swt.graphics.Point origin = page.viewer().getControl().toDisplay(0, 0);
        double[] sum = new double[3];
        int n = 0;
        for (double v = y - HALF; v <= y + HALF; v += STEP) {
            for (double u = x - HALF; u <= x + HALF; u += STEP) {
                RGB rgb = shot.palette.getRGB(shot.getPixel((int) Math.floor(origin.x + u * pixels - view.x),
                        (int) Math.floor(origin.y + v * pixels - view.y)));
                add(sum, rgb.red, rgb.green, rgb.blue);
                n++;
            }
        }
        return mean(sum, n);
    }

    /** The same in the picture of the item, its front left of its back. */
    private double[] pictured(double x, double y) {
        return pictured(session.known().orElseThrow().printed(), x, y);
    }

    private static double[] pictured(Printed printed, double x, double y) {
        PictureOptions options = PictureOptions.of(DPI);
        BufferedImage picture = MaterialPicture.of(printed, options);
        double scale = options.scale();
        double space = (picture.getWidth() - 2 * printed.item().width() * scale) / 3;
        double middleX = space + printed.item().width() * scale / 2;
        double top = printed.item().faces().get(0).area().getEnvelopeInternal().getMinY();
        double[] sum = new double[3];
        int n = 0;
        for (double v = y - HALF; v <= y + HALF; v += STEP) {
            for (double u = x - HALF; u <= x + HALF; u += STEP) {
                int rgb = picture.getRGB((int) (middleX + u * scale), (int) (space + (v - top) * scale));
                add(sum, rgb >> 16 & 0xff, rgb >> 8 & 0xff, rgb & 0xff);
                n++;
            }
        }
        return mean(sum, n);
    }

    private static void add(double[] sum, int red, int green, int blue) {
        sum[0] += red;
        sum[1] += green;
        sum[2] += blue;
    }

    private static double[] mean(double[] sum, int n) {
        return new double[] {sum[0] / n, sum[1] / n, sum[2] / n};
    }

    private void same(ImageData shot, String where, double x, double y, double most) {
        double[] one = drawn(shot, x, y);
        double[] other = pictured(x, y);
        for (int i = 0; i < 3; i++) {
            assertEquals(other[i], one[i], most, where + ", channel " + i);
        }
    }

    private static double distance(double[] one, double[] other) {
        return Math.hypot(Math.hypot(one[0] - other[0], one[1] - other[1]), one[2] - other[2]);
    }

    private static double darker(double[] one, double[] other) {
        return other[0] + other[1] + other[2] - one[0] - one[1] - one[2];
    }

    @Test
    void throughPlainStock() throws Exception {
        open("clear");
        ImageData shot = Picture.take(Window.display(), "through-clear");
        same(shot, "the stock alone", -3.5, 3, 2);
        same(shot, "red alone", -3.5, -3, 2);
        same(shot, "navy behind red", -0.2, -3, 2);
        same(shot, "navy behind the stock", 3, -3, 2);
        assertTrue(darker(drawn(shot, 3, -3), drawn(shot, -3.5, 3)) > 100, "nothing shows through");
        session.run(new ChooseMaterialCommand(session.design(), "solid-white"));
        settled();
        shot = Picture.take(Window.display(), "through-opaque");
        same(shot, "opaque stock", 3, -3, 2);
        same(shot, "opaque stock elsewhere", -3.5, 3, 2);
    }

    /** The pattern stays under what shows through; a picture with fewer pixels has the same mean. */
    @Test
    void throughPatternedStock() throws Exception {
        open("tortoise-brown");
        ImageData shot = Picture.take(Window.display(), "through-tortoise");
        same(shot, "the stock alone", -3.5, 3, 10);
        Design front = EcoreUtil.copy(session.design());
        front.getSides().remove(1);
        Printed alone = session.suite().printer(front, session.suite().artBeside(session.file()),
                new ShippedLettering()).print(front);
        double[] before = drawn(shot, 3, -3);
        double effect = distance(pictured(3, -3), pictured(alone, 3, -3));
        double error = distance(pictured(3, -3), before);
        assertTrue(effect > 10 && error < effect / 3, "what shows through changes the stock by " + effect
                + ", and is drawn off by " + error);
        session.run(new ChooseMaterialCommand(session.design(), "tortoise-red"));
        settled();
        session.history().undo();
        settled();
        assertEquals(0, darker(drawn(Picture.take(Window.display(), "through-undone"), 3, -3), before), 3);
    }
}
