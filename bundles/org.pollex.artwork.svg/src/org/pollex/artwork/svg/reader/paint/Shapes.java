/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.paint;

import java.awt.geom.Path2D;
import java.util.Optional;
import org.pollex.artwork.svg.reader.report.Notices;
import org.pollex.artwork.svg.reader.style.Style;
import org.pollex.artwork.svg.reader.syntax.Arcs;
import org.pollex.artwork.svg.reader.syntax.Cursor;
import org.pollex.artwork.svg.reader.syntax.PathData;
import org.pollex.artwork.svg.reader.tree.Node;

/** The paths of the basic shapes (SVG 2, chapter 10) and of the path element. */
final class Shapes {

    private final Notices notices;

    Shapes(Notices notices) {
        this.notices = notices;
    }

    static boolean isShape(String name) {
        return switch (name) {
            case "path", "rect", "circle", "ellipse", "line", "polyline", "polygon" -> true;
            default -> false;
        };
    }

    /** Path in user space; empty when the shape is not drawn. */
    Optional<Path2D.Double> path(Node node, Style style, Frame frame) {
        Path2D.Double path = switch (node.name()) {
            case "path" -> data(node, style);
            case "rect" -> rect(node, style, frame);
            case "circle" -> circle(node, style, frame);
            case "ellipse" -> ellipse(node, style, frame);
            case "line" -> line(node, style, frame);
            case "polyline" -> points(node, false);
            case "polygon" -> points(node, true);
            default -> null;
        };
        return path == null || path.getCurrentPoint() == null ? Optional.empty() : Optional.of(path);
    }

    private Path2D.Double data(Node node, Style style) {
        PathData data = PathData.parse(style.geometry(node, "d"));
        if (data.error() >= 0 && !style.geometry(node, "d").strip().equals("none")) {
            notices.unsupported("d", node.label(), "the path has an error at character " + (data.error() + 1)
                    + " and is drawn up to there; open the art in a drawing program and export it again");
        }
        return data.path();
    }

    private static Path2D.Double circle(Node node, Style style, Frame frame) {
        double r = frame.other(style, node, "r", 0);
        Path2D.Double path = new Path2D.Double();
        if (r > 0) {
            Arcs.ellipse(path, frame.x(style, node, "cx", 0), frame.y(style, node, "cy", 0), r, r);
        }
        return path;
    }

    private static Path2D.Double ellipse(Node node, Style style, Frame frame) {
        double rx = frame.x(style, node, "rx", -1);
        double ry = frame.y(style, node, "ry", -1);
        rx = rx < 0 ? ry : rx;
        ry = ry < 0 ? rx : ry;
        Path2D.Double path = new Path2D.Double();
        if (rx > 0 && ry > 0) {
            Arcs.ellipse(path, frame.x(style, node, "cx", 0), frame.y(style, node, "cy", 0), rx, ry);
        }
        return path;
    }

    private static Path2D.Double rect(Node node, Style style, Frame frame) {
        Path2D.Double path = new Path2D.Double();
        double x = frame.x(style, node, "x", 0);
        double y = frame.y(style, node, "y", 0);
        double w = frame.x(style, node, "width", 0);
        double h = frame.y(style, node, "height", 0);
        if (!(w > 0) || !(h > 0)) {
            return path;
        }
        double rx = frame.x(style, node, "rx", -1);
        double ry = frame.y(style, node, "ry", -1);
        rx = rx < 0 ? ry : rx;
        ry = ry < 0 ? rx : ry;
        rx = Math.min(Math.max(0, rx), w / 2);
        ry = Math.min(Math.max(0, ry), h / 2);
        double r = x + w;
        double b = y + h;
        if (!(rx > 0) || !(ry > 0)) {
            path.moveTo(x, y);
            path.lineTo(r, y);
            path.lineTo(r, b);
            path.lineTo(x, b);
        } else {
            path.moveTo(x + rx, y);
            to(path, r - rx, y);
            Arcs.quarter(path, r - rx, y + ry, rx, ry, 3, r, y + ry);
            to(path, r, b - ry);
            Arcs.quarter(path, r - rx, b - ry, rx, ry, 0, r - rx, b);
            to(path, x + rx, b);
            Arcs.quarter(path, x + rx, b - ry, rx, ry, 1, x, b - ry);
            to(path, x, y + ry);
            Arcs.quarter(path, x + rx, y + ry, rx, ry, 2, x + rx, y);
        }
        path.closePath();
        return path;
    }

    private static void to(Path2D.Double path, double x, double y) {
        if (Math.abs(path.getCurrentPoint().getX() - x) + Math.abs(path.getCurrentPoint().getY() - y) > 0) {
            path.lineTo(x, y);
        }
    }

    private static Path2D.Double line(Node node, Style style, Frame frame) {
        Path2D.Double path = new Path2D.Double();
        path.moveTo(frame.x(style, node, "x1", 0), frame.y(style, node, "y1", 0));
        path.lineTo(frame.x(style, node, "x2", 0), frame.y(style, node, "y2", 0));
        return path;
    }

    private Path2D.Double points(Node node, boolean close) {
        Path2D.Double path = new Path2D.Double();
        Cursor c = new Cursor(node.attribute("points"));
        c.spaces();
        boolean broken = false;
        while (!c.done() && !broken) {
            broken = !c.number();
            double x = c.value();
            c.comma();
            broken = broken || !c.number() || !Double.isFinite(x + c.value());
            if (!broken) {
                if (path.getCurrentPoint() == null) {
                    path.moveTo(x, c.value());
                } else {
                    path.lineTo(x, c.value());
                }
                c.comma();
            }
        }
        if (broken) {
            notices.unsupported("points", node.label(), "the list of points has an error at character " + (c.at() + 1)
                    + " and is drawn up to there; open the art in a drawing program and export it again");
        }
        if (close && path.getCurrentPoint() != null) {
            path.closePath();
        }
        return path;
    }
}
