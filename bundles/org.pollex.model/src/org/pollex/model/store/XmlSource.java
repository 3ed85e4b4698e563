/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import java.io.IOException;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;
import org.pollex.model.store.StoreException.Reason;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/**
 * Turns the bytes of a model file into elements. The file is not trusted: a document type is refused before anything
 * in it is read, no entity is fetched, and size, depth and count of elements are bounded. Comments and processing
 * instructions are no content and are passed over.
 */
final class XmlSource {

    /** A design with some hundred placements is under 100 kB. */
    static final int BYTES_MAX = 16 << 20;
    /** The deepest file that the model can make has seven levels. */
    static final int DEPTH_MAX = 32;
    static final int ELEMENTS_MAX = 200_000;

    private static final Pattern DECLARED = Pattern.compile("^<\\?xml[^>]*?encoding\\s*=\\s*[\"']([^\"']*)[\"']");
    private static final int DECLARATION_MAX = 200;

    private XmlSource() {
    }

    /**
     * @param file  name for messages
     * @param kind  what the file should hold, for messages
     */
    static XmlElement read(byte[] bytes, String file, FileKind kind) throws StoreException {
        if (bytes.length > BYTES_MAX) {
            throw tooLarge(file, kind);
        }
        String text = decode(bytes, file, kind);
        XmlHandler handler = new XmlHandler(file, kind);
        try {
            SAXParser parser = parser();
            parser.setProperty("http://xml.org/sax/properties/lexical-handler", handler);
            parser.parse(new InputSource(new StringReader(text)), handler);
            return handler.root();
        } catch (XmlHandler.Refused e) {
            throw e.reason();
        } catch (SAXParseException e) {
            throw broken(e, text, handler, file, kind);
        } catch (SAXException | IOException | ParserConfigurationException | RuntimeException e) {
            throw new StoreException(Reason.DAMAGED, file, "this " + kind.word()
                    + " is damaged and cannot be read as XML; restore it from a copy.", e);
        }
    }

    static StoreException tooLarge(String file, FileKind kind) {
        return new StoreException(Reason.TOO_LARGE, file, "larger than " + (BYTES_MAX >> 20) + " MB, which no "
                + kind.word() + " is; check that it is the right file.");
    }

    private static SAXParser parser() throws ParserConfigurationException, SAXException {
        SAXParserFactory factory = SAXParserFactory.newDefaultNSInstance();
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
        factory.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        SAXParser parser = factory.newSAXParser();
        parser.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
        parser.setProperty(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
        return parser;
    }

    private static String decode(byte[] bytes, String file, FileKind kind) throws StoreException {
        int start = bytes.length >= 3 && bytes[0] == (byte) 0xef && bytes[1] == (byte) 0xbb && bytes[2] == (byte) 0xbf
                ? 3 : 0;
        int first = start;
        while (first < bytes.length && (bytes[first] == ' ' || bytes[first] == '\t' || bytes[first] == '\r'
                || bytes[first] == '\n')) {
            first++;
        }
        if (first == bytes.length) {
            throw new StoreException(Reason.DAMAGED, file, "the file is empty; restore this " + kind.word()
                    + " from a copy.");
        }
        if (bytes[first] != '<') {
            throw new StoreException(Reason.DAMAGED, file, "not a " + kind.word()
                    + " of Pollex: the file does not begin as XML in UTF-8; check that it is the right file.");
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes, start, bytes.length - start);
        CharBuffer out = CharBuffer.allocate(bytes.length - start);
        try {
            var result = decoder.decode(in, out, true);
            if (result.isError()) {
                result.throwException();
            }
        } catch (CharacterCodingException e) {
            throw new StoreException(Reason.DAMAGED, file, "line " + line(bytes, in.position())
                    + " holds bytes that are not UTF-8; restore this " + kind.word() + " from a copy.", e);
        }
        String text = out.flip().toString();
        int zero = text.indexOf(0);
        if (zero >= 0) {
            throw new StoreException(Reason.DAMAGED, file, "line " + (1 + text.substring(0, zero).chars()
                    .filter(c -> c == '\n').count()) + " holds zero bytes; restore this " + kind.word()
                    + " from a copy.");
        }
        Matcher declared = DECLARED.matcher(text.substring(0, Math.min(text.length(), DECLARATION_MAX)));
        if (declared.find() && !declared.group(1).equalsIgnoreCase("UTF-8")
                && !declared.group(1).equalsIgnoreCase("US-ASCII")) {
            throw new StoreException(Reason.DAMAGED, file, "declares the encoding " + Quoted.of(declared.group(1))
                    + "; save it as UTF-8 and say so in the first line.");
        }
        return text;
    }

    private static StoreException broken(SAXParseException e, String text, XmlHandler handler, String file,
            FileKind kind) {
        int last = 1 + (int) text.stripTrailing().chars().filter(c -> c == '\n').count();
        if (e.getLineNumber() >= last && !text.stripTrailing().endsWith(">")
                || e.getLineNumber() > last || handler.open() && e.getLineNumber() == last) {
            return new StoreException(Reason.DAMAGED, file, "the file ends too early, in line " + last
                    + "; restore this " + kind.word() + " from a copy.", e);
        }
        return new StoreException(Reason.DAMAGED, file, "damaged in line " + Math.max(1, e.getLineNumber())
                + ", where it stops being XML; correct that line or restore this " + kind.word() + " from a copy.", e);
    }

    private static int line(byte[] bytes, int end) {
        int line = 1;
        for (int i = 0; i < end; i++) {
            if (bytes[i] == '\n') {
                line++;
            }
        }
        return line;
    }
}
