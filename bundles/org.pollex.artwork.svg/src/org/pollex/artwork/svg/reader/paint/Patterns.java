/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.paint;

import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.FillRule;
import org.pollex.artwork.svg.reader.style.Property;
import org.pollex.artwork.svg.reader.style.Style;
import org.pollex.artwork.svg.reader.syntax.AspectRatio;
import org.pollex.artwork.svg.reader.syntax.Length;
import org.pollex.artwork.svg.reader.syntax.Transforms;
import org.pollex.artwork.svg.reader.syntax.ViewBox;
import org.pollex.artwork.svg.reader.tree.Node;

/** Patterns (SVG 2, section 13.3) as what they stand for: their shapes drawn once in each tile, cut by the area. */
final class Patterns {

    private static final double MOST_TILES = 40_000;

    private final Reading reading;

    Patterns(Reading reading) {
        this.reading = reading;
    }

    /**
     * What is to be covered.
     *
     * @param path     area
     * @param rule     its fill rule
     * @param place    takes the area to mm
     * @param sized    what objectBoundingBox units count in
     * @param opacity  opacity of the fill or stroke
     */
    record Covered(Path2D.Double path, FillRule rule, AffineTransform place, Path2D.Double sized, double opacity) {
    }

    void paint(Node pattern, Node user, Frame frame, Covered covered) throws ArtException {
        if (covered.opacity() <= 0) {
            return;
        }
        List<Node> chain = TakenOver.chain(reading, pattern, n -> n.name().equals("pattern"), () -> {
        });
        Node content = chain.stream().filter(n -> n.elementCount() > 0).findFirst().orElse(null);
        Rectangle2D box = TightBounds.of(covered.sized(), null).orElse(new Rectangle2D.Double());
        boolean boxed = !TakenOver.attribute(chain, "patternUnits").equals("userSpaceOnUse");
        boolean contentBoxed = TakenOver.attribute(chain, "patternContentUnits").equals("objectBoundingBox");
        if (content == null || (boxed || contentBoxed) && (!(box.getWidth() > 0) || !(box.getHeight() > 0))) {
            return;
        }
        Rectangle2D.Double tile = boxed
                ? new Rectangle2D.Double(box.getX() + number(chain, "x", 1) * box.getWidth(),
                        box.getY() + number(chain, "y", 1) * box.getHeight(),
                        number(chain, "width", 1) * box.getWidth(), number(chain, "height", 1) * box.getHeight())
                : new Rectangle2D.Double(number(chain, "x", frame.width()), number(chain, "y", frame.height()),
                        number(chain, "width", frame.width()), number(chain, "height", frame.height()));
        String transform = TakenOver.attribute(chain, "patternTransform");
        Frame space = frame.with(transform.isEmpty() ? new AffineTransform()
                : Transforms.parse(transform, frame.width(), frame.height(), 16).orElse(new AffineTransform()));
        if (!(tile.width > 0) || !(tile.height > 0) || space.ctm().getDeterminant() == 0) {
            return;
        }
        AffineTransform inner = new AffineTransform();
        Frame ported = space;
        Optional<ViewBox> view = ViewBox.parse(TakenOver.attribute(chain, "viewBox"));
        if (view.isPresent()) {
            String ratio = TakenOver.attribute(chain, "preserveAspectRatio");
            inner = AspectRatio.parse(ratio).fit(view.get(), 0, 0, tile.width,
                    tile.height);
            ported = space.port(view.get().width(), view.get().height());
        } else if (contentBoxed) {
            inner = AffineTransform.getScaleInstance(box.getWidth(), box.getHeight());
        }
        // The origin of the content is the corner of the tile.
        AffineTransform first = AffineTransform.getTranslateInstance(tile.x, tile.y);
        first.concatenate(inner);
        reading.painter().enter(content, user);
        tiles(content, user, ported, covered, tile, first);
        reading.painter().leave(content);
    }

    private void tiles(Node content, Node user, Frame frame, Covered covered, Rectangle2D.Double tile,
            AffineTransform first) throws ArtException {
        Style style = reading.styleOf(content);
        Clip area = Clip.of(new Path2D.Double(covered.path(), covered.place()), covered.rule());
        Rectangle2D range = range(frame, area, covered);
        if (range.isEmpty()) {
            return;
        }
        double left = Math.floor((range.getMinX() - tile.x) / tile.width);
        double right = Math.ceil((range.getMaxX() - tile.x) / tile.width);
        double top = Math.floor((range.getMinY() - tile.y) / tile.height);
        double bottom = Math.ceil((range.getMaxY() - tile.y) / tile.height);
        if (!((right - left) * (bottom - top) <= MOST_TILES)) {
            throw reading.budget().tooHeavy("a pattern has more than " + (int) MOST_TILES + " tiles");
        }
        String overflow = style.word(Property.OVERFLOW);
        boolean shows = overflow.equals("visible") || overflow.equals("auto");
        Frame cut = frame.cut(List.of(area)).under(user.label());
        int from = reading.output().size();
        for (double row = top; row < bottom; row++) {
            for (double column = left; column < right; column++) {
                reading.budget().element();
                Frame shifted = cut.with(AffineTransform.getTranslateInstance(column * tile.width,
                        row * tile.height));
                Frame placed = (shows ? shifted : shifted.cut(tile)).with(first);
                reading.painter().children(content, style, placed);
            }
        }
        if (covered.opacity() < 1) {
            if (Overlaps.any(reading.output().regions(), from, reading.budget())) {
                reading.notices().unsupported("opacity", user.label(), "parts of a pattern that overlap are made"
                        + " translucent one by one instead of together; give them lighter colours");
            }
            reading.output().fade(from, covered.opacity());
        }
    }

    /** Box of the visible part of the area in the space of the pattern. */
    private static Rectangle2D range(Frame frame, Clip area, Covered covered) {
        Rectangle2D mm = TightBounds.of(covered.path(), covered.place()).orElse(new Rectangle2D.Double());
        for (Clip clip : frame.clips()) {
            mm = mm.createIntersection(clip.bounds());
        }
        if (mm.isEmpty() || !area.bounds().intersects(mm)) {
            return new Rectangle2D.Double();
        }
        try {
            return frame.ctm().createInverse().createTransformedShape(mm).getBounds2D();
        } catch (NoninvertibleTransformException e) {
            return new Rectangle2D.Double();
        }
    }

    private static double number(List<Node> chain, String name, double full) {
        return Length.parse(TakenOver.attribute(chain, name)).map(l -> l.resolve(full, 16)).orElse(0.0);
    }
}
