/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.batik;

import org.apache.batik.anim.dom.SVGDOMImplementation;
import org.pollex.artwork.svg.gate.SvgNode;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Builds Batik's document straight from the cleaned tree, so that no parser sees the file a second time. */
final class DocumentBuilder {

    private static final String SVG = SVGDOMImplementation.SVG_NAMESPACE_URI;
    private static final String XLINK = "http://www.w3.org/1999/xlink";
    private static final String XML = "http://www.w3.org/XML/1998/namespace";
    /** Stands for the file in references; nothing is ever read from it. */
    private static final String ADDRESS = "file:/art.svg";

    private DocumentBuilder() {
    }

    static Document of(SvgNode root) {
        Document document = SVGDOMImplementation.getDOMImplementation().createDocument(SVG, "svg", null);
        document.setDocumentURI(ADDRESS);
        fill(document, document.getDocumentElement(), root);
        return document;
    }

    private static void fill(Document document, Element element, SvgNode node) {
        element.setAttributeNS(null, MappedBuilder.WHERE, node.where());
        node.attributes().forEach((key, value) -> {
            if (key.equals("href")) {
                element.setAttributeNS(XLINK, "xlink:href", value);
            } else if (key.startsWith("xml:")) {
                element.setAttributeNS(XML, key, value);
            } else {
                element.setAttributeNS(null, key, value);
            }
        });
        for (Object child : node.children()) {
            if (child instanceof SvgNode inner) {
                Element e = document.createElementNS(SVG, inner.name());
                element.appendChild(e);
                fill(document, e, inner);
            } else {
                element.appendChild(document.createTextNode((String) child));
            }
        }
    }
}
