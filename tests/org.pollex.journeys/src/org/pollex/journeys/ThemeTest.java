/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Control;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.app.look.Appearance;
import org.pollex.colour.Contrast;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignSession;

/** The window in the dark and in the light appearance: text of our own reads on its ground in both. */
class ThemeTest {

    /** W3C WCAG 2.1, success criterion 1.4.3: text. */
    private static final double TEXT = 4.5;

    @TempDir
    Path folder;

    @AfterEach
    void close() {
        Window.closeEditors();
        Appearance.SYSTEM.choose();
        Window.idle();
    }

    private static int rgb(RGB colour) {
        return colour.red << 16 | colour.green << 8 | colour.blue;
    }

    private static double contrast(Control control) {
        return Contrast.ratio(rgb(control.getForeground().getRGB()), rgb(control.getBackground().getRGB()));
    }

    @Test
    void darkAndLight() throws Exception {
        Window.fill();
        Appearance.DARK.choose();
        Window.idle();
        assertTrue(Appearance.dark());
        DesignEditor editor = (DesignEditor) Window.open(Samples.ferry(folder, "night"));
        DesignSession session = editor.getAdapter(DesignSession.class);
        Window.until("the print is there", session::fresh);
        Window.until("it is measured", () -> editor.live().readout().contains("0.12 of"));
        Window.idle();
        Picture.take(Window.display(), "theme-dark");
        reads();
        Control canvas = editor.page().viewer().getControl();
        double dark = Contrast.luminance(rgb(canvas.getBackground().getRGB()));
        Appearance.LIGHT.choose();
        Window.idle();
        assertFalse(Appearance.dark());
        Picture.take(Window.display(), "theme-light");
        reads();
        assertTrue(Contrast.luminance(rgb(canvas.getBackground().getRGB())) > dark + 0.3, "the drawing stays dark");
    }

    private static void reads() {
        CLabel line = FindingsViewTest.find(Window.window().getShell(), CLabel.class,
                each -> each.getText().contains("Line 0.12"));
        assertTrue(contrast(line) >= TEXT, "the readout has a contrast of " + contrast(line));
    }
}
