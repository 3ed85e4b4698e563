/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.inks.read;

import java.util.HashMap;
import java.util.Map;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;

/** Small images of one colour each, kept until disposed. */
final class Chips {

    private static final int WIDTH = 28;
    private static final int HEIGHT = 16;

    private final Device device;
    private final Map<Integer, Image> images = new HashMap<>();

    Chips(Device device) {
        this.device = device;
    }

    /** The image of a colour as a screen shows it. */
    Image of(Lab colour) {
        return images.computeIfAbsent(Srgb.of(colour), rgb -> {
            Image image = new Image(device, WIDTH, HEIGHT);
            GC gc = new GC(image);
            gc.setBackground(new Color(rgb >> 16 & 0xff, rgb >> 8 & 0xff, rgb & 0xff));
            gc.fillRectangle(0, 0, WIDTH, HEIGHT);
            gc.dispose();
            return image;
        });
    }

    void dispose() {
        images.values().forEach(Image::dispose);
        images.clear();
    }
}
