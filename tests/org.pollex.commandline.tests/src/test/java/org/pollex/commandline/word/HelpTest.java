/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.word;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pollex.commandline.Main;
import org.pollex.commandline.Studio;
import org.pollex.commandline.session.About;
import org.pollex.rules.CheckEntry;
import org.pollex.rules.Contributions;
import org.pollex.rules.Suite;

class HelpTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"list, KIND", "new, --product", "check, --sarif", "place, --turn", "picture, --dpi", "proof, --pdf",
        "retone, --material", "demo, DIR", "completion, zsh"})
    void explainsEveryWord(String word, String holds) {
        Studio.Answer answer = new Studio(folder).call(word, "--help");
        assertEquals(0, answer.code(), answer.err());
        assertTrue(answer.out().startsWith("Usage: studio " + word), answer.out());
        assertTrue(answer.out().contains(holds), answer.out());
        assertTrue(new Studio(folder).call("--help").out().contains("  " + word + " "), word);
    }

    @Test
    void tellsItsVersionWhichIsTheOneOfTheBundle() throws Exception {
        Studio.Answer answer = new Studio(folder).call("--version");
        assertEquals("Pollex " + About.VERSION, answer.out().strip());
        String manifest = Files.readString(Path.of("../../bundles/org.pollex.commandline/META-INF/MANIFEST.MF"));
        assertTrue(manifest.contains("Bundle-Version: " + About.VERSION + ".qualifier"), manifest);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "print", "check", "new a.design", "picture", "check --fail-on sometimes x",
        "picture a.design --png b.png --dpi many", "list inks --xml", "demo one two",
        "proof a.design --pdf b --date soon"})
    void answersWrongUseWithOneLine(String words) {
        Studio.Answer answer = new Studio(folder).call(words.isEmpty() ? new String[0] : words.split(" "));
        assertEquals(2, answer.code(), words);
        assertEquals(1, answer.errors().size(), answer.err());
        assertEquals("", answer.out());
    }

    @Test
    void tellsContributionsThatAreLeftOut() {
        Suite suite = Suite.of(Contributions.collect().with(new CheckEntry("Bad Id", "Bad", "Has no proper id.",
                "org.example.bad", () -> null)).finish());
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Main.run(new String[] {"list", "checks"}, new PrintStream(new ByteArrayOutputStream()),
                new PrintStream(err, true, StandardCharsets.UTF_8), folder, suite);
        assertEquals(0, code);
        assertEquals(1, err.toString(StandardCharsets.UTF_8).lines().count());
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("org.example.bad"));
    }

    @Test
    void completesInBash() throws Exception {
        Studio.Answer answer = new Studio(folder).call("completion");
        assertEquals(0, answer.code());
        Path script = Files.writeString(folder.resolve("completion.sh"), answer.out());
        Process bash = new ProcessBuilder("bash", "-c", "source " + script + "; COMP_WORDS=(studio ch); COMP_CWORD=1; "
                + "_complete_studio; echo \"${COMPREPLY[@]}\"").redirectErrorStream(true).start();
        String said = new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(bash.waitFor(30, TimeUnit.SECONDS));
        assertEquals("check", said.strip());
    }
}
