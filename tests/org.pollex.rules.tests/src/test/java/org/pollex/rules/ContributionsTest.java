/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.print.item.ItemException;

/** Contributions are taken one by one; a broken one costs nothing but itself. */
class ContributionsTest {

    @TempDir
    private Path folder;

    /** A check that plugin.xml files of these tests name. */
    public static final class Quiet implements Check {

        @Override
        public void check(CheckContext context, FindingSink sink) {
            sink.info("").say("Heard 0 dB.");
        }
    }

    private Contributions read(String... declarations) throws Exception {
        URL[] urls = new URL[declarations.length];
        for (int i = 0; i < declarations.length; i++) {
            Path bundle = Files.createDirectories(folder.resolve("bundle" + i + "/META-INF")).getParent();
            Files.writeString(bundle.resolve("META-INF/MANIFEST.MF"),
                    "Manifest-Version: 1.0\nBundle-SymbolicName: org.example.b" + i + ";singleton:=true\n");
            Files.writeString(bundle.resolve("plugin.xml"), declarations[i]);
            urls[i] = bundle.toUri().toURL();
        }
        // No parent for resources: other declarations on the class path of the tests are not looked at.
        return Contributions.fromClassPath(new URLClassLoader(urls, null) {
            @Override
            protected Class<?> findClass(String name) throws ClassNotFoundException {
                return ContributionsTest.class.getClassLoader().loadClass(name);
            }
        });
    }

    private static String checks(String elements) {
        return "<?xml version=\"1.0\"?><plugin><extension point=\"org.pollex.rules.checks\">" + elements
                + "</extension></plugin>";
    }

    private static String check(String id, String type) {
        return "<check id=\"" + id + "\" name=\"N\" description=\"D\" class=\"" + type + "\"/>";
    }

    private static final String QUIET = Quiet.class.getName();

    @Test
    void brokenOnesAreNamedWithTheirBundleAndSkipped() throws Exception {
        Contributions read = read(checks(check("first", QUIET) + "<check name=\"N\" description=\"D\" class=\"X\"/>"
                + "<rule/>" + check("Not An Id", QUIET) + check("second", QUIET)), checks(check("first", QUIET)
                + "<check id=\"third\" name=\" \" description=\"D\" class=\"" + QUIET + "\"/>"
                + check("fourth", QUIET)));
        assertEquals(List.of("first", "second", "fourth"), read.checks().stream().map(CheckEntry::id).toList());
        assertEquals(5, read.problems().size(), read.problems()::toString);
        says(read, "org.example.b0", "lacks the attribute id");
        says(read, "org.example.b0", "element <rule> stands where <check> is expected");
        says(read, "org.example.b0", "\"Not An Id\" is not made of lower-case words");
        says(read, "org.example.b1", "first is taken by org.example.b0");
        says(read, "org.example.b1", "<check> lacks the attribute name");
    }

    @Test
    void fileThatIsNoXmlIsNamed() throws Exception {
        Contributions read = read("<plugin><extension", checks(check("good", QUIET)));
        assertEquals(List.of("good"), read.checks().stream().map(CheckEntry::id).toList());
        assertEquals(1, read.problems().size());
        assertTrue(read.problems().get(0).contains("bundle0/plugin.xml"), read.problems().get(0));
    }

    @Test
    void classThatIsMissingOrWrongShowsWhenItRuns() throws Exception {
        Suite suite = Suite.of(read(checks(check("gone", "org.example.Gone") + check("wrong", "java.lang.String")
                + check("quiet", QUIET))));
        List<Finding> found = suite.check(Tiles.printed());
        assertEquals(List.of("gone", "wrong", "quiet"), found.stream().map(Finding::check).toList());
        assertTrue(found.get(0).message().contains("class org.example.Gone cannot be made"), found.get(0).message());
        assertTrue(found.get(1).message().contains("class java.lang.String is no Check"), found.get(1).message());
        assertEquals("Heard 0 dB.", found.get(2).message());
    }

