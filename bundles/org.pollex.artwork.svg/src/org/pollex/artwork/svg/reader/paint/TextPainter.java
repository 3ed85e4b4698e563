/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.paint;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtText;
import org.pollex.artwork.font.ShippedFonts;
import org.pollex.artwork.svg.reader.style.Property;
import org.pollex.artwork.svg.reader.style.Style;
import org.pollex.artwork.svg.reader.text.TextContext;
import org.pollex.artwork.svg.reader.text.TextLayout;
import org.pollex.artwork.svg.reader.text.TextRun;
import org.pollex.artwork.svg.reader.tree.Node;

/** Paints text and keeps what its outlines no longer say. */
final class TextPainter {

    private final Reading reading;
    private final List<ArtText> list = new ArrayList<>();

    TextPainter(Reading reading) {
        this.reading = reading;
    }

    List<ArtText> list() {
        return list;
    }

    int count() {
        return list.size();
    }

    /** Forgets the texts after a number of them. */
    void cutTo(int count) {
        while (list.size() > count) {
            list.remove(list.size() - 1);
        }
    }

    private TextLayout layout(Node node, Style style, Frame frame) throws ArtException {
        return new TextLayout(node, style, new TextContext(reading.cascade(), reading.notices(), reading.budget(),
                ShippedFonts.standard(), frame.width(), frame.height(), rail -> rail(rail, frame)));
    }

    /** The path that text follows, in the user space of the text. */
    private Optional<Path2D.Double> rail(Node textPath, Frame frame) throws ArtException {
        Optional<Node> target = reading.painter().target(textPath, "textPath")
                .filter(n -> Shapes.isShape(n.name()));
        if (target.isEmpty()) {
            return Optional.empty();
        }
        Style style = reading.styleOf(target.get());
        Optional<Path2D.Double> path = reading.shapes().path(target.get(), style, frame);
        AffineTransform own = reading.placing().transform(target.get(), style, frame);
        return path.map(p -> new Path2D.Double(p, own));
    }

    void paint(Node node, Style style, Frame frame) throws ArtException {
        TextLayout layout = layout(node, style, frame);
        Path2D.Double cells = layout.cells();
        for (TextRun run : layout.runs()) {
            if (!run.style().visible()) {
                continue;
            }
            bars(run.below(), frame, cells);
            Output output = reading.output();
            int from = output.size();
            inner(node, run, frame, cells);
            int to = output.size();
            bars(run.above(), frame, cells);
            if (to > from) {
                remember(run, frame, from, to);
            }
        }
    }

    private void inner(Node text, TextRun run, Frame frame, Path2D.Double cells) throws ArtException {
        int from = reading.output().size();
        reading.shapePainter().paint(run.node(), run.style(), frame, run.path(), cells);
        double opacity = run.style().number(Property.OPACITY);
        if (run.node() != text && opacity < 1) {
            if (reading.output().size() - from > 1) {
                reading.notices().unsupported("opacity", run.node().label(), "fill and stroke of translucent text are"
                        + " made translucent one by one; give them a lighter colour instead");
            }
            reading.output().fade(from, opacity);
        }
    }

    private void bars(List<TextRun.Bar> bars, Frame frame, Path2D.Double cells) throws ArtException {
        for (TextRun.Bar bar : bars) {
            if (bar.style().visible()) {
                reading.shapePainter().paint(bar.node(), bar.style(), frame, bar.path(), cells);
            }
        }
    }

    private void remember(TextRun run, Frame frame, int from, int to) {
        AffineTransform m = frame.ctm();
        // Height of the image of a vertical unit over the image of the baseline.
        double scale = Math.abs(m.getDeterminant()) / Math.hypot(m.getScaleX(), m.getShearY());
        double size = run.style().fontSize() * scale;
        List<Integer> regions = new ArrayList<>();
        for (int i = from; i < to; i++) {
            regions.add(i);
        }
        if (size > 0 && Double.isFinite(size)) {
            list.add(new ArtText(run.text(), run.font().asked(), run.font().font().name(), size,
                    run.font().font().xHeight(size), regions));
        }
    }

    /** Outlines of the visible runs, for clip paths. */
    List<Path2D.Double> paths(Node node, Style style, Frame frame) throws ArtException {
        List<Path2D.Double> paths = new ArrayList<>();
        for (TextRun run : layout(node, style, frame).runs()) {
            if (run.style().visible()) {
                paths.add(run.path());
            }
        }
        return paths;
    }

    /** Cells of the letters, for the box of the text. */
    List<Path2D.Double> boxes(Node node, Style style, Frame frame) throws ArtException {
        return List.of(layout(node, style, frame).cells());
    }
}
