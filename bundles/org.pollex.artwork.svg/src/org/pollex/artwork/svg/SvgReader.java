/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtReader;
import org.pollex.artwork.ArtSource;
import org.pollex.artwork.ReadLimits;
import org.pollex.artwork.svg.reader.paint.Reading;
import org.pollex.artwork.weight.ArtWeight;

/**
 * Reads SVG files by itself: fast, in double precision, with arcs and strokes that keep to their true curves. It opens
 * nothing outside the bytes and runs nothing. What it cannot honour is named in a notice; what another reader may know
 * (documents with entities of their own, old text elements) is passed on.
 *
 * <p>A size counts as stated ({@link Art#sized()}) only in mm, cm, Q, in, pt or pc on the root element; one user unit
 * is 1/96 inch otherwise. Content outside the page is cut off. Text is drawn with the shipped fonts.
 */
public final class SvgReader implements ArtReader {

    private static final int HEAD = 4096;

    @Override
    public boolean recognises(ArtSource source) {
        byte[] bytes = source.bytes();
        Charset charset = StandardCharsets.ISO_8859_1;
        if (bytes.length > 1 && (bytes[0] & 255) == 0xfe && (bytes[1] & 255) == 0xff) {
            charset = StandardCharsets.UTF_16BE;
        } else if (bytes.length > 1 && (bytes[0] & 255) == 0xff && (bytes[1] & 255) == 0xfe) {
            charset = StandardCharsets.UTF_16LE;
        }
        String head = new String(bytes, 0, Math.min(bytes.length, HEAD), charset);
        int start = head.indexOf('<');
        if (start < 0 || !blank(head, start)) {
            return false;
        }
        return head.contains("<svg") || head.contains(":svg") || head.startsWith("<?xml", start)
                || head.startsWith("<!--", start) || head.startsWith("<!DOCTYPE svg", start);
    }

    /** Whether only white space and the mark of an encoding, in any of its readings, stand before a position. */
    private static boolean blank(String text, int end) {
        for (int i = 0; i < end; i++) {
            char c = text.charAt(i);
            if (!Character.isWhitespace(c) && "\uFEFF\u00EF\u00BB\u00BF".indexOf(c) < 0) {
                return false;
            }
        }
        return true;
    }

    @Override
    public Art read(ArtSource source, ReadLimits limits) throws ArtException {
        try {
            Art art = Reading.read(source, limits);
            ArtWeight.check(art, source.name());
            return art;
        } catch (StackOverflowError e) {
            throw new ArtException(source.name(),
                    "the art is nested too deeply to be read; ungroup it and export it again", e);
        }
    }
}
