/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.core.runtime.ContributorFactorySimple;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.RegistryFactory;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.spi.RegistryContributor;
import org.eclipse.core.runtime.spi.RegistryStrategy;
import org.junit.jupiter.api.Test;

class ArtReadersTest {

    private static ArtReaders.Entry entry(String id, int priority, ArtReader reader) {
        return new ArtReaders.Entry(id, id, priority, List.of("svg"), reader);
    }

    private static ArtSource source(String name, String text) {
        return new ArtSource(name, text.getBytes(StandardCharsets.ISO_8859_1));
    }

    private static String refusal(ArtReaders readers, ArtSource source) {
        return assertThrows(ArtException.class, () -> readers.read(source, ReadLimits.usual())).getMessage();
    }

    @Test
    void theHigherPriorityIsAskedFirst() throws ArtException {
        ArtReaders readers = ArtReaders.of(List.of(entry("slow", 1, new FakeReader("A", false)),
                entry("fast", 9, new FakeReader("AB", false))));
        assertEquals("AB", readers.read(source("x.svg", "ABC"), ReadLimits.usual()).name());
        assertEquals("A", readers.read(source("x.svg", "AC"), ReadLimits.usual()).name());
    }

    @Test
    void aFilePassesOnToTheNextReader() throws ArtException {
        ArtReaders readers = ArtReaders.of(List.of(entry("slow", 1, new FakeReader("A", false)),
                entry("fast", 9, new FakeReader("AB", true))));
        assertEquals("A", readers.read(source("x.svg", "ABC"), ReadLimits.usual()).name());
    }

    @Test
    void whatNobodyKnowsIsNamed() {
        ArtReaders readers = ArtReaders.of(List.of(entry("fast", 9, new FakeReader("AB", true))));
        assertEquals("x.svg: no reader knows swirls; convert it to plain paths and export the art again.",
                refusal(readers, source("x.svg", "ABC")));
    }

    @Test
    void anotherKindOfFileIsNamedWithTheCure() {
        ArtReaders readers = ArtReaders.of(List.of(entry("a", 1, new FakeReader("<svg", false))));
        assertEquals("logo.svg: this is a PNG picture though its name ends with .svg, and art is read from these kinds"
                + " of file: SVG; ask the client for one of"
                + " them.", refusal(readers, source("logo.svg", "\u0089PNG\r")));
        assertEquals("logo.pdf: this is a PDF document, and art is read from these kinds of file: SVG; ask the client"
                + " for one of them.", refusal(readers, source("logo.pdf", "%PDF-1.4")));
        assertEquals("logo.svg: the name ends with .svg but the content is something else; ask the client to export it"
                + " again as SVG.", refusal(readers, source("logo.svg", "hello")));
        assertTrue(refusal(readers, source("logo.bin", "a\0b")).contains("a binary file"));
        assertTrue(refusal(readers, source("logo.txt", "hello")).contains("no kind of art that can be read"));
    }

    @Test
    void emptyAndHugeFilesAreRefused() {
        ArtReaders readers = ArtReaders.of(List.of(entry("a", 1, new FakeReader("", false))));
        assertTrue(refusal(readers, source("x.svg", "")).contains("is empty"));
        ReadLimits small = new ReadLimits(3, 9, 9, 9, 9, 9);
        assertTrue(assertThrows(ArtException.class, () -> readers.read(source("x.svg", "ABCD"), small)).getMessage()
                .contains("has 4 bytes, more than the 3"));
    }

    @Test
    void aReaderThatFailsBecomesOneSentence() {
        ArtReader failing = new FakeReader("A", false) {
            @Override
            public Art read(ArtSource source, ReadLimits limits) {
                throw new IllegalStateException("inner\nworkings");
            }
        };
        String message = refusal(ArtReaders.of(List.of(entry("a", 1, failing))), source("x.svg", "A"));
        assertEquals("x.svg: the art cannot be understood (IllegalStateException); open it in a drawing program and"
                + " export it again.", message);
    }

    /** A registry without a platform, filled from text; classes come from the test. */
    private static IExtensionRegistry registry(String extensions) throws CoreException {
        Object key = new Object();
        RegistryStrategy strategy = new RegistryStrategy(null, null) {
            @Override
            public Object createExecutableExtension(RegistryContributor contributor, String className, String other)
                    throws CoreException {
                try {
                    return Class.forName(className).getDeclaredConstructor().newInstance();
                } catch (ReflectiveOperationException e) {
                    throw new CoreException(new Status(IStatus.ERROR, "test", "no class " + className, e));
                }
            }
        };
        IExtensionRegistry registry = RegistryFactory.createRegistry(strategy, key, key);
        String plugin = "<?eclipse version=\"3.4\"?><plugin>"
                + "<extension-point id=\"org.pollex.artwork.readers\" name=\"r\"/>"
                + "<extension point=\"org.pollex.artwork.readers\">" + extensions + "</extension></plugin>";
        registry.addContribution(new ByteArrayInputStream(plugin.getBytes(StandardCharsets.UTF_8)),
                ContributorFactorySimple.createContributor("org.example.art"), false, null, null, key);
        return registry;
    }

    @Test
    void aBrokenContributionIsReportedAndSkipped() throws Exception {
        List<String> broken = new ArrayList<>();
        ArtReaders readers = ArtReaders.of(registry(
                "<reader id=\"good\" name=\"Good\" class=\"org.pollex.artwork.FakeReader\" priority=\"7\""
                + " fileExtensions=\"fake, FK\"/>"
                + "<reader id=\"lost\" name=\"Lost\" class=\"org.example.Nowhere\"/>"
                + "<reader id=\"wrong\" name=\"Wrong\" class=\"java.lang.Object\"/>"
                + "<reader id=\"odd\" name=\"Odd\" class=\"org.pollex.artwork.FakeReader\" priority=\"high\"/>"
                + "<reader name=\"Anonymous\" class=\"org.pollex.artwork.FakeReader\"/>"), broken::add);
        assertEquals(List.of("good"), readers.entries().stream().map(ArtReaders.Entry::id).toList());
        assertEquals(List.of("fake", "fk"), readers.fileExtensions());
        assertEquals(7, readers.entries().get(0).priority());
        assertEquals(4, broken.size());
        assertTrue(broken.stream().allMatch(b -> b.contains("org.example.art")), broken.toString());
        assertTrue(broken.get(2).contains("its priority \"high\" is not a whole number"), broken.get(2));
        assertEquals("FAKE", readers.read(source("a.fake", "FAKE"), ReadLimits.usual()).name());
    }
}
