/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.proof;

import java.awt.geom.GeneralPath;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** Collects the bounding boxes, in mm, of every path that a page draws. */
final class DrawnBoxes extends PDFGraphicsStreamEngine {

    private static final double POINT = 25.4 / 72;

    private final List<Rectangle2D> fills = new ArrayList<>();
    private final List<Rectangle2D> strokes = new ArrayList<>();
    private GeneralPath path = new GeneralPath();

    DrawnBoxes(PDPage page) {
        super(page);
    }

    boolean has(double width, double height) {
        return fills.stream().anyMatch(box -> Math.abs(box.getWidth() - width) < 0.02
                && Math.abs(box.getHeight() - height) < 0.02);
    }

    boolean hasLine(double length) {
        return strokes.stream().anyMatch(box -> Math.abs(box.getWidth() - length) < 0.001 && box.getHeight() < 4);
    }

    List<Rectangle2D> fillsBeyond(double width, double height) {
        Rectangle2D page = new Rectangle2D.Double(0, 0, width, height);
        return fills.stream().filter(box -> !page.contains(box)).toList();
    }

    private static Rectangle2D mm(Rectangle2D box) {
        return new Rectangle2D.Double(box.getX() * POINT, box.getY() * POINT, box.getWidth() * POINT,
                box.getHeight() * POINT);
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        throw new UnsupportedOperationException("The page draws no rectangles by themselves.");
    }

    @Override
    public void drawImage(PDImage image) {
        Rectangle2D box = new Rectangle2D.Double(0, 0, 1, 1);
        fills.add(mm(getGraphicsState().getCurrentTransformationMatrix().createAffineTransform()
                .createTransformedShape(box).getBounds2D()));
    }

    @Override
    public void clip(int windingRule) {
        path = new GeneralPath();
    }

    @Override
    public void moveTo(float x, float y) {
        path.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        path.lineTo(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        path.curveTo(x1, y1, x2, y2, x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
        return path.getCurrentPoint();
    }

    @Override
    public void closePath() {
        path.closePath();
    }

    @Override
    public void endPath() {
        path = new GeneralPath();
    }

    @Override
    public void strokePath() {
        strokes.add(mm(path.getBounds2D()));
        path = new GeneralPath();
    }

    @Override
    public void fillPath(int windingRule) {
        fills.add(mm(path.getBounds2D()));
        path = new GeneralPath();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        fillPath(windingRule);
    }

    @Override
    public void shadingFill(COSName name) {
        throw new UnsupportedOperationException("The page draws no shadings.");
    }
}
