/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.gate;

import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

import org.pollex.artwork.ArtNotice.Kind;
import org.pollex.artwork.ReadLimits;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;

/** Builds the tree from parser events, leaving out what no reader may see, within the bounds on count and depth. */
final class TreeHandler extends DefaultHandler {

    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final String XLINK = "http://www.w3.org/1999/xlink";
    private static final String XML = "http://www.w3.org/XML/1998/namespace";
    private static final int LONGEST_ATTRIBUTE = 4 << 20;

    private final GateReport report;
    private final ReadLimits limits;
    private final Deque<SvgNode> open = new ArrayDeque<>();
    private final Deque<Map<String, Integer>> counts = new ArrayDeque<>();
    private SvgNode root;
    private int elements;
    private int depth;
    private int leftOut;

    TreeHandler(GateReport report, ReadLimits limits) {
        this.report = report;
        this.limits = limits;
        counts.push(new HashMap<>());
    }

    SvgNode root() {
        return root;
    }

    @Override
    public void startElement(String uri, String local, String qualified, Attributes given) throws SAXException {
        depth++;
        if (depth > limits.depth()) {
            throw refused("elements are nested more than " + limits.depth()
                    + " deep; ungroup the art and export it again");
        }
        if (++elements > limits.elements()) {
            throw refused("the file has more than " + limits.elements()
                    + " elements; simplify the art and export it again");
        }
        if (leftOut > 0) {
            leftOut++;
            return;
        }
        if (root == null && !(uri.equals(SVG) && local.equals("svg"))) {
            throw refused("its first element is " + GateReport.cut(qualified)
                    + ", not svg of the SVG namespace; export the art as SVG");
        }
        int position = counts.peek().merge(local, 1, Integer::sum);
        SvgNode node = new SvgNode(local, Optional.ofNullable(open.peek()), position);
        if (!uri.equals(SVG) || DroppedElements.drops(node, given, report)) {
            leftOut = 1;
            return;
        }
        attributes(node, given);
        if (root == null) {
            root = node;
        } else {
            open.peek().children().add(node);
        }
        open.push(node);
        counts.push(new HashMap<>());
    }

    private void attributes(SvgNode node, Attributes given) throws SAXException {
        for (int i = 0; i < given.getLength(); i++) {
            String uri = given.getURI(i);
            String name = given.getLocalName(i);
            String value = given.getValue(i);
            if (value.length() > LONGEST_ATTRIBUTE) {
                throw refused(node.where() + " has an attribute " + GateReport.cut(name) + " of " + value.length()
                        + " characters, more than the " + LONGEST_ATTRIBUTE
                        + " that one may have; split or simplify it and export the art again");
            }
            if (uri.isEmpty()) {
                if (name.regionMatches(true, 0, "on", 0, 2)) {
                    report.note(Kind.REFUSED, name, node, "the event handler " + GateReport.cut(name)
                            + " was left out, art runs nothing");
                } else if (!name.equals("href") || !value.isBlank()) {
                    node.attributes().put(name, value);
                }
            } else if (uri.equals(XLINK) && name.equals("href")) {
                node.attributes().putIfAbsent("href", value);
            } else if (uri.equals(XML) && name.equals("base")) {
                report.note(Kind.REFUSED, "xml:base", node, "the base address was left out, art reads no other file");
            } else if (uri.equals(XML) && (name.equals("space") || name.equals("lang"))) {
                node.attributes().put("xml:" + name, value);
            }
        }
    }

    @Override
    public void endElement(String uri, String local, String qualified) {
        depth--;
        if (leftOut > 0) {
            leftOut--;
            return;
        }
        open.pop();
        counts.pop();
    }

    @Override
    public void characters(char[] text, int start, int length) {
        if (leftOut == 0 && !open.isEmpty()) {
            String more = new String(text, start, length);
            var children = open.peek().children();
            int last = children.size() - 1;
            // Joining keeps "one text, one string"; long texts arrive in blocks of the parser, so this stays linear
            // enough only up to a point, beyond which blocks are kept apart.
            if (last >= 0 && children.get(last) instanceof String before && before.length() < 4096) {
                children.set(last, before + more);
            } else {
                children.add(more);
            }
        }
    }

    @Override
    public void processingInstruction(String target, String data) {
        if (target.equals("xml-stylesheet")) {
            report.note(Kind.REFUSED, "xml-stylesheet", "the file's head",
                    "a style sheet in another file was left out, art reads no other file");
        }
    }

    @Override
    public void skippedEntity(String name) throws SAXException {
        if (!name.equals("[dtd]") && !name.startsWith("%")) {
            report.note(Kind.REFUSED, "entity", "&" + GateReport.cut(name) + ";",
                    "an entity in another file was left out, art reads no other file");
        }
    }

    @Override
    public InputSource resolveEntity(String publicId, String systemId) {
        // Never reached while external entities are off; should a parser ask all the same, it gets nothing.
        return new InputSource(new StringReader(""));
    }

    @Override
    public void error(SAXParseException e) {
        // Validity is not asked for; soundness comes as a fatal error.
    }

    @Override
    public void fatalError(SAXParseException e) throws SAXException {
        throw e;
    }

    private RefusedInParse refused(String reason) {
        return new RefusedInParse(report.refusal(reason));
    }
}
