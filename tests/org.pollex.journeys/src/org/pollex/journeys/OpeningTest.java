/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IPerspectiveDescriptor;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.Test;

/** Does the workbench open, under its own name, with the making perspective, and is something painted? */
class OpeningTest {

    private final IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();

    @Test
    void theMakingPerspectiveIsOpen() {
        assertNotNull(window, "no workbench window is active");
        IPerspectiveDescriptor perspective = window.getActivePage().getPerspective();
        assertEquals("org.pollex.app.making", perspective.getId());
        assertEquals("Make", perspective.getLabel());
    }

    @Test
    void theWindowBearsTheName() {
        assertTrue(window.getShell().getText().contains("Pollex"), window.getShell().getText());
        assertEquals(6, window.getShell().getImages().length, "sizes of the window icon");
    }

    @Test
    void everyMenuIsThere() {
        List<String> menus = Arrays.stream(window.getShell().getMenuBar().getItems()).map(MenuItem::getText)
                .map(text -> text.replace("&", "")).toList();
        assertTrue(menus.containsAll(List.of("File", "Edit", "View", "Design", "Outputs", "Window", "Help")),
                menus.toString());
    }

    @Test
    void theWindowIsPainted() throws Exception {
        Shell shell = window.getShell();
        shell.setMaximized(true);
        shell.forceActive();
        settle(shell.getDisplay());
        ImageData picture = Picture.take(shell.getDisplay(), "opening");
        Set<Integer> colours = new HashSet<>();
        for (int y = 0; y < picture.height; y += 3) {
            for (int x = 0; x < picture.width; x += 3) {
                colours.add(picture.getPixel(x, y));
            }
        }
        assertTrue(colours.size() > 8, "the screen shows only " + colours.size() + " colours");
    }

    private static void settle(Display display) throws InterruptedException {
        for (int i = 0; i < 20; i++) {
            while (display.readAndDispatch()) {
                // everything that is due gets its turn
            }
            Thread.sleep(50);
        }
    }
}
