/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.gate;

import java.io.ByteArrayInputStream;
import java.io.IOException;

import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;

import org.pollex.artwork.ArtException;
import org.pollex.artwork.ReadLimits;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.XMLReader;

/**
 * Parses with the parser of the Java runtime, which resolves nothing outside the file and bounds the expansion of the
 * file's own entities.
 */
final class SafeParse {

    private static final String XERCES = "http://apache.org/xml/features/";
    private static final String SAX = "http://xml.org/sax/features/";
    private static final int MOST_ENTITIES = 2_000;
    private static final int MOST_ENTITY_CHARACTERS = 1_000_000;
    private static final int MOST_ATTRIBUTES = 500;

    private final GateReport report;
    private final ReadLimits limits;

    SafeParse(GateReport report, ReadLimits limits) {
        this.report = report;
        this.limits = limits;
    }

    SvgNode read(byte[] bytes) throws ArtException {
        TreeHandler handler = new TreeHandler(report, limits);
        try {
            XMLReader reader = reader();
            reader.setContentHandler(handler);
            reader.setErrorHandler(handler);
            reader.setEntityResolver(handler);
            reader.parse(new InputSource(new ByteArrayInputStream(bytes)));
        } catch (RefusedInParse e) {
            throw e.refusal();
        } catch (SAXParseException e) {
            throw damaged(e);
        } catch (SAXException | IOException | RuntimeException e) {
            throw report.refusal("the file is not sound XML; ask for a fresh export");
        }
        return handler.root();
    }

    private ArtException damaged(SAXParseException e) {
        String said = String.valueOf(e.getMessage());
        if (said.contains("JAXP0001000")) {
            return report.refusal("its entities or attributes expand beyond what art needs; export it again without "
                    + "entities");
        }
        return report.refusal("the XML is broken at line " + e.getLineNumber() + ", column " + e.getColumnNumber()
                + "; ask for a fresh export");
    }

    private static XMLReader reader() throws SAXException {
        try {
            SAXParserFactory factory = SAXParserFactory.newDefaultInstance();
            factory.setNamespaceAware(true);
            factory.setXIncludeAware(false);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature(SAX + "external-general-entities", false);
            factory.setFeature(SAX + "external-parameter-entities", false);
            factory.setFeature(XERCES + "nonvalidating/load-external-dtd", false);
            javax.xml.parsers.SAXParser parser = factory.newSAXParser();
            parser.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
            parser.setProperty(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
            parser.setProperty("jdk.xml.entityExpansionLimit", String.valueOf(MOST_ENTITIES));
            parser.setProperty("jdk.xml.totalEntitySizeLimit", String.valueOf(MOST_ENTITY_CHARACTERS));
            parser.setProperty("jdk.xml.elementAttributeLimit", String.valueOf(MOST_ATTRIBUTES));
            return parser.getXMLReader();
        } catch (ParserConfigurationException e) {
            throw new SAXException(e);
        }
    }
}
