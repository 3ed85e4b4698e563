/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.gate;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.util.Base64;

import org.pollex.artwork.ArtException;
import org.pollex.artwork.ReadLimits;

/**
 * Reads the size that a PNG or JPEG picture claims, from its header alone, so that none is decoded that would not fit.
 * PNG: W3C Recommendation "Portable Network Graphics", IHDR; JPEG: ITU-T T.81, frame header.
 */
final class EmbeddedPicture {

    private EmbeddedPicture() {
    }

    static void check(SvgNode node, String href, ReadLimits limits, GateReport report) throws ArtException {
        long pixels;
        try {
            byte[] bytes = Base64.getMimeDecoder().decode(href.substring(href.indexOf(',') + 1));
            pixels = pixels(bytes);
        } catch (IOException | IllegalArgumentException e) {
            throw report.refusal("the picture in " + node.where() + " is damaged; place it again and export the art");
        }
        if (pixels > limits.pixels()) {
            throw report.refusal("the picture in " + node.where() + " has " + pixels + " pixels, more than the "
                    + limits.pixels() + " that art may have; place a smaller picture");
        }
    }

    private static long pixels(byte[] bytes) throws IOException {
        DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes));
        int start = in.readUnsignedShort();
        if (start == 0x8950) {
            in.skipBytes(14);
            return Math.multiplyExact(in.readInt() & 0x7fffffffL, in.readInt() & 0x7fffffffL);
        }
        if (start != 0xffd8) {
            throw new IOException("neither PNG nor JPEG");
        }
        while (true) {
            int marker = in.readUnsignedShort();
            int length = in.readUnsignedShort();
            boolean frame = marker >= 0xffc0 && marker <= 0xffcf && marker != 0xffc4 && marker != 0xffc8
                    && marker != 0xffcc;
            if (frame) {
                in.readUnsignedByte();
                return (long) in.readUnsignedShort() * in.readUnsignedShort();
            }
            if (marker < 0xff01 || length < 2) {
                throw new IOException("no frame header");
            }
            in.skipBytes(length - 2);
        }
    }
}
