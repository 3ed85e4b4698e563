/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtNotice;
import org.pollex.artwork.ArtSource;
import org.pollex.artwork.BeyondReaderException;
import org.pollex.artwork.ReadLimits;
import org.pollex.artwork.svg.SvgReader;

class SvgReaderTest {

    private static final String RECT = "<svg xmlns='http://www.w3.org/2000/svg' width='9mm' height='9mm'>"
            + "<rect width='5' height='5'/></svg>";

    private static ArtSource source(String text, Charset charset) {
        return new ArtSource("Fähre.svg", text.getBytes(charset));
    }

    private static ArtException refused(String text) {
        return assertThrows(ArtException.class,
                () -> new SvgReader().read(source(text, StandardCharsets.UTF_8), ReadLimits.usual()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "<?xml version='1.0'?>", "\n", "<!-- made by hand -->", "\uFEFF",
        "<!DOCTYPE svg PUBLIC \"-//W3C//DTD SVG 1.1//EN\" \"http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd\">"})
    void beginnings(String head) throws ArtException {
        ArtSource source = source(head + RECT, StandardCharsets.UTF_8);
        assertTrue(new SvgReader().recognises(source));
        assertEquals(1, new SvgReader().read(source, ReadLimits.usual()).regions().size());
    }

    @Test
    void otherEncodings() throws ArtException {
        ArtSource wide = source("\uFEFF<?xml version='1.0' encoding='UTF-16'?>" + RECT, StandardCharsets.UTF_16BE);
        assertTrue(new SvgReader().recognises(wide));
        assertEquals(1, new SvgReader().read(wide, ReadLimits.usual()).regions().size());
        ArtSource latin = source("<?xml version='1.0' encoding='ISO-8859-1'?>" + RECT.replace("<rect",
                "<rect id='ä'"), StandardCharsets.ISO_8859_1);
        assertEquals("ä", new SvgReader().read(latin, ReadLimits.usual()).regions().get(0).id());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "hello <svg", "%PDF-1.4 hello hello <svg>", "{\"a\":1}", "\u0089PNG"})
    void otherFiles(String text) {
        assertFalse(new SvgReader().recognises(source(text, StandardCharsets.UTF_8)));
    }

    @Test
    void damageIsNamedWithItsLine() {
        assertEquals("Fähre.svg: the file is damaged or cut off at line 2; ask the client to export and send it again.",
                refused(RECT.replace("<rect", "\n<rect").substring(0, 90)).getMessage());
        assertEquals("Fähre.svg: the file is XML but no SVG drawing; export the art as SVG.",
                refused("<?xml version='1.0'?><page/>").getMessage());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "<!DOCTYPE svg [<!ENTITY c 'red'>]><svg xmlns='http://www.w3.org/2000/svg'/> | document type",
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'><text><tref/></text></svg> | tref"})
    void whatAnotherReaderMayKnowIsPassedOn(String text, String feature) {
        ArtException e = refused(text);
        assertTrue(e instanceof BeyondReaderException beyond && beyond.feature().contains(feature), e.getMessage());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "<script id='x'>draw()</script>                                       | REFUSED     | script",
        "<rect id='x' onclick='draw()' width='1' height='1'/>                 | REFUSED     | onclick",
        "<rect width='1' height='1'><animate id='x'/></rect>                  | IGNORED     | animate",
        "<foreignObject id='x'><p>hello</p></foreignObject>                   | UNSUPPORTED | foreignObject",
        "<flowRoot id='x'><flowPara>hello</flowPara></flowRoot>               | UNSUPPORTED | flowRoot",
        "<filter id='f'/><g id='x' filter='url(#f)'/>                         | UNSUPPORTED | filter",
        "<g id='x' style='mix-blend-mode:multiply'/>                          | UNSUPPORTED | mix-blend-mode",
        "<use id='x' href='other.svg#a'/>                                     | REFUSED     | use href",
        "<use id='x' href='#lost'/>                                           | IGNORED     | use",
        "<path id='x' d='M0 0L1'/>                                            | UNSUPPORTED | d",
        "<polygon id='x' points='0 0 1 1 2 0 x'/>                             | UNSUPPORTED | points",
        "<g id='x' transform='turn(3)'/>                                      | UNSUPPORTED | transform",
        "<rect id='x' fill='url(other.svg#g)' width='1' height='1'/>          | REFUSED     | fill",
        "<rect id='x' fill='url(#lost)' width='1' height='1'/>                | IGNORED     | fill",
        "<text id='x' writing-mode='tb' font-family='serif'>a</text>          | UNSUPPORTED | writing-mode",
        "<text id='x' font-variant='small-caps' font-family='serif'>a</text>  | UNSUPPORTED | font-variant",
        "<text id='x' font-family='serif'>\u05d0</text>                       | UNSUPPORTED | text"})
    void everythingLeftOutIsNamed(String inside, ArtNotice.Kind kind, String feature) {
        Art art = Reads.page(inside.strip());
        assertTrue(Reads.names(art, kind, feature.strip(), "x"), Reads.notices(art).toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"<title>a</title>", "<desc/>", "<metadata><x xmlns='urn:x'/></metadata>",
        "<x:namedview xmlns:x='urn:x'><x:grid/></x:namedview>", "<g id='a'/>", "<view id='a'/>", "<filter id='f'/>",
        "<g filter='none' style='mix-blend-mode:normal;isolation:isolate'/>", "<g filter='url(#lost)'/>"})
    void whatPaintsNothingIsNotMentioned(String inside) {
        assertEquals(List.of(), Reads.notices(Reads.page(inside)));
    }

    @Test
    void oneReaderServesManyThreads() {
        SvgReader reader = new SvgReader();
        ConcurrentHashMap<String, Integer> results = new ConcurrentHashMap<>();
        IntStream.range(0, 400).parallel().forEach(i -> {
            try {
                Art art = reader.read(source(Reads.PAGE + "<text y='50' font-size='" + (i % 4 + 5) + "'>Bees</text>"
                        + "<circle r='" + (i % 4 + 1) + "' stroke='red'/></svg>", StandardCharsets.UTF_8),
                        ReadLimits.usual());
                results.merge(i % 4 + " " + Reads.box(art.regions().get(0)), 1, Integer::sum);
            } catch (ArtException e) {
                throw new AssertionError(e);
            }
        });
        assertEquals(4, results.size());
    }
}
