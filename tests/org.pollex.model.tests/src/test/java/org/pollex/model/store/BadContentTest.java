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
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.pollex.model.store.StoreException.Reason;

/** One sentence for everything that a file can hold and a design cannot: the place, what is wrong, the cure. */
class BadContentTest {

    private static final String OPEN = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<design:Design xmi:version=\"2.0\""
            + " xmlns:xmi=\"http://www.omg.org/XMI\" xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\""
            + " xmlns:design=\"http://pollex.org/model/design\"";
    private static final String CLOSE = "\n</design:Design>\n";

    static Stream<Arguments> cases() {
        return Stream.of(
                bad("", Reason.DAMAGED, "the file is empty; restore this design from a copy."),
                bad(" \n\t ", Reason.DAMAGED, "the file is empty"),
                bad("\u007fELF\u0000\u0001", Reason.DAMAGED, "does not begin as XML"),
                bad("PK\u0003\u0004", Reason.DAMAGED, "check that it is the right file."),
                bad("<a>\n<\u0000", Reason.DAMAGED, "line 2 holds zero bytes; restore this design from a copy."),
                bad("<?xml version=\"1.0\" encoding=\"ISO-8859-1\"?><a/>", Reason.DAMAGED, "save it as UTF-8"),
                bad(OPEN, Reason.DAMAGED, "the file ends too early, in line 2; restore this design from a copy."),
                bad(OPEN + " format=\"1\">\n<sides name=\"fro", Reason.DAMAGED, "the file ends too early, in line 3"),
                bad(OPEN + " format=\"1\">\n<sides name=\"front\">", Reason.DAMAGED, "the file ends too early"),
                bad(OPEN + " format=\"1\">\n<sides name=\"front\"></side>\n" + CLOSE, Reason.DAMAGED,
                        "damaged in line 3"),
                bad(OPEN + " format=\"1\"/>\n<more/>", Reason.DAMAGED, "damaged in line 3"),
                bad(design("name=\"a\" name=\"b\"", ""), Reason.DAMAGED, "damaged in line 2"),
                bad("<svg xmlns=\"http://www.w3.org/2000/svg\"/>", Reason.WRONG_KIND,
                        "begins with <svg>, which is no design of Pollex; check that it is the right file."),
                bad("<job:Job xmlns:job=\"http://pollex.org/model/job\" format=\"1\"/>", Reason.WRONG_KIND,
                        "holds a job, not a design; if that is meant, its name ends in .job."),
                bad("<c:Catalogue xmlns:c=\"http://pollex.org/model/catalogue\"/>", Reason.WRONG_KIND,
                        "its name ends in .catalogue."),
                bad("<Design format=\"1\"/>", Reason.WRONG_KIND, "begins with <Design>"),
                bad("<xmi:XMI xmlns:xmi=\"http://www.omg.org/XMI\"/>", Reason.WRONG_KIND, "begins with <XMI>"),
                bad(OPEN + " format=\"3\" future=\"yes\"><hologram/>" + CLOSE, Reason.NEWER,
                        "was written by a newer Pollex (format 3, this one reads up to 1); update Pollex to open it."),
                bad(OPEN + " format=\"one\"/>", Reason.BAD_VALUE, "line 2: format is \"one\""),
                bad(OPEN + " format=\"-1\"/>", Reason.BAD_VALUE, "format is \"-1\""),
                bad(OPEN + " format=\"99999999999\"/>", Reason.BAD_VALUE, "must be a whole number"),
                bad(design("glitter=\"much\"", ""), Reason.UNKNOWN_CONTENT,
                        "line 2, <Design> is or holds an unknown attribute \"glitter\"; correct or remove it, since "
                                + "saving would lose it."),
                bad(design("", "<sides name=\"front\">\n<glitter/></sides>"), Reason.UNKNOWN_CONTENT,
                        "line 4, <glitter> is or holds an unknown element inside <sides>"),
                bad(design("", "stray words"), Reason.UNKNOWN_CONTENT, "text \"stray words\""),
                bad(design("", "<inks>red<b/></inks>"), Reason.UNKNOWN_CONTENT, "line 3, <b>"),
                bad(design("", "<inks href=\"other.design#/\"/>"), Reason.UNKNOWN_CONTENT, "attribute \"href\""),
                bad(design("", "<sides href=\"file:///etc/passwd#/\"/>"), Reason.UNKNOWN_CONTENT,
                        "attribute \"href\""),
                bad(design("", "<sides name=\"front\" xmi:id=\"_a\"/>"), Reason.UNKNOWN_CONTENT, "XMI}id"),
                bad(design("", "<design:sides name=\"front\"/>"), Reason.UNKNOWN_CONTENT, "<sides>"),
                bad(design("", "<name>a</name>"), Reason.UNKNOWN_CONTENT, "<name>"),
                bad(design("", "<sides name=\"front\"/><sides name=\"front\"/>"), Reason.BAD_VALUE,
                        "has two sides named \"front\"; rename or remove one."),
                bad(design("", "<sides/>"), Reason.BAD_VALUE, "has a side without a name; call it front or back."),
                bad(marks("id=\"a\"", "id=\"a\""), Reason.BAD_VALUE,
                        "line 3, <marks> has the id \"a\", which another element has already; give it one of its own."),
                bad(design("", "<sides name=\"f\"><layers><marks/></layers></sides>"), Reason.BAD_VALUE,
                        "does not say what it is; give it an xsi:type"),
                bad(design("", "<sides name=\"f\"><layers><marks xsi:type=\"design:Mark\"/></layers></sides>"),
                        Reason.UNKNOWN_CONTENT, "type \"Mark\""),
                bad(design("", "<sides name=\"f\"><layers><marks xsi:type=\"design:Side\"/></layers></sides>"),
                        Reason.UNKNOWN_CONTENT, "type \"Side\""),
                bad(design("", "<sides name=\"f\"><layers><marks xsi:type=\"nowhere:Hologram\"/></layers></sides>"),
                        Reason.UNKNOWN_CONTENT, "type \"Hologram\""),
                bad(marks("x=\"1,5\""), Reason.BAD_VALUE,
                        "line 3, <marks>: x is \"1,5\" but must be a number such as 1.5; correct it."),
                bad(marks("x=\"NaN\""), Reason.BAD_VALUE, "x is \"NaN\""),
                bad(marks("x=\"Infinity\""), Reason.BAD_VALUE, "x is \"Infinity\""),
                bad(marks("x=\"1e999\""), Reason.BAD_VALUE, "x is \"1e999\""),
                bad(marks("x=\"0x1p3\""), Reason.BAD_VALUE, "x is \"0x1p3\""),
                bad(marks("x=\"\""), Reason.BAD_VALUE, "x is \"\""),
                bad(marks("scale=\"0\""), Reason.BAD_VALUE, "scale is \"0\" but must be a number above 0"),
                bad(marks("scale=\"-2\""), Reason.BAD_VALUE, "scale is \"-2\""),
                bad(marks("mirror=\"perhaps\""), Reason.BAD_VALUE, "mirror is \"perhaps\" but must be true or false"),
                bad(marks("ground=\"white\""), Reason.BAD_VALUE, "a colour such as #ffffff, or none"),
                bad(marks("sha256=\"12\""), Reason.BAD_VALUE, "64 digits 0-9 a-f"),
                bad(marks("name=\"" + "n".repeat(500) + "\" x=\"" + "9".repeat(50_000) + "y\""), Reason.BAD_VALUE,
                        "x is \"" + "9".repeat(60) + "...\""),
                bad("<?xml version=\"1.1\"?>" + OPEN.substring(OPEN.indexOf('\n')) + " format=\"1\" name=\"&#1;\"/>",
                        Reason.BAD_VALUE, "name is \"?\" but must be text without control characters"));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void saysWhatIsWrong(String text, Reason reason, String part) {
        StoreException e = assertThrows(StoreException.class, () -> ModelFiles.DESIGNS.read(
                new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), "a.design"));
        assertTrue(e.getMessage().contains(part), e.getMessage());
        assertEquals(reason, e.reason(), e.getMessage());
        assertSentence(e);
    }

