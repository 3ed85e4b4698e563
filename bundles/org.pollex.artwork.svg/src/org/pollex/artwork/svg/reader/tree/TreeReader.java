/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.tree;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtSource;
import org.pollex.artwork.BeyondReaderException;
import org.pollex.artwork.ReadLimits;

/**
 * Reads XML into a {@link Tree} with the parser of the JDK. Document types are not processed and nothing outside the
 * bytes is opened; a document type that declares something of its own goes to another reader.
 */
public final class TreeReader {

    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final String XLINK = "http://www.w3.org/1999/xlink";
    private static final String XML = "http://www.w3.org/XML/1998/namespace";
    /** Longest value of an attribute; embedded pictures are bounded by the file and by their pixels instead. */
    private static final int LONGEST_VALUE = 4_000_000;

    private final ArtSource source;
    private final ReadLimits limits;
    private final Map<String, Node> ids = new HashMap<>();
    private final List<Node> styles = new ArrayList<>();
    private int elements;

    private TreeReader(ArtSource source, ReadLimits limits) {
        this.source = source;
        this.limits = limits;
    }

    /** Reads the tree of a file. */
    public static Tree read(ArtSource source, ReadLimits limits) throws ArtException {
        return new TreeReader(source, limits).run();
    }

    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        factory.setXMLResolver((publicId, systemId, base, namespace) -> new ByteArrayInputStream(new byte[0]));
        return factory;
    }

    private Tree run() throws ArtException {
        Node root = null;
        try {
            XMLStreamReader xml = factory().createXMLStreamReader(new ByteArrayInputStream(source.bytes()));
            Node open = null;
            int depth = 0;
            while (xml.hasNext()) {
                switch (xml.next()) {
                    case XMLStreamConstants.DTD -> documentType();
                    case XMLStreamConstants.START_ELEMENT -> {
                        if (++depth > limits.depth()) {
                            throw new ArtException(source.name(), "elements are nested more than " + limits.depth()
                                    + " deep; ungroup the art and export it again");
                        }
                        open = start(xml, open);
                        root = root == null ? open : root;
                    }
                    case XMLStreamConstants.END_ELEMENT -> {
                        depth--;
                        open = open == null ? null : open.parent().orElse(null);
                    }
                    case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA, XMLStreamConstants.SPACE -> {
                        if (open != null && keepsText(open)) {
                            Node.text(xml.getText(), open);
                        }
                    }
                    case XMLStreamConstants.ENTITY_REFERENCE ->
                        throw new BeyondReaderException(source.name(), "the entity " + xml.getLocalName());
                    default -> {
                    }
                }
            }
        } catch (ArtException e) {
            throw e;
        } catch (XMLStreamException e) {
            int line = e.getLocation() == null ? 1 : Math.max(1, e.getLocation().getLineNumber());
            throw damaged(" at line " + line, e);
        } catch (Exception e) {
            // The parser of the JDK throws what it should not on some broken document types.
            throw damaged("", e);
        }
        if (root == null || !root.name().equals("svg")) {
            throw new ArtException(source.name(), "the file is XML but no SVG drawing; export the art as SVG");
        }
        return new Tree(root, ids, styles);
    }

    private ArtException damaged(String where, Exception cause) {
        return new ArtException(source.name(), "the file is damaged or cut off" + where
                + "; ask the client to export and send it again", cause);
    }

    private static boolean keepsText(Node open) {
        if (!open.isSvg()) {
            return false;
        }
        return switch (open.name()) {
            case "text", "tspan", "textPath", "tref", "a", "style", "altGlyph", "switch", "flowPara", "flowSpan" ->
                    true;
            default -> false;
        };
    }

    private Node start(XMLStreamReader xml, Node parent) throws ArtException {
        if (++elements > limits.elements()) {
            throw new ArtException(source.name(), "the art has more than " + limits.elements()
                    + " elements; simplify it and export it again");
        }
        int n = xml.getAttributeCount();
        String[] attributes = new String[2 * n];
        int k = 0;
        for (int i = 0; i < n; i++) {
            String space = xml.getAttributeNamespace(i);
            String name = xml.getAttributeLocalName(i);
            if (space != null && !space.isEmpty()) {
                if (space.equals(XLINK)) {
                    name = "xlink:" + name;
                } else if (space.equals(XML)) {
                    name = "xml:" + name;
                } else {
                    continue;
                }
            }
            String value = xml.getAttributeValue(i);
            if (value.length() > LONGEST_VALUE && !name.endsWith("href")) {
                throw new ArtException(source.name(), "the attribute " + name + " of an element " + xml.getLocalName()
                        + " has more than " + LONGEST_VALUE
                        + " characters; simplify the art and export it again");
            }
            attributes[k++] = name;
            attributes[k++] = value;
        }
        String space = xml.getNamespaceURI();
        boolean svg = space == null || space.isEmpty() || space.equals(SVG);
        Node node = Node.element(xml.getLocalName(), parent, svg,
                k == attributes.length ? attributes : Arrays.copyOf(attributes, k));
        if (svg) {
            String id = node.attribute("id");
            if (!id.isEmpty()) {
                ids.putIfAbsent(id, node);
            }
            if (node.name().equals("style")) {
                styles.add(node);
            }
        }
        return node;
    }

    /** Passes over a document type that only names the standard one. */
    private void documentType() throws ArtException {
        String head = new String(source.bytes(), 0, Math.min(source.bytes().length, 1 << 16),
                StandardCharsets.ISO_8859_1);
        int at = head.indexOf("<!DOCTYPE");
        char quote = 0;
        for (int i = at; at >= 0 && i < head.length(); i++) {
            char c = head.charAt(i);
            if (quote != 0) {
                quote = c == quote ? 0 : quote;
            } else if (c == '"' || c == '\'') {
                quote = c;
            } else if (c == '>') {
                return;
            } else if (c == '[') {
                break;
            }
        }
        throw new BeyondReaderException(source.name(), "the document type with declarations");
    }
}
