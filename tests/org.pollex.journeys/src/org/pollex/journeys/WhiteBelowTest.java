/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.draw2d.Viewport;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignSession;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Placement;
import org.pollex.model.design.Side;
import org.pollex.model.store.ArtFile;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.ModelFiles;

/** A designer looks closely at full colour on black and sees where the white below it ends. */
class WhiteBelowTest {

    private static final String PANEL = """
            <svg xmlns="http://www.w3.org/2000/svg" width="6mm" height="4mm" viewBox="0 0 60 40">
              <path d="M0 0h60v40h-60z" fill="#20a0a0"/>
              <path d="M30 10h20v20h-20z" fill="#101010"/>
              <path d="M5 10h16v1.5h-16z" fill="#ffffff"/>
            </svg>
            """;

    @TempDir
    Path folder;

    @AfterEach
    void close() {
        Window.closeEditors();
    }

    private Path design() throws Exception {
        Path art = folder.resolve("panel.svg");
        Files.write(art, PANEL.getBytes(StandardCharsets.UTF_8));
        Path file = folder.resolve("panel.design");
        Design design = DesignFactory.eINSTANCE.createDesign();
        design.setName("Panel");
        design.setProduct("standard-pick");
        design.setMaterial("solid-black");
        design.setMethod("full-colour-white");
        ArtFile adopted = ArtFiles.adopt(file, art);
        Placement panel = DesignFactory.eINSTANCE.createPlacement();
        panel.setArt(adopted.path());
        panel.setSha256(adopted.sha256());
        panel.setGround("none");
        Side front = DesignFactory.eINSTANCE.createSide();
        front.setName("front");
        Layer layer = DesignFactory.eINSTANCE.createLayer();
        layer.getMarks().add(panel);
        front.getLayers().add(layer);
        design.getSides().add(front);
        ModelFiles.DESIGNS.create(design, file);
        return file;
    }

    @Test
    void showsARimOfColourOnBareStock() throws Exception {
        Window.fill();
        DesignEditor editor = (DesignEditor) Window.open(design());
        DesignSession session = editor.getAdapter(DesignSession.class);
        Window.until("the first print is there", session::fresh);
        Window.idle();
        editor.page().root().getZoomManager().setZoom(14 * 96 / 25400.0);
        Window.idle();
        Viewport port = editor.page().root().getZoomManager().getViewport();
        Rectangle size = port.getClientArea();
        port.setViewLocation(-size.width / 2, -size.height / 2);
        Window.idle();
        ImageData seen = Picture.take(Window.window().getShell().getDisplay(), "white-below");
        int bright = 0;
        int dark = 0;
        for (int y = 0; y < seen.height; y++) {
            for (int x = 0; x < seen.width; x++) {
                RGB rgb = seen.palette.getRGB(seen.getPixel(x, y));
                boolean teal = rgb.green > rgb.red + 15 && rgb.blue > rgb.red + 15
                        && Math.abs(rgb.green - rgb.blue) < 15;
                bright += teal && rgb.green > 120 ? 1 : 0;
                dark += teal && rgb.green < 60 ? 1 : 0;
            }
        }
        assertTrue(bright > 20_000, bright + " pixels of colour on white");
        assertTrue(dark > 1_000, dark + " pixels of colour on bare black, round " + bright + " on white");
    }
}
