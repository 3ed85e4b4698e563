/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.app.help;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The text of a page as it is shown, and where in it what is to look different. Of Markdown it knows headings, lists
 * by stars, bold words, links to other pages by their names, and pictures on lines of their own.
 *
 * @param plain  what is read
 * @param runs   in the order of the text, not overlapping
 */
public record HelpText(String plain, List<Run> runs) {

    /** What a part of the text is. */
    public enum Kind { TITLE, HEADING, BOLD, LINK, PICTURE }

    /**
     * A part that looks different.
     *
     * @param start   first character
     * @param length  characters; of a picture one, in whose place it stands
     * @param target  of a link the name of the page, of a picture that of its file; else empty
     * @param words   of a picture what it shows; else empty
     */
    public record Run(int start, int length, Kind kind, String target, String words) {
    }

    private static final Pattern PICTURE = Pattern.compile("!\\[([^]]*)]\\(([^)]+)\\)");
    private static final Pattern INLINE = Pattern.compile("\\*\\*(.+?)\\*\\*|\\[([^]]+)]\\(([^)]+)\\)");

    /** Reads a page. */
    public static HelpText of(String markdown) {
        StringBuilder plain = new StringBuilder();
        List<Run> runs = new ArrayList<>();
        markdown.lines().forEach(line -> line(line, plain, runs));
        return new HelpText(plain.toString(), List.copyOf(runs));
    }

    private static void line(String line, StringBuilder plain, List<Run> runs) {
        int start = plain.length();
        Matcher picture = PICTURE.matcher(line);
        if (line.startsWith("#")) {
            plain.append(line.replaceFirst("^#+ *", ""));
            runs.add(new Run(start, plain.length() - start, line.startsWith("##") ? Kind.HEADING : Kind.TITLE, "",
                    ""));
        } else if (picture.matches()) {
            plain.append('\uFFFC');
            runs.add(new Run(start, 1, Kind.PICTURE, picture.group(2), picture.group(1)));
        } else {
            inline(line.startsWith("* ") ? "  \u2022 " + line.substring(2) : line, plain, runs);
        }
        plain.append('\n');
    }

    private static void inline(String line, StringBuilder plain, List<Run> runs) {
        Matcher part = INLINE.matcher(line);
        int from = 0;
        while (part.find()) {
            plain.append(line, from, part.start());
            boolean bold = part.group(1) != null;
            String words = bold ? part.group(1) : part.group(2);
            runs.add(new Run(plain.length(), words.length(), bold ? Kind.BOLD : Kind.LINK,
                    bold ? "" : part.group(3), ""));
            plain.append(words);
            from = part.end();
        }
        plain.append(line, from, line.length());
    }

    /** The links in the order of the text. */
    public List<Run> links() {
        return runs.stream().filter(each -> each.kind() == Kind.LINK).toList();
    }
}
