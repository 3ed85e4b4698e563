/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.gate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.pollex.artwork.ArtNotice.Kind;

/**
 * Cleans style sheets inside the file and {@code style} attributes: escapes are resolved and comments dropped first,
 * so that nothing hides behind them; rules that load ({@code @import}, {@code @font-face}) go; references that leave
 * the file become {@code none}.
 */
final class SheetRules {

    private static final Pattern COMMENT = Pattern.compile("/\\*.*?(\\*/|$)", Pattern.DOTALL);
    private static final Pattern ESCAPE = Pattern.compile("\\\\(?:([0-9a-fA-F]{1,6})\\s?|(.))", Pattern.DOTALL);
    private static final Pattern URL = Pattern.compile("url\\(\\s*(['\"]?)(.*?)\\1\\s*\\)",
            Pattern.CASE_INSENSITIVE | Pattern.DOTALL);

    private final GateReport report;
    private final List<SheetReference> references = new ArrayList<>();

    SheetRules(GateReport report) {
        this.report = report;
    }

    /** Which elements may get a reference from a style sheet. */
    List<SheetReference> references() {
        return references;
    }

    void clean(SvgNode root) {
        for (SvgNode node : root.all()) {
            if (node.name().equals("style")) {
                String css = sheet(node, node.text());
                node.children().clear();
                node.children().add(css);
                references.addAll(SheetReference.in(css));
            }
            node.attributes().computeIfPresent("style", (k, v) -> value(node, unescaped(v)));
        }
    }

    /** A property value whose references stay in the file. */
    String value(SvgNode node, String value) {
        if (value.length() < 5 || value.indexOf('(') < 0) {
            return value;
        }
        Matcher m = URL.matcher(value);
        StringBuilder out = new StringBuilder();
        while (m.find()) {
            String target = m.group(2).strip();
            if (target.startsWith("#")) {
                m.appendReplacement(out, Matcher.quoteReplacement("url(" + target + ")"));
            } else {
                report.note(Kind.REFUSED, "url()", node, "a reference to " + GateReport.cut(target)
                        + " was left out, art reads no other file");
                m.appendReplacement(out, "none");
            }
        }
        m.appendTail(out);
        String lower = out.toString().toLowerCase(Locale.ROOT);
        if (lower.contains("image(") || lower.contains("image-set(") || lower.contains("src(")) {
            report.note(Kind.REFUSED, "image()", node, "a reference was left out, art reads no other file");
            return "";
        }
        return out.toString();
    }

    private String sheet(SvgNode node, String text) {
        String css = unescaped(text).replace("<!--", " ").replace("-->", " ");
        StringBuilder kept = new StringBuilder();
        int at = 0;
        while (at < css.length()) {
            int rule = css.indexOf('@', at);
            if (rule < 0) {
                kept.append(css, at, css.length());
                break;
            }
            kept.append(css, at, rule);
            at = endOfRule(css, rule);
            String name = css.substring(rule, Math.min(css.length(), rule + 40)).split("[\\s({;\"']", 2)[0];
            noteRule(node, name.toLowerCase(Locale.ROOT));
        }
        return value(node, kept.toString());
    }

    private void noteRule(SvgNode node, String name) {
        switch (name) {
            case "@charset", "@namespace" -> { }
            case "@import" -> report.note(Kind.REFUSED, name, node,
                    "a style sheet in another file was left out, art reads no other file");
            case "@keyframes", "@-webkit-keyframes" -> report.note(Kind.IGNORED, name, node,
                    "an animation was left out, print stands still");
            case "@font-face" -> report.note(Kind.REFUSED, name, node,
                    "a font that the file brings or points to is not used; convert text to paths");
            default -> report.note(Kind.UNSUPPORTED, GateReport.cut(name), node,
                    "the rules inside " + GateReport.cut(name) + " are not used");
        }
    }

    private static int endOfRule(String css, int from) {
        int level = 0;
        char quote = 0;
        for (int i = from; i < css.length(); i++) {
            char c = css.charAt(i);
            if (quote != 0) {
                quote = c == quote ? 0 : quote;
            } else if (c == '"' || c == '\'') {
                quote = c;
            } else if (c == '{') {
                level++;
            } else if (c == '}' && --level <= 0) {
                return i + 1;
            } else if (c == ';' && level == 0) {
                return i + 1;
            }
        }
        return css.length();
    }

    private static String unescaped(String css) {
        String plain = css.contains("/*") ? COMMENT.matcher(css).replaceAll(" ") : css;
        if (plain.indexOf('\\') < 0) {
            return plain;
        }
        return ESCAPE.matcher(plain).replaceAll(m -> {
            if (m.group(1) == null) {
                return Matcher.quoteReplacement(m.group(2));
            }
            int code = Integer.parseInt(m.group(1), 16);
            boolean sound = Character.isValidCodePoint(code) && code >= ' ' && !Character.isSurrogate((char) code);
            return sound ? Matcher.quoteReplacement(Character.toString(code)) : "";
        });
    }
}
