/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.paint;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtSource;
import org.pollex.artwork.ReadLimits;
import org.pollex.artwork.svg.reader.css.SheetParser;
import org.pollex.artwork.svg.reader.limits.Budget;
import org.pollex.artwork.svg.reader.report.Notices;
import org.pollex.artwork.svg.reader.style.Cascade;
import org.pollex.artwork.svg.reader.style.Style;
import org.pollex.artwork.svg.reader.tree.Node;
import org.pollex.artwork.svg.reader.tree.Tree;
import org.pollex.artwork.svg.reader.tree.TreeReader;

/** One reading of one file: the parts that share its tree, styles, limits and results. */
public final class Reading {

    private final Tree tree;
    private final Budget budget;
    private final Notices notices = new Notices();
    private final Cascade cascade;
    private final Map<Node, Style> styles = new IdentityHashMap<>();
    private final Shapes shapes = new Shapes(notices);
    private final Placing placing = new Placing(this);
    private final Painter painter = new Painter(this);
    private final ShapePainter shapePainter = new ShapePainter(this);
    private final Paints paints = new Paints(this);
    private final Clips clips = new Clips(this);
    private final Masks masks = new Masks(this);
    private final Boxes boxes = new Boxes(this);
    private final Ports ports = new Ports(this);
    private final TextPainter texts = new TextPainter(this);
    private Output output;

    private Reading(Tree tree, Budget budget) throws ArtException {
        this.tree = tree;
        this.budget = budget;
        this.cascade = new Cascade(SheetParser.parse(tree.styles(), notices, budget), notices, budget);
        this.output = new Output(budget);
    }

    /** Reads a file. */
    public static Art read(ArtSource source, ReadLimits limits) throws ArtException {
        Budget budget = new Budget(source.name(), limits);
        return new Reading(TreeReader.read(source, limits), budget).run(source.name());
    }

    private Art run(String name) throws ArtException {
        Node root = tree.root();
        Style style = cascade.style(root, Style.initial());
        styles.put(root, style);
        Page page = Page.of(root, style, budget);
        painter.root(root, style, page);
        double width = page.width();
        double height = page.height();
        if (!page.known()) {
            Rectangle2D box = output.bounds().orElseThrow(() -> new ArtException(name,
                    "the art states no size and paints nothing that could be measured; give it a viewBox"));
            output.move(AffineTransform.getTranslateInstance(-box.getX(), -box.getY()));
            width = Page.check(box.getWidth(), budget);
            height = Page.check(box.getHeight(), budget);
        }
        return new Art(shortName(name), width, height, page.sized(), output.regions(), texts.list(), notices.list());
    }

    private static String shortName(String name) {
        int slash = Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\'));
        String last = name.substring(slash + 1);
        return last.isEmpty() ? name : last;
    }

    /** Style of an element that is drawn by reference: it inherits from where it stands in the file. */
    Style styleOf(Node node) throws ArtException {
        Style known = styles.get(node);
        if (known == null) {
            Optional<Node> parent = node.parent();
            known = cascade.style(node, parent.isEmpty() ? Style.initial() : styleOf(parent.get()));
            styles.put(node, known);
        }
        return known;
    }

    /** Draws into another output for a while. */
    Output swap(Output other) {
        Output before = output;
        output = other;
        return before;
    }

    Tree tree() {
        return tree;
    }

    Budget budget() {
        return budget;
    }

    Notices notices() {
        return notices;
    }

    Cascade cascade() {
        return cascade;
    }

    TextPainter texts() {
        return texts;
    }

    Shapes shapes() {
        return shapes;
    }

    Placing placing() {
        return placing;
    }

    Painter painter() {
        return painter;
    }

    ShapePainter shapePainter() {
        return shapePainter;
    }

    Paints paints() {
        return paints;
    }

    Clips clips() {
        return clips;
    }

    Masks masks() {
        return masks;
    }

    Boxes boxes() {
        return boxes;
    }

    Ports ports() {
        return ports;
    }

    Output output() {
        return output;
    }
}
