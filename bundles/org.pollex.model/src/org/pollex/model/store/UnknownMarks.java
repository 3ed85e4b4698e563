/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.emf.ecore.EObject;
import org.pollex.model.design.DesignPackage;
import org.pollex.model.design.UnknownMark;

/**
 * How does a mark of an unknown kind come through a file unharmed? What every mark has is read as usual; its kind and
 * all else are kept as text and written again as they were.
 *
 * <p>Kept are attributes without a namespace, types of this format, and elements that hold either text or elements.
 * Comments, and blanks between elements, are not.
 */
final class UnknownMarks {

    private static final String REST = "rest";
    private static final String TOKEN = "kept:";
    private static final Pattern WRITTEN = Pattern.compile("xsi:type=\"design:UnknownMark\"([^<]*?)\\s+rest=\""
            + TOKEN + "(\\d+)\"/>");

    private static final Pattern WORD = Pattern.compile("[A-Za-z_][A-Za-z0-9_.-]*");

    private UnknownMarks() {
    }

    private static boolean isWord(String text) {
        return WORD.matcher(text).matches();
    }

    /** The name of the kind of an element whose type is not known; empty when it is no kind of mark of this format. */
    static Optional<String> kind(XmlElement element) {
        String named = element.attributes().getOrDefault(XmlHandler.TYPE, "");
        String space = "{" + DesignPackage.eNS_URI + "}";
        return named.startsWith(space) && isWord(named.substring(space.length()))
                ? Optional.of(named.substring(space.length())) : Optional.empty();
    }

    /** What an element says besides what every mark has; empty when it holds what cannot be kept. */
    static Optional<String> rest(XmlElement element) {
        StringBuilder text = new StringBuilder();
        return append(text, element, REST, true) ? Optional.of(text.toString()) : Optional.empty();
    }

    /** Whether a mark holds what its element in a file needs. */
    static boolean whole(UnknownMark mark) {
        return mark.getKind() != null && isWord(mark.getKind()) && mark.getRest() != null
                && mark.getRest().startsWith("<" + REST)
                && (mark.getRest().endsWith("/>") || mark.getRest().endsWith("</" + REST + ">"));
    }

    private static boolean append(StringBuilder out, XmlElement element, String name, boolean mark) {
        if (!element.namespace().isEmpty() || !isWord(name)
                || !element.children().isEmpty() && !element.text().isBlank()) {
            return false;
        }
        out.append('<').append(name);
        for (Map.Entry<String, String> each : element.attributes().entrySet()) {
            String key = each.getKey();
            if (mark && (key.equals(XmlHandler.TYPE)
                    || DesignPackage.Literals.MARK.getEStructuralFeature(key) != null)) {
                continue;
            }
            if (key.equals(XmlHandler.TYPE) && kind(element).isPresent()) {
                out.append(" xsi:type=\"design:").append(kind(element).get()).append('"');
                continue;
            }
            if (!isWord(key)) {
                return false;
            }
            out.append(' ').append(key).append("=\"").append(escaped(each.getValue())).append('"');
        }
        if (element.children().isEmpty() && element.text().isBlank()) {
            out.append("/>");
            return true;
        }
        out.append('>').append(element.children().isEmpty() ? escaped(element.text()) : "");
        for (XmlElement child : element.children()) {
            if (!append(out, child, child.name(), false)) {
                return false;
            }
        }
        out.append("</").append(name).append('>');
        return true;
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;")
                .replace("\t", "&#x9;").replace("\n", "&#xA;").replace("\r", "&#xD;");
    }

    /** Puts a token in place of what unknown marks of a model keep, so that it can be found in the XML. */
    static List<UnknownMark> mask(EObject copy) {
        List<UnknownMark> kept = new ArrayList<>();
        copy.eAllContents().forEachRemaining(each -> {
            if (each instanceof UnknownMark mark) {
                UnknownMark original = org.eclipse.emf.ecore.util.EcoreUtil.copy(mark);
                mark.setKind(null);
                mark.setRest(TOKEN + kept.size());
                kept.add(original);
            }
        });
        return kept;
    }

    /** Writes kinds and all else of unknown marks where XML has their tokens. */
    static byte[] unmask(byte[] xml, List<UnknownMark> kept) {
        if (kept.isEmpty()) {
            return xml;
        }
        Matcher found = WRITTEN.matcher(new String(xml, StandardCharsets.UTF_8));
        String text = found.replaceAll(hit -> {
            UnknownMark mark = kept.get(Integer.parseInt(hit.group(2)));
            String rest = mark.getRest().substring(1 + REST.length());
            String whole = rest.endsWith("</" + REST + ">")
                    ? rest.substring(0, rest.length() - REST.length() - 3) + "</marks>" : rest;
            return Matcher.quoteReplacement("xsi:type=\"design:" + mark.getKind() + "\"" + hit.group(1) + whole);
        });
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
