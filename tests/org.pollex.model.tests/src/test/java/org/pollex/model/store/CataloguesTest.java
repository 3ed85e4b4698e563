/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.model.catalogue.Catalogue;
import org.pollex.model.catalogue.Entry;

/** Look-ups over several catalogues, and what is wrong in them. */
class CataloguesTest {

    @TempDir
    Path folder;

    private static Catalogue catalogue(String content) throws StoreException {
        return ModelFiles.CATALOGUES.read(new ByteArrayInputStream(("<c:Catalogue xmlns:c="
                + "\"http://pollex.org/model/catalogue\" format=\"1\" name=\"Own\">" + content + "</c:Catalogue>")
                .getBytes(StandardCharsets.UTF_8)), "own.catalogue");
    }

    @Test
    void laterCataloguesWinById() throws Exception {
        Catalogue base = catalogue("<inks id=\"red\" name=\"Red\"/><inks id=\"navy\" name=\"Navy\"/>"
                + "<materials id=\"red\" name=\"Red stock\"/><settings key=\"k\" value=\"1\"/>"
                + "<settings key=\"only-base\" value=\"7\"/>");
        Catalogue own = catalogue("<inks id=\"navy\" name=\"Our navy\"><settings key=\"k\" value=\"3\"/></inks>"
                + "<inks id=\"gold\" name=\"Gold\"/><settings key=\"k\" value=\"2\"/>");
        Catalogues both = Catalogues.of(base).with(own);
        assertEquals(List.of("Red", "Our navy", "Gold"), both.inks().stream().map(Entry::getName).toList());
        assertEquals("Red stock", both.material("red").orElseThrow().getName());
        assertEquals(Optional.empty(), both.ink("none-such"));
        assertEquals(Optional.empty(), both.product(null));
        assertEquals(List.of(), both.families());
        assertEquals(OptionalDouble.of(2), both.setting("k"));
        assertEquals(OptionalDouble.of(7), both.setting("only-base"));
        assertEquals(OptionalDouble.empty(), both.setting("none-such"));
        Entry navy = both.ink("navy").orElseThrow();
        Entry gold = both.ink("gold").orElseThrow();
        assertEquals(OptionalDouble.of(3), both.setting("k", navy));
        assertEquals(OptionalDouble.of(3), both.setting("k", gold, navy));
        assertEquals(OptionalDouble.of(2), both.setting("k", gold));
        assertThrows(UnsupportedOperationException.class, () -> both.inks().clear());
        assertEquals(2, Catalogues.of(base).inks().size());
        assertEquals(List.of(base, own), both.layers());
    }

    @Test
    void aGoodCatalogueHasNoProblems() throws Exception {
        assertEquals(List.of(), Catalogues.of(catalogue("<families id=\"pick\" name=\"Pick\"/>"
                + "<products id=\"p\" name=\"P\" family=\"pick\"><faces name=\"front\"/></products>"
                + "<materials id=\"m\" name=\"M\" lab=\"90 0 0\"/>"
                + "<inks id=\"i\" name=\"I\" lab=\"50 0 0\" labOverBlack=\"30 0 0\"/><methods id=\"d\" name=\"D\" "
                + "lineMin=\"0.1\" gapMin=\"0.1\" lineMinReversed=\"0.1\" gapMinReversed=\"0.1\" typeMin=\"1\" "
                + "inksMax=\"1\" resolution=\"600\"/>")).problems());
    }

    @Test
    void problemsAreNamedWithTheirEntry() throws Exception {
        List<String> problems = Catalogues.of(catalogue(
                "<families id=\"pick\" name=\"Pick\"/><families id=\"pick\" name=\"Pick\"/>"
                + "<products id=\"a\" name=\"A\" family=\"spoon\"><faces name=\"front\"/><faces name=\"front\"/>"
                + "<faces/><dimensions key=\"width\" value=\"1\"/><dimensions key=\"width\" value=\"2\"/></products>"
                + "<products id=\"b\"/><materials id=\"m\" name=\"M\"><texture kind=\"swatch\"/></materials>"
                + "<materials id=\"n\" name=\"N\" lab=\"50 0 0\"><texture kind=\"flecked\">"
                + "<crop x=\"4\" y=\"4\" height=\"9\"/><grey width=\"8\" height=\"8\"/></texture></materials>"
                + "<inks id=\"bare\" name=\"Bare\" lab=\"1 1 1\"/><methods id=\"d\" name=\"D\" gapMin=\"1\" "
                + "lineMinReversed=\"1\" gapMinReversed=\"1\" typeMin=\"1\" inksMax=\"1\" resolution=\"1\"/>"))
                .problems().stream().map(CatalogueProblem::message).toList();
        assertEquals(List.of(
                "family \"pick\" is there twice, and only the last one counts; rename or remove one.",
                "product \"b\" has no name to show; give it one.",
                "product \"a\" names the family \"spoon\", which no catalogue has; correct it or add the family.",
                "product \"a\" has two faces named \"front\"; rename or remove one.",
                "product \"a\" has a face without a name; call it front or back.",
                "product \"a\" has the setting \"width\" twice, and only the last one counts; remove one.",
                "product \"b\" names no family; give it one.",
                "product \"b\" has no face to print on; give it a front.",
                "material \"m\" has no colour; give it a lab.",
                "material \"m\" has a swatch texture without a picture; name the picture.",
                "material \"n\" has a crop or a grey patch but no swatch texture; make it one or remove them.",
                "material \"n\" has a crop without a width or a height; give it both.",
                "material \"n\" has a grey patch without a lightness; give it the L* that the grey is known to have.",
                "ink \"bare\" has an id that designs use for something else; give it another.",
                "ink \"bare\" has no colour over black; give it a labOverBlack.",
                "method \"d\" has no lineMin; give it a number above 0."), problems);
    }

    @Test
    void aFamilyOfAnotherCatalogueIsKnown() throws Exception {
        Catalogues both = Catalogues.of(catalogue("<families id=\"pick\" name=\"Pick\"/>"),
                catalogue("<products id=\"p\" name=\"P\" family=\"pick\"><faces name=\"front\"/></products>"));
        assertEquals(List.of(), both.problems());
        assertTrue(both.product("p").isPresent());
    }

    @Test
    void jobFolderFindsItsFiles() throws Exception {
        JobFolder job = JobFolder.of(folder.resolve("a.design"));
        assertEquals(Optional.empty(), job.job());
        Files.createFile(folder.resolve("b.design"));
        Files.createFile(folder.resolve("A.DESIGN"));
        Files.createFile(folder.resolve(".a.design.last"));
        Files.createDirectory(folder.resolve("folder.design"));
        Path file = Files.createFile(folder.resolve("one.job"));
        assertEquals(Optional.of(file.toAbsolutePath()), job.job());
        assertEquals(List.of("A.DESIGN", "b.design"),
                job.designs().stream().map(each -> each.getFileName().toString()).toList());
        Files.createFile(folder.resolve("two.job"));
        StoreException e = assertThrows(StoreException.class, job::job);
        assertTrue(e.getMessage().contains("holds two jobs, \"one.job\" and \"two.job\""), e.getMessage());
        assertEquals(folder.resolve("art").toAbsolutePath(), job.art());
        assertEquals(folder.resolve("out").toAbsolutePath(), job.output());
    }
}
