/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

/** Says what a file that no reader takes seems to be, and what to do about it. */
final class UnknownFile {

    private UnknownFile() {
    }

    /** Reason and cure, without the name of the file. */
    static String reason(ArtSource source, List<String> readable) {
        String kinds = readable.isEmpty() ? "none" : String.join(", ", readable).toUpperCase(Locale.ROOT);
        String is = kind(source.bytes());
        String ending = ending(source.name());
        if (is != null) {
            String though = readable.contains(ending) ? " though its name ends with ." + ending : "";
            return "this is " + is + though + ", and art is read from these kinds of file: " + kinds
                    + "; ask the client for one of them";
        }
        if (readable.contains(ending)) {
            return "the name ends with ." + ending + " but the content is something else; ask the client to export it"
                    + " again as " + ending.toUpperCase(Locale.ROOT);
        }
        return "this is no kind of art that can be read; ask the client for one of these: " + kinds;
    }

    private static String ending(String name) {
        int dot = name.lastIndexOf('.');
        return dot < 0 ? "" : name.substring(dot + 1).toLowerCase(Locale.ROOT);
    }

    private static String kind(byte[] bytes) {
        String head = new String(bytes, 0, Math.min(bytes.length, 512), StandardCharsets.ISO_8859_1);
        if (head.startsWith("\u0089PNG")) {
            return "a PNG picture";
        }
        if (head.startsWith("\u00ff\u00d8\u00ff")) {
            return "a JPEG picture";
        }
        if (head.startsWith("GIF8")) {
            return "a GIF picture";
        }
        if (head.startsWith("RIFF") && head.startsWith("WEBP", 8)) {
            return "a WebP picture";
        }
        if (head.startsWith("%PDF")) {
            return "a PDF document";
        }
        if (head.startsWith("%!PS")) {
            return "a PostScript document";
        }
        if (head.startsWith("\u001f\u008b")) {
            return "a packed file (gzip)";
        }
        if (head.startsWith("PK\u0003\u0004")) {
            return "a packed file (zip)";
        }
        if (head.toLowerCase(Locale.ROOT).contains("<html")) {
            return "a web page";
        }
        return head.indexOf('\0') >= 0 ? "a binary file" : null;
    }
}
