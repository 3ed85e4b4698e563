/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.word;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.commandline.Studio;

/** Input that cannot be worked with: one line on the error stream, the right exit code, and nothing half-written. */
class BadInputTest {

    private static final String NEW = "new x.design --product standard-pick --material solid-white "
            + "--method pad-one-colour --ink navy ";

    @TempDir
    private Path folder;

    /**
     * A call that must fail.
     *
     * @param words  of the call, separated by blanks
     * @param code   what it must end with
     * @param says   part of the error
     */
    private record Case(String name, String words, int code, String says) {
    }

    private static final List<Case> CASES = List.of(
            new Case("missing art", NEW + "--front gone.svg", 3, "gone.svg"),
            new Case("a folder without art", NEW.replace("x.design", "x") + "--front empty", 3, "empty: "),
            new Case("a folder as the back", NEW + "--front art.svg --back empty", 2, "empty: "),
            new Case("empty art", NEW + "--front zero.svg", 3, "zero.svg: the file is empty"),
            new Case("binary art", NEW + "--front noise.svg", 3, "noise.svg: "),
            new Case("half a file of art", NEW + "--front half.svg", 3, "half.svg: "),
            new Case("a picture called art", NEW + "--front photo.svg", 3, "photo.svg: "),
            new Case("art of another format", NEW + "--front letter.txt", 3, "letter.txt: "),
            new Case("a design with the wrong ending", NEW.replace("x.design", "x.svg") + "--front art.svg", 2,
                    "x.svg: a design's name must end in .design"),
            new Case("an unknown product", NEW.replace("standard-pick", "large-pick") + "--front art.svg", 2,
                    "There is no product large-pick"),
            new Case("two fronts", NEW + "--front art.svg --front art.svg", 2, "--front"),
            new Case("an ink twice", NEW + "--ink navy --front art.svg", 2, "navy is named twice"),
            new Case("a side that is not there", NEW + "--lid art.svg", 2, "--lid"),
            new Case("art that prints nothing", NEW + "--front white.svg", 3, "white.svg: nothing in it prints"),
            new Case("art a metre wide", NEW + "--front metre.svg", 3,
                    "metre.svg: what it prints measures 1000 x 1000 mm"),
            new Case("art a micrometre wide", NEW + "--front micron.svg", 3, "micron.svg: what it prints measures"),
            new Case("art with size nothing", NEW + "--front nosize.svg", 3, "nosize.svg: "),
            new Case("a file in the place of a folder", NEW.replace("x.design", "art.svg/x.design")
                    + "--front art.svg", 4, "art.svg/x.design"),
            new Case("a design that is there", NEW.replace("x.design", "a.design") + "--front art.svg", 4, "--force"),
            new Case("a folder in the place of a design", NEW.replace("x.design", "dir.design") + "--front art.svg", 4,
                    "dir.design: this is a folder"),
            new Case("a folder of the system that takes no files", NEW.replace("x.design", "/proc/x/x.design")
                    + "--front art.svg", 4, "/proc/x"),
            new Case("a name longer than a name may be", NEW.replace("x.design", "n".repeat(300) + ".design")
                    + "--front art.svg", 4, "nnnn"),
            new Case("check: missing", "check gone.design", 3, "gone.design: there is no such file"),
            new Case("check: a folder without designs", "check empty", 3, "empty: the folder holds no design"),
            new Case("check: empty", "check empty.design", 3, "empty.design"),
            new Case("check: binary", "check noise.design", 3, "noise.design"),
            new Case("check: half a design", "check half.design", 3, "half.design"),
            new Case("check: wrong ending", "check art.svg", 3, "art.svg: this is neither a design nor a job"),
            new Case("check: a newer design", "check newer.design", 3, "newer.design"),
            new Case("check: an unknown product", "check product.design", 3, "large-pick"),
            new Case("check: a report that is a folder", "check a.design --json empty", 4, "empty: this is a folder"),
            new Case("check: a report under a file", "check a.design --sarif art.svg/r", 4, "art.svg/r"),
            new Case("check: a report in a folder of the system", "check a.design --junit /proc/r.xml", 4,
                    "/proc/r.xml"),
            new Case("picture: missing", "picture gone.design --png p.png", 3, "gone.design"),
            new Case("picture: not a design", "picture art.svg --png p.png", 3, "art.svg"),
            new Case("picture: under a file", "picture a.design --png art.svg/p.png", 4, "art.svg/p.png"),
            new Case("proof: half a design", "proof half.design --pdf p.pdf", 3, "half.design"),
            new Case("proof: in a folder of the system", "proof a.design --pdf /proc/p.pdf", 4, "/proc/p.pdf"),
            new Case("place: missing", "place gone.design", 3, "gone.design"),
            new Case("place: under a file", "place a.design --out art.svg/b.design", 4, "art.svg/b.design"),
            new Case("place: a side without art", "place a.design --side back", 2, "back"),
            new Case("demo: a file in the place of its folder", "demo art.svg", 4, "art.svg: this is a file"),
            new Case("demo: under a file", "demo art.svg/demo", 4, "art.svg/demo"),
            new Case("demo: in a folder of the system", "demo /proc/demo", 4, "/proc/demo"));

