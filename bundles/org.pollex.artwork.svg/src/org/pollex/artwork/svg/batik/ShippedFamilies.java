/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.batik;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.TextAttribute;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.text.AttributedCharacterIterator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;

import org.apache.batik.bridge.FontFace;
import org.apache.batik.bridge.FontFamilyResolver;
import org.apache.batik.gvt.font.AWTGVTFont;
import org.apache.batik.gvt.font.GVTFont;
import org.apache.batik.gvt.font.GVTFontFace;
import org.apache.batik.gvt.font.GVTFontFamily;
import org.pollex.artwork.font.FontMatch;
import org.pollex.artwork.font.ShippedFont;
import org.pollex.artwork.font.ShippedFonts;

/**
 * The fonts that Batik may draw with: the shipped ones and no other of the machine. A list of families in the file is
 * replaced by a name made up here, so that the choice of the stand-in is the same as everywhere in the suite.
 */
final class ShippedFamilies implements FontFamilyResolver {

    private static final String ALIAS = "shipped-";

    private final ShippedFonts fonts = ShippedFonts.standard();
    private final Map<String, String> lists = new LinkedHashMap<>();
    private final Map<String, Font> loaded = new HashMap<>();

    /** The name to write instead of a list of families. */
    String alias(String families) {
        return lists.entrySet().stream().filter(e -> e.getValue().equals(families)).map(Map.Entry::getKey).findFirst()
                .orElseGet(() -> {
                    String alias = ALIAS + lists.size();
                    lists.put(alias, families);
                    return alias;
                });
    }

    /** The shipped font for a list of families. */
    FontMatch match(String families, boolean bold, boolean italic) {
        return fonts.match(families, bold, italic);
    }

    @Override
    public GVTFontFamily resolve(String name) {
        return new Family(lists.getOrDefault(name, name));
    }

    @Override
    public GVTFontFamily resolve(String name, FontFace face) {
        return resolve(name);
    }

    @Override
    public GVTFontFamily loadFont(InputStream in, FontFace face) throws IOException {
        throw new IOException("no font but the shipped ones is used");
    }

    @Override
    public GVTFontFamily getDefault() {
        return new Family("sans-serif");
    }

    @Override
    public GVTFontFamily getFamilyThatCanDisplay(char c) {
        return getDefault();
    }

    private Font awt(ShippedFont font) {
        return loaded.computeIfAbsent(font.name(), name -> {
            try {
                return Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(font.bytes()));
            } catch (FontFormatException | IOException e) {
                throw new IllegalStateException("The shipped font " + name + " cannot be read.", e);
            }
        });
    }

    /** A font of Batik that knows which shipped font it is. */
    static final class Cut extends AWTGVTFont {

        private final FontMatch match;
        private final Font font;

        Cut(Font font, FontMatch match) {
            super(font);
            this.font = font;
            this.match = match;
        }

        FontMatch match() {
            return match;
        }

        @Override
        public GVTFont deriveFont(float size) {
            return new Cut(font.deriveFont(size), match);
        }
    }

    private final class Family implements GVTFontFamily {

        private final String families;

        Family(String families) {
            this.families = families;
        }

        @Override
        public String getFamilyName() {
            return families;
        }

        @Override
        public GVTFontFace getFontFace() {
            return new GVTFontFace(families);
        }

        @Override
        public GVTFont deriveFont(float size, AttributedCharacterIterator text) {
            return deriveFont(size, text.getAttributes());
        }

        @Override
        @SuppressWarnings("rawtypes")
        public GVTFont deriveFont(float size, Map attributes) {
            boolean bold = attributes.get(TextAttribute.WEIGHT) instanceof Number w
                    && w.floatValue() > TextAttribute.WEIGHT_MEDIUM;
            boolean italic = attributes.get(TextAttribute.POSTURE) instanceof Number p && p.floatValue() > 0;
            FontMatch match = match(families, bold, italic);
            return new Cut(awt(match.font()).deriveFont(size), match);
        }

        @Override
        public boolean isComplex() {
            return false;
        }
    }
}