    @Test
    void catalogueAndJobValues() {
        assertValue("<c:Catalogue xmlns:c=\"http://pollex.org/model/catalogue\" format=\"1\">\n<inks id=\"r\" "
                + "lab=\"120 0 0\"/></c:Catalogue>", ModelFiles.CATALOGUES,
                "line 2, <inks>: lab is \"120 0 0\" but must be three numbers L* a* b*");
        assertValue("<c:Catalogue xmlns:c=\"http://pollex.org/model/catalogue\" format=\"1\">\n<inks lab=\"1 0 0\"/>"
                + "</c:Catalogue>", ModelFiles.CATALOGUES, "line 2, <inks> has no id; give it one.");
        assertValue("<c:Catalogue xmlns:c=\"http://pollex.org/model/catalogue\" format=\"1\">"
                + "<inks id=\"a\" kind=\"magic\"/></c:Catalogue>", ModelFiles.CATALOGUES,
                "one of spot, process, white");
        assertValue("<c:Catalogue xmlns:c=\"http://pollex.org/model/catalogue\" format=\"1\">"
                + "<methods id=\"a\" lineMin=\"-0.1\"/></c:Catalogue>", ModelFiles.CATALOGUES, "a number not below 0");
        assertValue("<c:Catalogue xmlns:c=\"http://pollex.org/model/catalogue\" format=\"1\"><materials id=\"a\">"
                + "<texture/>\n<texture/></materials></c:Catalogue>", ModelFiles.CATALOGUES,
                "line 2, <texture> is the second one inside <materials>");
        assertValue("<j:Job xmlns:j=\"http://pollex.org/model/job\" format=\"1\" due=\"31.5.2026\"/>", ModelFiles.JOBS,
                "due is \"31.5.2026\" but must be a date such as 2026-05-31; correct it.");
        assertValue("<j:Job xmlns:j=\"http://pollex.org/model/job\" format=\"1\" due=\"2026-02-30\"/>",
                ModelFiles.JOBS, "due is \"2026-02-30\"");
        assertValue("<j:Job xmlns:j=\"http://pollex.org/model/job\" format=\"1\"><waivers when=\"noon\"/></j:Job>",
                ModelFiles.JOBS, "a moment such as 2026-05-31T09:30:00Z");
        assertValue("<j:Job xmlns:j=\"http://pollex.org/model/job\" format=\"1\" quantity=\"many\"/>", ModelFiles.JOBS,
                "quantity is \"many\"");
    }

