/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.model.store.StoreException.Reason;

/** A design comes from anywhere: what does harm in XML is refused, and nothing outside the file is touched. */
@Timeout(60)
class AttackTest {

    @TempDir
    Path folder;

    @Test
    void entitiesThatMultiply() {
        StringBuilder text = new StringBuilder("<!DOCTYPE d [<!ENTITY e0 \"ha\">");
        for (int i = 1; i < 30; i++) {
            text.append("<!ENTITY e").append(i).append(" \"").append(("&e" + (i - 1) + ";").repeat(10)).append("\">");
        }
        text.append("]><d>&e29;</d>");
        assertEquals("a.design: line 1 declares a document type, which a design never has and which may do harm; "
                + "remove the declaration if you trust the file.", refused(text.toString(), Reason.FORBIDDEN));
    }

    @Test
    void entityFromAFile() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret.txt"), "the-secret");
        String text = "<!DOCTYPE d [<!ENTITY x SYSTEM \"" + secret.toUri() + "\">]>\n"
                + BadContentTest.design("name=\"n\"", "<inks>&x;</inks>").replaceFirst("<\\?xml[^>]*>\n", "");
        assertFalse(refused(text, Reason.FORBIDDEN).contains("the-secret"));
    }

    @Test
    void nothingIsAskedOfTheNetwork() throws Exception {
        try (ServerSocket server = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
            String address = "http://" + server.getInetAddress().getHostAddress() + ":" + server.getLocalPort() + "/x";
            refused("<!DOCTYPE d SYSTEM \"" + address + "\"><d/>", Reason.FORBIDDEN);
            refused("<!DOCTYPE d PUBLIC \"-//X\" \"" + address + "\"><d/>", Reason.FORBIDDEN);
            refused("<!DOCTYPE d [<!ENTITY % p SYSTEM \"" + address + "\">%p;]><d/>", Reason.FORBIDDEN);
            refused("<!DOCTYPE d [<!ENTITY x SYSTEM \"" + address + "\">]><d>&x;</d>", Reason.FORBIDDEN);
            refused(BadContentTest.design("", "<sides href=\"" + address + "#/\"/>"), Reason.UNKNOWN_CONTENT);
            refused(BadContentTest.design("", "<xi:include xmlns:xi=\"http://www.w3.org/2001/XInclude\" href=\""
                    + address + "\"/>"), Reason.UNKNOWN_CONTENT);
            refused("<far:Thing xmlns:far=\"" + address + "\" xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\" "
                    + "xsi:schemaLocation=\"" + address + " " + address + "\"/>", Reason.WRONG_KIND);
            // A location is a hint that EMF may write; it is accepted and not followed.
            ModelFiles.DESIGNS.read(stream(BadContentTest.design("xsi:schemaLocation=\"" + address + " " + address
                    + "\"", "<?xml-stylesheet href=\"" + address + "\"?>")), "a.design");
            server.setSoTimeout(200);
            assertThrows(SocketTimeoutException.class, server::accept);
        }
    }

    @Test
    void deepNesting() {
        refused("<a>".repeat(1_000_000), Reason.TOO_LARGE);
        refused(BadContentTest.design("", "<sides>".repeat(100) + "</sides>".repeat(100)), Reason.TOO_LARGE);
    }

    @Test
    void tooManyElements() {
        refused(BadContentTest.design("", "<inks>a</inks>".repeat(XmlSource.ELEMENTS_MAX)), Reason.TOO_LARGE);
    }

    @Test
    void manyAttributes() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 100_000; i++) {
            text.append(" a").append(i).append("=\"\"");
        }
        refused(BadContentTest.design(text.toString(), ""), Reason.DAMAGED);
    }

    @Test
    void numbersOfMillionsOfDigits() {
        String digits = "9".repeat(8_000_000);
        refused(BadContentTest.design("", "<sides name=\"f\"><layers><marks xsi:type=\"design:TextLine\" x=\"" + digits
                + "y\"/></layers></sides>"), Reason.BAD_VALUE);
        refused(BadContentTest.design("", "").replace("format=\"1\"", "format=\"" + digits + "\""), Reason.BAD_VALUE);
        refused(BadContentTest.design("", "<sides name=\"f\"><layers><marks xsi:type=\"design:Placement\" zoom=\""
                + digits + "\"/></layers></sides>").replace("format=\"1\"", ""), Reason.BAD_VALUE);
    }

    @Test
    void streamWithoutEnd() {
        InputStream endless = new InputStream() {
            @Override
            public int read() {
                return '<';
            }
        };
        StoreException e = assertThrows(StoreException.class, () -> ModelFiles.DESIGNS.read(endless, "a.design"));
        assertEquals(Reason.TOO_LARGE, e.reason());
        assertEquals("a.design: larger than 16 MB, which no design is; check that it is the right file.",
                e.getMessage());
    }

    @Test
    void hugeFile() throws IOException {
        Path huge = folder.resolve("huge.design");
        try (var file = new RandomAccessFile(huge.toFile(), "rw")) {
            file.setLength(20L << 30);
        }
        StoreException e = assertThrows(StoreException.class, () -> ModelFiles.DESIGNS.open(huge));
        assertEquals(Reason.TOO_LARGE, e.reason());
    }

    @Test
    void nameThatBreaksTheLine() {
        StoreException e = assertThrows(StoreException.class, () -> ModelFiles.DESIGNS.read(stream(
                BadContentTest.design("", "<inks><x" + "\u0085/></inks>")), "a\nb\u001b[31m.design"));
        BadContentTest.assertSentence(e);
    }

    private static String refused(String text, Reason reason) {
        StoreException e = assertThrows(StoreException.class, () -> ModelFiles.DESIGNS.read(stream(text), "a.design"));
        assertEquals(reason, e.reason(), e.getMessage());
        BadContentTest.assertSentence(e);
        return e.getMessage();
    }

    private static InputStream stream(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }
}
