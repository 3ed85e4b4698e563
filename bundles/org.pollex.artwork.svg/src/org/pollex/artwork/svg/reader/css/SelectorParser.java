/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.css;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pollex.artwork.svg.reader.tree.Node;

/** Reads one selector. What it does not know makes the whole selector unknown; it then matches nothing. */
final class SelectorParser {

    private final String text;
    private int at;
    private int specificity;

    private SelectorParser(String text) {
        this.text = text.strip();
    }

    static Optional<Selector> parse(String text) {
        return new SelectorParser(text).run();
    }

    private Optional<Selector> run() {
        List<Compound> compounds = new ArrayList<>();
        List<Character> combinators = new ArrayList<>();
        char combinator = ' ';
        while (true) {
            Compound compound = compound();
            if (compound == null) {
                return Optional.empty();
            }
            compounds.add(compound);
            combinators.add(combinator);
            if (at >= text.length()) {
                return Optional.of(new Selector(compounds, combinators, specificity));
            }
            combinator = ' ';
            while (at < text.length() && (Character.isWhitespace(peek()) || ">+~".indexOf(peek()) >= 0)) {
                if (!Character.isWhitespace(peek())) {
                    combinator = peek();
                }
                at++;
            }
        }
    }

    private char peek() {
        return at < text.length() ? text.charAt(at) : 0;
    }

    private String name() {
        StringBuilder name = new StringBuilder();
        while (at < text.length()) {
            char c = text.charAt(at);
            if (c == '\\' && at + 1 < text.length()) {
                name.append(text.charAt(at + 1));
                at += 2;
            } else if (Character.isLetterOrDigit(c) || c == '-' || c == '_' || c > 127) {
                name.append(c);
                at++;
            } else {
                break;
            }
        }
        return name.toString();
    }

    private Compound compound() {
        int start = at;
        String tag = "";
        String id = "";
        List<String> classes = new ArrayList<>();
        List<Compound.Test> tests = new ArrayList<>();
        if (peek() == '*') {
            at++;
        } else {
            tag = name();
            specificity += tag.isEmpty() ? 0 : 1;
        }
        if (peek() == '|') {
            at++;
            tag = peek() == '*' ? "" : name();
            at += peek() == '*' ? 1 : 0;
        }
        while (at < text.length()) {
            char c = peek();
            if (c == '.' || c == '#') {
                at++;
                String name = name();
                if (name.isEmpty() || c == '#' && !id.isEmpty() && !id.equals(name)) {
                    return null;
                }
                if (c == '.') {
                    classes.add(name);
                    specificity += 1000;
                } else {
                    id = name;
                    specificity += 1_000_000;
                }
            } else if (c == '[' || c == ':') {
                Compound.Test test = c == '[' ? attribute() : pseudo();
                if (test == null) {
                    return null;
                }
                tests.add(test);
            } else {
                break;
            }
        }
        return at == start ? null : new Compound(tag, id, classes, tests);
    }

    private Compound.Test attribute() {
        int end = text.indexOf(']', at);
        if (end < 0) {
            return null;
        }
        String inside = text.substring(at + 1, end).strip();
        at = end + 1;
        specificity += 1000;
        int equals = inside.indexOf('=');
        if (equals < 0) {
            return node -> node.has(inside);
        }
        char kind = equals > 0 ? inside.charAt(equals - 1) : '=';
        boolean plain = "~|^$*".indexOf(kind) < 0;
        String key = inside.substring(0, plain ? equals : equals - 1).strip();
        String value = inside.substring(equals + 1).strip();
        String word = value.length() > 1 && (value.charAt(0) == '"' || value.charAt(0) == '\'')
                ? value.substring(1, value.length() - 1) : value;
        return node -> node.has(key) && switch (plain ? '=' : kind) {
            case '~' -> Compound.hasWord(node.attribute(key), word);
            case '|' -> node.attribute(key).equals(word) || node.attribute(key).startsWith(word + "-");
            case '^' -> !word.isEmpty() && node.attribute(key).startsWith(word);
            case '$' -> !word.isEmpty() && node.attribute(key).endsWith(word);
            case '*' -> !word.isEmpty() && node.attribute(key).contains(word);
            default -> node.attribute(key).equals(word);
        };
    }

    private Compound.Test pseudo() {
        at++;
        String name = name();
        String inside = null;
        if (peek() == '(') {
            int end = text.indexOf(')', at);
            if (end < 0) {
                return null;
            }
            inside = text.substring(at + 1, end).strip();
            at = end + 1;
        }
        specificity += 1000;
        switch (name) {
            case "first-child":
                return node -> node.position() == 1;
            case "last-child":
                return node -> node.parent().map(p -> p.elementCount() == node.position()).orElse(true);
            case "only-child":
                return node -> node.parent().map(p -> p.elementCount() == 1).orElse(true);
            case "root":
                return node -> node.parent().isEmpty();
            case "nth-child":
                return inside == null ? null : nth(inside);
            case "not":
                if (inside == null) {
                    return null;
                }
                specificity -= 1000;
                SelectorParser not = new SelectorParser(inside);
                Compound compound = not.compound();
                if (compound == null || not.at < not.text.length()) {
                    return null;
                }
                specificity += not.specificity;
                return node -> !compound.matches(node);
            case "hover", "active", "focus", "focus-within", "focus-visible", "visited", "target":
                return node -> false;
            default:
                return null;
        }
    }

    private static Compound.Test nth(String formula) {
        String f = formula.replaceAll("\\s+", "").replace("odd", "2n+1").replace("even", "2n");
        int n = f.indexOf('n');
        try {
            if (n < 0) {
                int wanted = Integer.parseInt(f);
                return node -> node.position() == wanted;
            }
            String head = f.substring(0, n);
            int a = head.isEmpty() || head.equals("+") ? 1 : head.equals("-") ? -1 : Integer.parseInt(head);
            int b = n + 1 == f.length() ? 0 : Integer.parseInt(f.substring(n + 1));
            return node -> matches(node, a, b);
        } catch (NumberFormatException e) {
            return null;
        }
    }

    private static boolean matches(Node node, int a, int b) {
        int d = node.position() - b;
        return a == 0 ? d == 0 : d % a == 0 && d / a >= 0;
    }
}
