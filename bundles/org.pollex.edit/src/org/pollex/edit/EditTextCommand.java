/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import java.util.Map;
import org.pollex.model.design.DesignPackage;
import org.pollex.model.design.TextLine;

/** Changes words, font, size, spacing and ink of a line of text. */
public final class EditTextCommand extends FeatureCommand {

    /**
     * Everything that a line of text can be given.
     *
     * @param font     family of a shipped font
     * @param size     size of the em square in mm, above 0
     * @param spacing  extra space between letters in mm
     * @param ink      id of the ink, or bare
     */
    public record Style(String text, String font, boolean bold, boolean italic, double size, double spacing,
            String ink) {

        public Style {
            if (!(size > 0) || !Double.isFinite(size) || !Double.isFinite(spacing)) {
                throw new IllegalArgumentException("The size of text must be above 0 mm, not " + size + ".");
            }
        }

        /** What the line has now. */
        public static Style of(TextLine line) {
            return new Style(text(line.getText()), text(line.getFont()), line.isBold(), line.isItalic(),
                    line.getSize(), line.getSpacing(), text(line.getInk()));
        }

        private static String text(String value) {
            return value == null ? "" : value;
        }
    }

    public EditTextCommand(TextLine line, Style style) {
        super("Edit text", line, Map.of(
                DesignPackage.Literals.TEXT_LINE__TEXT, style.text(),
                DesignPackage.Literals.TEXT_LINE__FONT, style.font(),
                DesignPackage.Literals.TEXT_LINE__BOLD, style.bold(),
                DesignPackage.Literals.TEXT_LINE__ITALIC, style.italic(),
                DesignPackage.Literals.TEXT_LINE__SIZE, style.size(),
                DesignPackage.Literals.TEXT_LINE__SPACING, style.spacing(),
                DesignPackage.Literals.TEXT_LINE__INK, style.ink()));
    }
}
