/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.attack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.artwork.ArtNotice.Kind;

/** References that reach for another file or another machine, and things that run. */
class ReferenceTest {

    private static final int CANARY = 0xbada55;
    private static final String OWN = "<rect width=\"5\" height=\"5\"/>";

    @TempDir
    Path folder;

    private URI canary() throws IOException {
        return Files.writeString(folder.resolve("canary.svg"), "<svg xmlns=\"http://www.w3.org/2000/svg\">"
                + "<rect id=\"x\" width=\"50\" height=\"50\" fill=\"#bada55\"/><linearGradient id=\"g\">"
                + "<stop stop-color=\"#bada55\"/></linearGradient></svg>").toUri();
    }

    @TestFactory
    Stream<DynamicTest> localFiles() throws IOException {
        String file = canary().toString();
        String base = folder.toUri().toString();
        return Stream.of("<image width=\"50\" height=\"50\" xlink:href=\"" + file + "\"/>",
                "<use xlink:href=\"" + file + "#x\"/>", "<use href=\"" + file + "#x\"/>",
                "<text><tref xlink:href=\"" + file + "#x\"/></text>",
                "<g xml:base=\"" + base + "\"><use xlink:href=\"canary.svg#x\"/></g>",
                "<g xml:base=\"" + file + "\"><use xlink:href=\"#x\"/></g>",
                "<rect width=\"9\" height=\"9\" fill=\"url(" + file + "#g)\"/>",
                "<rect width=\"9\" height=\"9\" style=\"fill:u\\72l('" + file + "#g')\"/>",
                "<style>rect{fill:url(/**/" + file + "#g)}</style>",
                "<linearGradient id=\"h\" xlink:href=\"" + file + "#g\"/><circle r=\"9\" fill=\"url(#h)\"/>",
                "<style>@import \"" + file + "\";</style>", "<style>@\\69mport url(" + file + ");</style>")
                .map(body -> DynamicTest.dynamicTest(body.replace(file, "FILE").replace(base, "FOLDER/"),
                        () -> Outcome.of(OWN + body).without(CANARY)));
    }

    @TestFactory
    Stream<DynamicTest> otherMachines() {
        return Stream.of("<image width=\"50\" height=\"50\" xlink:href=\"URL\"/>",
                "<image width=\"50\" height=\"50\" href=\"URL\"/>", "<use xlink:href=\"URL#x\"/>",
                "<filter id=\"f\"><feImage xlink:href=\"URL\"/></filter><circle r=\"9\" filter=\"url(#f)\"/>",
                "<circle r=\"9\" filter=\"url(URL#f)\"/>", "<circle r=\"9\" fill=\"url(URL#g) red\"/>",
                "<circle r=\"9\" style=\"mask:url(URL#g);clip-path:url(URL#c);marker:url(URL#m)\"/>",
                "<style>@import url(URL);</style>", "<style>@font-face{font-family:a;src:url(URL)}</style>"
                        + "<text font-family=\"a\" y=\"9\">a</text>",
                "<script xlink:href=\"URL\"/>", "<script type=\"application/java-archive\" xlink:href=\"URL\"/>",
                "<a xlink:href=\"URL\"><circle r=\"3\"/></a>", "<color-profile name=\"p\" xlink:href=\"URL\"/>",
                "<font-face font-family=\"b\"><font-face-src><font-face-uri xlink:href=\"URL\"/></font-face-src>"
                        + "</font-face><text font-family=\"b\" y=\"9\">b</text>",
                "<text><textPath xlink:href=\"URL#p\">x</textPath></text>", "<g cursor=\"url(URL)\"><circle/></g>",
                "<foreignObject width=\"9\" height=\"9\"><img xmlns=\"http://www.w3.org/1999/xhtml\" src=\"URL\"/>"
                        + "</foreignObject>")
                .map(body -> DynamicTest.dynamicTest(body, () -> {
                    try (Listener listener = new Listener()) {
                        Outcome.of(OWN + body.replace("URL", listener.address("x")));
                        listener.assertSilent();
                    }
                }));
    }

    @Test
    void theListenerHears() throws IOException, InterruptedException {
        try (Listener listener = new Listener()) {
            URI address = URI.create(listener.address("x"));
            try (Socket socket = new Socket(address.getHost(), address.getPort())) {
                assertEquals(-1, socket.getInputStream().read());
            }
            for (int i = 0; i < 100; i++) {
                try {
                    listener.assertSilent();
                    Thread.sleep(20);
                } catch (AssertionError heard) {
                    return;
                }
            }
            throw new AssertionError("the listener heard nothing");
        }
    }

    @Test
    void styleSheetInstruction() throws IOException {
        try (Listener listener = new Listener()) {
            Outcome.ofFile("<?xml-stylesheet href=\"" + listener.address("x.css") + "\" type=\"text/css\"?>"
                    + "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"9mm\" height=\"9mm\">" + OWN + "</svg>");
            listener.assertSilent();
        }
    }

    @Test
    void scriptsDoNotRun() throws IOException {
        Path mark = folder.resolve("mark");
        Outcome outcome = Outcome.of(OWN + "<script>var f = new java.io.FileWriter('" + mark + "'); f.close();</script>"
                + "<g onload=\"new java.io.FileWriter('" + mark + "')\"><circle r=\"3\"/></g>");
        outcome.noted(Kind.REFUSED, "script");
        assertFalse(Files.exists(mark));
    }

    @Test
    void handlerOnTheRoot() {
        Outcome.ofFile("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"9mm\" height=\"9mm\" onload=\"x()\">" + OWN
                + "</svg>").ended();
    }

    @Test
    void pictureThatIsSvg() throws IOException {
        String inner = "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\">"
                + "<image width=\"9\" height=\"9\" xlink:href=\"" + canary() + "\"/>"
                + "<rect width=\"9\" height=\"9\" fill=\"#bada55\"/></svg>";
        String data = Base64.getEncoder().encodeToString(inner.getBytes(StandardCharsets.UTF_8));
        Outcome.of(OWN + "<image width=\"50\" height=\"50\" xlink:href=\"data:image/svg+xml;base64," + data + "\"/>")
                .without(CANARY).ended();
    }

    @Test
    void everyLocalReferenceIsNamed() throws IOException {
        for (String body : List.of("<image width=\"50\" height=\"50\" xlink:href=\"" + canary() + "\"/>",
                "<use xlink:href=\"" + canary() + "#x\"/>")) {
            Outcome outcome = Outcome.of(OWN + body);
            outcome.noted(Kind.REFUSED, "");
            assertTrue(outcome.art().get().regions().size() == 1);
        }
    }
}
