/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.gate;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.zip.GZIPInputStream;

import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtSource;
import org.pollex.artwork.ReadLimits;

/** Unpacks a compressed SVG, never to more bytes than a plain file may have. */
final class Unpacking {

    private Unpacking() {
    }

    static boolean isPacked(byte[] bytes) {
        return bytes.length > 2 && (bytes[0] & 0xff) == 0x1f && (bytes[1] & 0xff) == 0x8b;
    }

    static byte[] plain(ArtSource source, ReadLimits limits) throws ArtException {
        byte[] bytes = source.bytes();
        if (bytes.length > limits.bytes()) {
            throw new ArtException(source.name(), "the file has " + bytes.length + " bytes, more than the "
                    + limits.bytes() + " that art may have; simplify the art and export it again");
        }
        if (!isPacked(bytes)) {
            return bytes;
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        byte[] block = new byte[1 << 16];
        try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(bytes))) {
            for (int n = in.read(block); n >= 0; n = in.read(block)) {
                if (out.size() + n > limits.bytes()) {
                    throw new ArtException(source.name(), "unpacked, the file has more than the " + limits.bytes()
                            + " bytes that art may have; simplify the art and export it again");
                }
                out.write(block, 0, n);
            }
        } catch (IOException e) {
            throw new ArtException(source.name(),
                    "the compressed file is damaged; ask for it again as a plain .svg file", e);
        }
        return out.toByteArray();
    }
}
