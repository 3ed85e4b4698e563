/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import javax.xml.XMLConstants;
import org.pollex.model.store.StoreException.Reason;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.ext.DefaultHandler2;

/** Builds {@link XmlElement}s from parser events and stops at the first thing that a model file never holds. */
final class XmlHandler extends DefaultHandler2 {

    /** Carries a refusal through the parser. */
    static final class Refused extends SAXException {

        private static final long serialVersionUID = 1L;
        private final StoreException reason;

        Refused(StoreException reason) {
            super(reason);
            this.reason = reason;
        }

        StoreException reason() {
            return reason;
        }
    }

    static final String TYPE = "{" + XMLConstants.W3C_XML_SCHEMA_INSTANCE_NS_URI + "}type";

    private final String file;
    private final FileKind kind;
    private final Deque<XmlElement> open = new ArrayDeque<>();
    private final Map<String, Deque<String>> prefixes = new HashMap<>();
    private Locator locator;
    private XmlElement root;
    private int count;

    XmlHandler(String file, FileKind kind) {
        this.file = file;
        this.kind = kind;
    }

    XmlElement root() {
        return root;
    }

    /** True while an element waits for its end. */
    boolean open() {
        return !open.isEmpty();
    }

    @Override
    public void setDocumentLocator(Locator documentLocator) {
        locator = documentLocator;
    }

    @Override
    public void startDTD(String name, String publicId, String systemId) throws SAXException {
        throw forbidden();
    }

    @Override
    public InputSource resolveEntity(String name, String publicId, String baseUri, String systemId)
            throws SAXException {
        throw forbidden();
    }

    @Override
    public void startPrefixMapping(String prefix, String uri) {
        prefixes.computeIfAbsent(prefix, key -> new ArrayDeque<>()).push(uri);
    }

    @Override
    public void endPrefixMapping(String prefix) {
        prefixes.get(prefix).pop();
    }

    @Override
    public void startElement(String uri, String local, String qualified, Attributes attributes) throws SAXException {
        if (++count > XmlSource.ELEMENTS_MAX) {
            throw new Refused(new StoreException(Reason.TOO_LARGE, file, "more than " + XmlSource.ELEMENTS_MAX
                    + " elements, which no " + kind.word() + " has; check that it is the right file."));
        }
        if (open.size() >= XmlSource.DEPTH_MAX) {
            throw new Refused(new StoreException(Reason.TOO_LARGE, file, "line " + line() + " lies deeper than "
                    + XmlSource.DEPTH_MAX + " elements, which no " + kind.word()
                    + " does; check that it is the right file."));
        }
        XmlElement element = new XmlElement(uri, local, line());
        for (int i = 0; i < attributes.getLength(); i++) {
            String space = attributes.getURI(i);
            String key = space.isEmpty() ? attributes.getLocalName(i) : "{" + space + "}" + attributes.getLocalName(i);
            element.attributes().put(key, key.equals(TYPE) ? type(attributes.getValue(i)) : attributes.getValue(i));
        }
        if (open.isEmpty()) {
            root = element;
        } else {
            open.peek().children().add(element);
        }
        open.push(element);
    }

    @Override
    public void endElement(String uri, String local, String qualified) {
        open.pop();
    }

    @Override
    public void characters(char[] characters, int start, int length) {
        open.peek().append(characters, start, length);
    }

    @Override
    public void error(SAXParseException e) throws SAXException {
        throw e;
    }

    private String type(String qualified) {
        int colon = qualified.indexOf(':');
        Deque<String> uris = prefixes.get(colon < 0 ? "" : qualified.substring(0, colon));
        String uri = uris == null || uris.isEmpty() ? "" : uris.peek();
        return "{" + uri + "}" + qualified.substring(colon + 1);
    }

    private Refused forbidden() {
        return new Refused(new StoreException(Reason.FORBIDDEN, file, "line " + line()
                + " declares a document type, which a " + kind.word() + " never has and which may do harm; remove the "
                + "declaration if you trust the file."));
    }

    private int line() {
        return locator == null ? 1 : Math.max(1, locator.getLineNumber());
    }
}
