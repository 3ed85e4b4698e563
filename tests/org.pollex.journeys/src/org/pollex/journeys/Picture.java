/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.widgets.Display;

/**
 * What did the screen show at this point of the journey?
 *
 * <p>Takes the whole screen in pixels, since a window cannot see what lies over it. The folder is given by the system
 * property {@value #FOLDER}; without it the pictures go to the working directory.
 */
final class Picture {

    static final String FOLDER = "org.pollex.journeys.pictures";

    private Picture() {
    }

    /** Writes the screen as a PNG of the given name and returns its pixels. */
    static ImageData take(Display display, String name) throws Exception {
        Image image = new Image(display, display.getBounds());
        GC gc = new GC(display);
        try {
            gc.copyArea(image, 0, 0);
        } finally {
            gc.dispose();
        }
        ImageData data = image.getImageData();
        image.dispose();
        Path folder = Path.of(System.getProperty(FOLDER, "."));
        Files.createDirectories(folder);
        ImageLoader loader = new ImageLoader();
        loader.data = new ImageData[] {data};
        loader.save(folder.resolve(name + ".png").toString(), SWT.IMAGE_PNG);
        return data;
    }
}
