/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.css;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.svg.reader.limits.Budget;
import org.pollex.artwork.svg.reader.report.Notices;
import org.pollex.artwork.svg.reader.tree.Node;

/**
 * Reads style elements. Rules for the screen and for all media apply, since the client approved the art on a screen;
 * rules for print, for dark screens and for window sizes do not.
 */
public final class SheetParser {

    private static final int MOST_RULES = 20_000;

    private final Notices notices;
    private final Budget budget;
    private final List<StyleSheet.Rule> rules = new ArrayList<>();
    private String element = "";

    private SheetParser(Notices notices, Budget budget) {
        this.notices = notices;
        this.budget = budget;
    }

    /** The sheet of all style elements, in their order. */
    public static StyleSheet parse(List<Node> styles, Notices notices, Budget budget) throws ArtException {
        SheetParser parser = new SheetParser(notices, budget);
        for (Node style : styles) {
            String type = style.attribute("type").strip();
            parser.element = style.label();
            if (type.isEmpty() || type.equalsIgnoreCase("text/css")) {
                if (parser.applies(style.attribute("media"))) {
                    parser.rules(style.allText().replace("<!--", "").replace("-->", ""), 0);
                }
            } else {
                notices.unsupported("style type", style.label(), "a style sheet in the language \"" + Notices.cut(type)
                        + "\" is not read; use CSS");
            }
        }
        return new StyleSheet(parser.rules);
    }

    private void rules(String text, int depth) throws ArtException {
        CssText css = new CssText(text);
        while (true) {
            css.spaces();
            if (css.done()) {
                return;
            }
            String head = css.until("{;}").strip();
            char stop = css.take();
            if (stop == '{') {
                String block = css.block();
                if (head.startsWith("@")) {
                    atBlock(head, block, depth);
                } else {
                    rule(head, block);
                }
            } else if (stop == ';' && head.startsWith("@import")) {
                notices.refused("@import", element, "a style sheet of another file is not opened; put it into the art");
            }
        }
    }

    private void rule(String head, String block) throws ArtException {
        List<Declaration> declarations = Declaration.list(block);
        CssText list = new CssText(head);
        while (!list.done()) {
            String one = list.until(",");
            list.take();
            var selector = SelectorParser.parse(one);
            if (selector.isPresent()) {
                if (rules.size() >= MOST_RULES) {
                    throw budget.tooHeavy("the style sheet has more than " + MOST_RULES + " rules");
                }
                budget.effort(10);
                rules.add(new StyleSheet.Rule(selector.get(), declarations));
            } else if (!one.contains("::")) {
                notices.unsupported("CSS selector", element, "the selector \"" + Notices.cut(one)
                        + "\" is not known, so its style is not applied; give the style to the elements themselves");
            }
        }
    }

    private void atBlock(String head, String block, int depth) throws ArtException {
        String name = head.split("[\\s(]", 2)[0].toLowerCase(Locale.ROOT);
        String rest = head.substring(name.length()).strip();
        switch (name) {
            case "@media" -> {
                if (depth < 8 && applies(rest)) {
                    rules(block, depth + 1);
                }
            }
            case "@layer", "@supports", "@container", "@scope" -> notices.unsupported(name, element,
                    "rules inside " + name + " are not applied; write them without it");
            case "@font-face" -> {
                if (block.contains("url(")) {
                    notices.refused("@font-face", element,
                            "fonts that the art brings along are not loaded; convert the text to paths");
                }
            }
            case "@keyframes", "@-webkit-keyframes" -> notices.ignored("animation", element,
                    "an animation has no meaning in print and is left out");
            default -> {
            }
        }
    }

    private boolean applies(String media) {
        String all = media.strip().toLowerCase(Locale.ROOT);
        if (all.isEmpty()) {
            return true;
        }
        boolean any = false;
        for (String query : all.split(",")) {
            String q = query.strip();
            if (q.equals("all") || q.equals("screen") || q.equals("only screen")
                    || q.equals("(prefers-color-scheme: light)") || q.equals("(prefers-color-scheme:light)")) {
                any = true;
            } else if (q.equals("print")) {
                notices.ignored("@media", element,
                        "style for print is left out: the art is taken as the screen shows it");
            } else if (!q.contains("prefers-") && !q.equals("not all")) {
                notices.unsupported("@media", element, "the condition \"" + Notices.cut(q)
                        + "\" is not known, so its style is not applied; write the style without it");
            }
        }
        return any;
    }
}
