/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.attack;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.artwork.ArtNotice.Kind;

/** Entities that read files or multiply. */
class EntityTest {

    private static final String SVG = "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"10mm\" height=\"10mm\">";

    @TempDir
    Path folder;

    private Path canary() throws Exception {
        return Files.writeString(folder.resolve("canary.txt"), "CANARY");
    }

    private static void silent(Outcome outcome) {
        outcome.art().ifPresent(art -> assertFalse(art.texts().stream().anyMatch(t -> t.text().contains("CANARY"))));
        assertFalse(outcome.message().contains("CANARY"));
    }

    @Test
    void fileEntity() throws Exception {
        silent(Outcome.ofFile("<!DOCTYPE svg [<!ENTITY x SYSTEM \"" + canary().toUri() + "\">]>" + SVG
                + "<rect width=\"5\" height=\"5\"/><text y=\"9\" font-family=\"Liberation Sans\">&x;</text></svg>")
                        .noted(Kind.REFUSED, "entity"));
    }

    @Test
    void fileEntityInAttribute() throws Exception {
        silent(Outcome.ofFile("<!DOCTYPE svg [<!ENTITY x SYSTEM \"" + canary().toUri() + "\">]>" + SVG
                + "<rect id=\"&x;\" width=\"5\" height=\"5\"/></svg>").refused("XML"));
    }

    @Test
    void parameterEntity() throws Exception {
        Path dtd = Files.writeString(folder.resolve("evil.dtd"), "<!ENTITY x \"CANARY\">");
        silent(Outcome.ofFile("<!DOCTYPE svg [<!ENTITY % p SYSTEM \"" + dtd.toUri() + "\"> %p;]>" + SVG
                + "<rect width=\"5\" height=\"5\"/><text y=\"9\">&x;</text></svg>"));
    }

    @Test
    void documentTypeElsewhere() throws Exception {
        try (Listener listener = new Listener()) {
            Outcome outcome = Outcome.ofFile("<!DOCTYPE svg SYSTEM \"" + listener.address("svg.dtd") + "\">" + SVG
                    + "<rect width=\"5\" height=\"5\"/></svg>");
            assertTrue(outcome.art().isPresent(), outcome.message());
            listener.assertSilent();
        }
    }

    @Test
    void entityElsewhere() throws Exception {
        try (Listener listener = new Listener()) {
            Outcome.ofFile("<!DOCTYPE svg [<!ENTITY x SYSTEM \"" + listener.address("x") + "\"><!ENTITY % p SYSTEM \""
                    + listener.address("p") + "\"> %p;]>" + SVG + "<rect width=\"5\" height=\"5\"/>&x;</svg>");
            listener.assertSilent();
        }
    }

    @Test
    void multiplyingByTens() {
        StringBuilder dtd = new StringBuilder("<!DOCTYPE svg [<!ENTITY a0 \"ha\">");
        for (int i = 1; i < 12; i++) {
            dtd.append("<!ENTITY a").append(i).append(" \"").append(("&a" + (i - 1) + ";").repeat(10)).append("\">");
        }
        Outcome.ofFile(dtd + "]>" + SVG + "<text>&a11;</text></svg>").refused("entities");
    }

    @Test
    void longEntityManyTimes() {
        Outcome.ofFile("<!DOCTYPE svg [<!ENTITY a \"" + "x".repeat(50_000) + "\">]>" + SVG + "<text>"
                + "&a;".repeat(1_500) + "</text></svg>").refused("entities");
    }

    @Test
    void entityOfItself() {
        Outcome.ofFile("<!DOCTYPE svg [<!ENTITY a \"&b;\"><!ENTITY b \"&a;\">]>" + SVG + "<text>&a;</text></svg>")
                .refused("XML");
    }

    @Test
    void ordinaryEntitiesAreFine() {
        Outcome outcome = Outcome.ofFile("<!DOCTYPE svg [<!ENTITY c \"#ff0000\">]>" + SVG
                + "<rect width=\"5\" height=\"5\" fill=\"&c;\"/></svg>");
        assertTrue(outcome.art().isPresent(), outcome.message());
        assertTrue(outcome.art().get().regions().get(0).paint().rgb() == 0xff0000);
    }
}