    @Test
    void cataloguesAreReadFromTheirBundle() throws Exception {
        Files.createDirectories(folder.resolve("bundle0/data"));
        Files.writeString(folder.resolve("bundle0/data/good.catalogue"), """
                <?xml version="1.0" encoding="UTF-8"?>
                <catalogue:Catalogue xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI"
                    xmlns:catalogue="http://pollex.org/model/catalogue" format="1" name="Ours">
                  <products id="tile-20" name="tile" family="tile"/>
                </catalogue:Catalogue>
                """);
        Files.writeString(folder.resolve("bundle0/data/bad.catalogue"), "<nonsense/>");
        Suite suite = Suite.of(read("<plugin><extension point=\"org.pollex.rules.catalogues\">"
                + "<catalogue resource=\"data/good.catalogue\"/><catalogue resource=\"data/bad.catalogue\"/>"
                + "<catalogue resource=\"data/none.catalogue\"/></extension></plugin>"));
        assertTrue(suite.catalogues().product("tile-20").isPresent());
        assertEquals(2, suite.problems().size(), suite.problems()::toString);
        assertTrue(suite.problems().get(0).contains("org.example.b0"), suite.problems().get(0));
        assertTrue(suite.problems().get(1).contains("data/none.catalogue"), suite.problems().get(1));
        ItemException refused = assertThrows(ItemException.class, () -> suite.item("tile-20"));
        assertTrue(refused.getMessage().contains("family \"tile\", which no bundle builds"), refused.getMessage());
    }

    /** A reader of art that plugin.xml files of these tests name. */
    public static final class NoArt implements org.pollex.artwork.ArtReader {

        @Override
        public boolean recognises(org.pollex.artwork.ArtSource source) {
            return false;
        }

        @Override
        public org.pollex.artwork.Art read(org.pollex.artwork.ArtSource source,
                org.pollex.artwork.ReadLimits limits) {
            throw new IllegalStateException();
        }
    }

    @Test
    void readersOfArtAreTakenToo() throws Exception {
        String type = "class=\"" + NoArt.class.getName() + "\"";
        Contributions read = read("<plugin><extension point=\"org.pollex.artwork.readers\">"
                + "<reader id=\"low\" name=\"L\" fileExtensions=\"svg, SVGZ\" " + type + "/>"
                + "<reader id=\"high\" name=\"H\" priority=\"10\" " + type + "/>"
                + "<reader id=\"odd\" name=\"O\" priority=\"first\" " + type + "/>"
                + "<reader id=\"gone\" name=\"G\" class=\"org.example.Gone\"/></extension></plugin>");
        assertEquals(List.of("high", "low"), read.readers().entries().stream().map(entry -> entry.id()).toList());
        assertEquals(List.of("svg", "svgz"), read.readers().fileExtensions());
        assertEquals(2, read.problems().size(), read.problems()::toString);
        says(read, "org.example.b0", "priority \"first\" of art reader odd is not a whole number");
        says(read, "org.example.b0", "class org.example.Gone cannot be made");
    }

    @Test
    void plainObjectsServeAsWell() {
        Contributions plain = Contributions.collect().with(Tiles.check("one", "test", (context, sink) -> { }))
                .with(new FamilyEntry("tile", "test", Tiles::builder))
                .with(new FamilyEntry("tile", "other", () -> null))
                .with(new FamilyEntry(" ", "other", () -> null)).finish();
        Contributions both = Contributions.collect().with(plain)
                .with(Tiles.check("one", "again", (context, sink) -> { })).finish();
        assertEquals(1, both.checks().size());
        assertEquals(1, both.families().size());
        assertEquals(3, both.problems().size());
    }

    private static void says(Contributions read, String bundle, String text) {
        assertTrue(read.problems().stream().anyMatch(problem -> problem.contains(bundle) && problem.contains(text)),
                () -> text + " is not among " + read.problems());
    }
}
