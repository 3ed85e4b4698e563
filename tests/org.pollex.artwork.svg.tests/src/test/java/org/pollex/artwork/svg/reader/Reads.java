/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.fail;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.TreeMap;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtNotice;
import org.pollex.artwork.ArtPath;
import org.pollex.artwork.ArtRegion;
import org.pollex.artwork.ArtSource;
import org.pollex.artwork.ReadLimits;
import org.pollex.artwork.svg.SvgReader;

/** Reads SVG text and measures what comes out. */
public final class Reads {

    /** A page of 100 mm x 100 mm whose user unit is 1 mm. */
    public static final String PAGE = "<svg xmlns='http://www.w3.org/2000/svg'"
            + " xmlns:xlink='http://www.w3.org/1999/xlink'"
            + " width='100mm' height='100mm' viewBox='0 0 100 100'>";

    private Reads() {
    }

    /** Art of a whole file. */
    public static Art file(String svg) {
        try {
            return new SvgReader().read(new ArtSource("art.svg", svg.getBytes(StandardCharsets.UTF_8)),
                    ReadLimits.usual());
        } catch (ArtException e) {
            return fail(e);
        }
    }

    /** Art of what stands inside the page of 100 mm. */
    public static Art page(String inside) {
        return file(PAGE + inside + "</svg>");
    }

    /** The sentence with which what stands inside the page is refused. */
    public static String refusal(String inside) {
        return assertThrows(ArtException.class, () -> new SvgReader().read(new ArtSource("art.svg",
                (PAGE + inside + "</svg>").getBytes(StandardCharsets.UTF_8)), ReadLimits.usual())).getMessage();
    }

    /** Colours of all regions, lowest first. */
    public static List<String> colours(Art art) {
        return art.regions().stream().map(r -> String.format("%06x", r.paint().rgb())).toList();
    }

    /** The notices as {@code KIND feature element}. */
    public static List<String> notices(Art art) {
        return art.notices().stream().map(n -> n.kind() + " " + n.feature() + " " + n.element()).toList();
    }

    /** Whether a notice of the kind names the feature at the element. */
    public static boolean names(Art art, ArtNotice.Kind kind, String feature, String element) {
        return art.notices().stream().anyMatch(n -> n.kind() == kind && n.feature().equals(feature)
                && n.element().equals(element) && n.message().startsWith(element + ": ")
                && n.message().endsWith("."));
    }

    /** Box of a region with curves taken closely. */
    public static Rectangle2D box(ArtRegion region) {
        Rectangle2D box = null;
        for (double[] ring : region.path().rings(null, 1e-5)) {
            for (int i = 0; i < ring.length; i += 2) {
                Rectangle2D point = new Rectangle2D.Double(ring[i], ring[i + 1], 0, 0);
                box = box == null ? point : box.createUnion(point);
            }
        }
        return box;
    }

    /** Whether a point is painted by the region. */
    public static boolean paints(ArtRegion region, double x, double y) {
        return region.path().shape().contains(x, y)
                && region.clips().stream().allMatch(c -> c.shape().contains(x, y));
    }

    /** Area of a region by sampling rows exactly: each row sums the spans inside, rows n to the height of the box. */
    public static double area(ArtPath path, int rows) {
        Rectangle2D box = path.bounds();
        double step = box.getHeight() / rows;
        List<double[]> rings = path.rings(null, Math.max(box.getWidth(), box.getHeight()) * 1e-7);
        double sum = 0;
        for (int row = 0; row < rows; row++) {
            sum += spans(rings, box.getMinY() + (row + 0.5) * step, path.shape()) * step;
        }
        return sum;
    }

    private static double spans(List<double[]> rings, double y, Path2D.Double path) {
        TreeMap<Double, Integer> hits = new TreeMap<>();
        for (double[] ring : rings) {
            for (int i = 0; i < ring.length; i += 2) {
                int k = (i + 2) % ring.length;
                double y0 = ring[i + 1];
                double y1 = ring[k + 1];
                if (y0 <= y != y1 <= y) {
                    double x = ring[i] + (y - y0) / (y1 - y0) * (ring[k] - ring[i]);
                    hits.merge(x, y0 <= y ? 1 : -1, Integer::sum);
                }
            }
        }
        boolean evenOdd = path.getWindingRule() == PathIterator.WIND_EVEN_ODD;
        double sum = 0;
        int winding = 0;
        double from = 0;
        for (var hit : hits.entrySet()) {
            boolean inside = evenOdd ? winding % 2 != 0 : winding != 0;
            sum += inside ? hit.getKey() - from : 0;
            winding += hit.getValue();
            from = hit.getKey();
        }
        return sum;
    }
}
