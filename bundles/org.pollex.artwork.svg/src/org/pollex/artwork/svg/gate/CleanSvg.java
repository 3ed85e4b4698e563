/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.gate;

import java.nio.charset.StandardCharsets;
import java.util.List;

import org.pollex.artwork.ArtNotice;

/**
 * SVG that passed the gate.
 *
 * @param root     its tree, without anything that reaches outside the file
 * @param notices  what was taken out
 */
public record CleanSvg(SvgNode root, List<ArtNotice> notices) {

    public CleanSvg {
        notices = List.copyOf(notices);
    }

    /** The tree as UTF-8 XML without document type, entities or processing instructions. */
    public byte[] bytes() {
        StringBuilder xml = new StringBuilder(4096);
        xml.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        write(root, xml, true);
        return xml.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void write(SvgNode node, StringBuilder xml, boolean top) {
        xml.append('<').append(node.name());
        if (top) {
            xml.append(" xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\"");
        }
        node.attributes().forEach((key, value) -> {
            xml.append(' ').append(key.equals("href") ? "xlink:href" : key).append("=\"");
            escape(value, xml, true);
            xml.append('"');
        });
        if (node.children().isEmpty()) {
            xml.append("/>");
            return;
        }
        xml.append('>');
        for (Object child : node.children()) {
            if (child instanceof SvgNode inner) {
                write(inner, xml, false);
            } else {
                escape((String) child, xml, false);
            }
        }
        xml.append("</").append(node.name()).append('>');
    }

    private static void escape(String text, StringBuilder xml, boolean attribute) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '<' -> xml.append("&lt;");
                case '>' -> xml.append("&gt;");
                case '&' -> xml.append("&amp;");
                case '"' -> xml.append(attribute ? "&quot;" : "\"");
                case '\n', '\t', '\r' -> {
                    if (attribute) {
                        xml.append("&#").append((int) c).append(';');
                    } else {
                        xml.append(c);
                    }
                }
                default -> xml.append(c);
            }
        }
    }
}