    private Studio studio(Path at) throws Exception {
        Studio studio = new Studio(at);
        studio.write("art.svg", Studio.square());
        studio.write("zero.svg", "");
        byte[] noise = new byte[4000];
        new java.util.Random(7).nextBytes(noise);
        studio.write("noise.svg", noise);
        studio.write("noise.design", noise);
        studio.write("half.svg", Studio.square().substring(0, Studio.square().length() / 2));
        studio.write("photo.svg", new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0, 0, 0, 13, 'I', 'H'});
        studio.write("letter.txt", "Dear studio, please print our logo.");
        studio.write("white.svg", Studio.svg(10, 10, "<rect width=\"10\" height=\"10\" fill=\"#fff\"/>"));
        studio.write("metre.svg", Studio.svg(1000, 1000, "<rect width=\"1000\" height=\"1000\"/>"));
        studio.write("micron.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"0.001mm\" height=\"0.001mm\" "
                + "viewBox=\"0 0 1 1\"><rect width=\"1\" height=\"1\"/></svg>");
        studio.write("nosize.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"0\" height=\"0\">"
                + "<rect width=\"1\" height=\"1\"/></svg>");
        assertEquals(0, studio.make("a.design", "--front", "art.svg", "--largest").code());
        String design = studio.text("a.design");
        studio.write("empty.design", "");
        studio.write("half.design", design.substring(0, design.length() / 2));
        studio.write("newer.design", design.replace("format=\"1\"", "format=\"99\""));
        studio.write("product.design", design.replace("standard-pick", "large-pick"));
        Files.createDirectories(at.resolve("empty"));
        Files.createDirectories(at.resolve("dir.design"));
        return studio;
    }

    private static Map<String, String> state(Path folder) throws Exception {
        Map<String, String> state = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                state.put(folder.relativize(file).toString(), Files.isRegularFile(file)
                        ? java.util.Arrays.toString(Files.readAllBytes(file)) : "folder");
            }
        }
        return state;
    }

    @TestFactory
    Stream<DynamicTest> refuses() {
        return CASES.stream().map(each -> dynamicTest(each.name(), () -> {
            Path at = Files.createDirectory(folder.resolve("case" + CASES.indexOf(each)));
            Studio studio = studio(at);
            Map<String, String> before = state(at);
            Studio.Answer answer = studio.call(each.words().split(" "));
            assertEquals(each.code(), answer.code(), answer.err());
            assertEquals(1, answer.errors().size(), answer.err());
            assertTrue(answer.err().contains(each.says()), answer.err());
            assertTrue(answer.err().strip().endsWith("."), answer.err());
            assertFalse(answer.err().contains("Exception"), answer.err());
            assertEquals(before, state(at));
        }));
    }

    @Test
    void namesNoCaseTwice() {
        assertEquals(CASES.size(), CASES.stream().map(Case::name).distinct().count());
    }

    @Test
    void worksWithNamesOfAnyScriptAndLongPaths() throws Exception {
        String deep = "\u03a3\u03ba\u03b1\u03bb\u03b1/\u043c\u0430\u044f\u043a \u6f22\u5b57/" + "n".repeat(200) + "/"
                + "m".repeat(200) + "/" + "o".repeat(200) + "/" + "p".repeat(200) + "/" + "q".repeat(200);
        Studio studio = new Studio(folder);
        studio.write("Leuchtfeuer \u00fc\u6f22.svg", Studio.square());
        Studio.Answer made = studio.make(deep + "/\u706f\u53f0.design", "--front", "Leuchtfeuer \u00fc\u6f22.svg",
                "--largest");
        assertEquals(0, made.code(), made.err());
        List<String> words = new ArrayList<>(List.of("check", deep, "--json", deep + "/r.json"));
        Studio.Answer checked = studio.call(words.toArray(new String[0]));
        assertEquals(0, checked.code(), checked.err());
        assertTrue(studio.text(deep + "/r.json").contains("\u706f\u53f0.design"));
        assertEquals(0, studio.call("picture", deep + "/\u706f\u53f0.design", "--png", deep + "/p.png", "--dpi", "72")
                .code());
        assertEquals(0, studio.call("proof", deep + "/\u706f\u53f0.design", "--pdf", deep + "/p.pdf").code());
    }

    @Test
    void refusesAPathLongerThanTheSystemTakes() {
        String far = ("d".repeat(200) + "/").repeat(30) + "x.design";
        Studio studio = new Studio(folder);
        studio.write("art.svg", Studio.square());
        Studio.Answer answer = studio.make(far, "--front", "art.svg");
        assertEquals(4, answer.code(), answer.err());
        assertEquals(1, answer.errors().size());
        assertEquals(List.of("art.svg"), studio.files());
    }
}
