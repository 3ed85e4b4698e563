/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.retone;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.pollex.geometry.shape.Polygons;
import org.pollex.output.report.Decimal;

/** Writes areas as art: an SVG at its true size whose page has the origin in its middle. */
final class LightArt {

    private LightArt() {
    }

    /**
     * @param fills  area of each colour, #rrggbb, the later on top
     * @param note   what the art is, for whoever opens the file
     */
    static byte[] svg(Map<String, Geometry> fills, String note) {
        Envelope box = new Envelope();
        fills.values().forEach(area -> box.expandToInclude(area.getEnvelopeInternal()));
        double w = 2 * Math.max(1, Math.ceil(Math.max(-box.getMinX(), box.getMaxX())));
        double h = 2 * Math.max(1, Math.ceil(Math.max(-box.getMinY(), box.getMaxY())));
        StringBuilder text = new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"")
                .append(Decimal.of(w)).append("mm\" height=\"").append(Decimal.of(h)).append("mm\" viewBox=\"")
                .append(Decimal.of(-w / 2)).append(' ').append(Decimal.of(-h / 2)).append(' ').append(Decimal.of(w))
                .append(' ').append(Decimal.of(h)).append("\">\n<desc>").append(escaped(note)).append("</desc>\n");
        fills.forEach((colour, area) -> {
            text.append("<path fill-rule=\"evenodd\" fill=\"").append(colour).append("\" d=\"");
            for (Polygon part : Polygons.parts(area)) {
                ring(part.getExteriorRing(), text);
                for (int i = 0; i < part.getNumInteriorRing(); i++) {
                    ring(part.getInteriorRingN(i), text);
                }
            }
            text.append("\"/>\n");
        });
        return text.append("</svg>\n").toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void ring(LineString ring, StringBuilder text) {
        Coordinate[] corners = ring.getCoordinates();
        for (int i = 0; i + 1 < corners.length; i++) {
            text.append(i == 0 ? 'M' : 'L').append(Decimal.of(corners[i].x)).append(' ')
                    .append(Decimal.of(corners[i].y));
        }
        text.append("Z\n");
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;");
    }
}
