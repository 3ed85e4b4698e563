/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.page;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines that fit a width. */
public final class Words {

    private static final String MORE = "\u2026";

    private Words() {
    }

    /**
     * Lines of at most a width; breaks between words, within a word only where it is longer than a line. Text that
     * needs more lines ends in an ellipsis.
     *
     * @param points  size of type
     * @param width   mm, above 0
     * @param most    most lines, at least 1
     */
    public static List<String> lines(PageFont font, double points, String text, double width, int most) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+")) {
            String rest = word;
            if (line.length() > 0 && font.width(line + " " + rest, points) <= width) {
                line.append(' ').append(rest);
                continue;
            }
            if (line.length() > 0) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (font.width(rest, points) > width && rest.codePointCount(0, rest.length()) > 1) {
                int cut = fitting(font, points, rest, width);
                lines.add(rest.substring(0, cut));
                rest = rest.substring(cut);
            }
            line.append(rest);
        }
        lines.add(line.toString());
        if (lines.size() > most) {
            String last = lines.get(most - 1) + " " + lines.get(most);
            lines = new ArrayList<>(lines.subList(0, most));
            lines.set(most - 1, shortened(font, points, last, width));
        }
        return lines;
    }

    /** The text on one line of a width, cut with an ellipsis when it is longer. */
    public static String fitted(PageFont font, double points, String text, double width) {
        return font.width(text, points) <= width ? text : shortened(font, points, text, width);
    }

    private static String shortened(PageFont font, double points, String text, double width) {
        double room = width - font.width(MORE, points);
        return text.substring(0, fitting(font, points, text, room)).stripTrailing() + MORE;
    }

    private static int fitting(PageFont font, double points, String text, double width) {
        int end = text.offsetByCodePoints(0, 1);
        double used = font.width(text.substring(0, end), points);
        while (end < text.length()) {
            int next = text.offsetByCodePoints(end, 1);
            used += font.width(text.substring(end, next), points);
            if (used > width) {
                break;
            }
            end = next;
        }
        return end;
    }
}