    @Test
    void bytesThatAreNotUtf8() {
        byte[] bytes = (design("name=\"x\"", "").replace("x\"", "\u00fc\"")).getBytes(StandardCharsets.ISO_8859_1);
        StoreException e = assertThrows(StoreException.class,
                () -> ModelFiles.DESIGNS.read(new ByteArrayInputStream(bytes), "a.design"));
        assertEquals("a.design: line 2 holds bytes that are not UTF-8; restore this design from a copy.",
                e.getMessage());
    }

    @Test
    void commentsAndByteOrderMarkDoNotHurt() throws Exception {
        String text = "\uFEFF" + design("name=\"kept\"", "<!-- by hand --><?note this?>");
        assertEquals("kept", ModelFiles.DESIGNS.read(
                new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), "a.design").getName());
    }

    private static void assertValue(String text, ModelStore<?> store, String part) {
        StoreException e = assertThrows(StoreException.class,
                () -> store.read(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), "a." + store.kind()));
        assertTrue(e.getMessage().contains(part), e.getMessage());
        assertEquals(Reason.BAD_VALUE, e.reason());
        assertSentence(e);
    }

    static void assertSentence(StoreException e) {
        String message = e.getMessage();
        assertTrue(message.startsWith(Quoted.clean(e.file()) + ": "), message);
        assertTrue(message.endsWith("."), message);
        assertTrue(message.chars().noneMatch(Character::isISOControl), message);
        assertTrue(message.length() < e.file().length() + 400, message);
    }

    private static Arguments bad(String text, Reason reason, String part) {
        return Arguments.of(text, reason, part);
    }

    static String design(String attributes, String content) {
        return OPEN + " format=\"1\" " + attributes + ">\n" + content + CLOSE;
    }

    private static String marks(String... attributes) {
        StringBuilder text = new StringBuilder("<sides name=\"front\"><layers>");
        for (String each : attributes) {
            text.append("<marks xsi:type=\"design:Placement\" ").append(each).append("/>");
        }
        return design("", text.append("</layers></sides>").toString());
    }
}
