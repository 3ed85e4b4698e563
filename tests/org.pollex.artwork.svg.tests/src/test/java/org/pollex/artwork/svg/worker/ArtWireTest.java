/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.worker;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.geom.Path2D;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtNotice;
import org.pollex.artwork.ArtPaint;
import org.pollex.artwork.ArtPath;
import org.pollex.artwork.ArtRegion;
import org.pollex.artwork.ArtText;
import org.pollex.artwork.FillRule;

/** Art comes back from its bytes as it was. */
class ArtWireTest {

    private static byte[] bytes(Art art) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ArtWire.write(art, new DataOutputStream(out));
        return out.toByteArray();
    }

    private static Art sample() {
        Path2D.Double path = new Path2D.Double();
        path.moveTo(1.0 / 3, -2);
        path.lineTo(4, 5e-9);
        path.quadTo(1, 2, 3, 4);
        path.curveTo(1, 2, 3, 4, 5, Math.PI);
        path.closePath();
        ArtPath odd = ArtPath.of(path, FillRule.EVEN_ODD);
        ArtPath even = ArtPath.of(path, FillRule.NON_ZERO);
        ArtPaint gradient = new ArtPaint.Gradient(0x123456, 0.25, true, List.of(1.0, 2.0, 3.0, 0.0),
                List.of(new ArtPaint.Stop(0, 0xff0000, 1), new ArtPaint.Stop(0.5, 0x00ff00, 0.5)));
        ArtPaint raster = new ArtPaint.Raster(0x808080, 1, 2, 1, new int[] {0xff112233, 0x80445566},
                List.of(1.0, 0.0, 0.0, 1.0, 5.0, 6.0));
        return new Art("Gr\u00fc\u00dfe.svg", 26, 31.5, true,
                List.of(new ArtRegion("a", odd, new ArtPaint.Flat(0xabcdef, 0.5), List.of(), false),
                        new ArtRegion("b", even, gradient, List.of(odd, even), true),
                        new ArtRegion("c", even, raster, List.of(), false)),
                List.of(new ArtText("Ferry", "Fancy", "Liberation Sans", 3, 1.5, List.of(0, 2))),
                List.of(new ArtNotice(ArtNotice.Kind.FONT_REPLACED, "Fancy", "t", "t: stands in.")));
    }

    @Test
    void everythingComesBack() throws IOException {
        Art art = sample();
        byte[] bytes = bytes(art);
        Art back = ArtWire.read(new DataInputStream(new ByteArrayInputStream(bytes)));
        assertArrayEquals(bytes, bytes(back));
        assertEquals(art.name(), back.name());
        assertEquals(art.texts(), back.texts());
        assertEquals(art.notices(), back.notices());
        assertEquals(art.regions().get(1).paint(), back.regions().get(1).paint());
        assertEquals(FillRule.EVEN_ODD, back.regions().get(0).path().rule());
        assertEquals(2, back.regions().get(1).clips().size());
        assertArrayEquals(((ArtPaint.Raster) art.regions().get(2).paint()).pixels(),
                ((ArtPaint.Raster) back.regions().get(2).paint()).pixels());
    }
}
