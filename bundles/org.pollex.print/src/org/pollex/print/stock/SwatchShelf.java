/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.stock;

import java.io.IOException;
import java.lang.ref.SoftReference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.pollex.model.catalogue.GreyPatch;
import org.pollex.model.catalogue.PhotoArea;
import org.pollex.model.catalogue.PhotoUnit;
import org.pollex.model.catalogue.Texture;

/**
 * Patterns of photographs that were used lately: a photograph is read once, and anew when its file or what the
 * catalogue says of it changes. Given back when memory is short. Safe for threads.
 */
final class SwatchShelf {

    private static final int KEPT = 8;

    private final Map<Key, SoftReference<SwatchPattern>> known = new LinkedHashMap<>(16, 0.75f, true) {

        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, SoftReference<SwatchPattern>> eldest) {
            return size() > KEPT;
        }
    };

    private record Key(Path file, FileTime changed, long size, double scale, Area crop, Area grey, double lightness) {

        static Key of(Path file, Texture texture) throws IOException {
            GreyPatch grey = texture.getGrey();
            return new Key(file, Files.getLastModifiedTime(file), Files.size(file), texture.getScale(),
                    Area.of(texture.getCrop()), Area.of(grey), grey == null ? 0 : grey.getLightness());
        }
    }

    private record Area(List<Double> box, PhotoUnit unit) {

        static Area of(PhotoArea area) {
            return area == null ? null : new Area(List.of(area.getX(), area.getY(), area.getWidth(),
                    area.getHeight()), area.getUnit());
        }
    }

    /**
     * The pattern of a photograph.
     *
     * @throws IOException as {@link SwatchPattern#read} does
     */
    SwatchPattern read(Path file, Texture texture) throws IOException {
        if (!Files.isRegularFile(file)) {
            return SwatchPattern.read(file, texture);
        }
        Key key = Key.of(file, texture);
        SwatchPattern pattern;
        synchronized (known) {
            SoftReference<SwatchPattern> held = known.get(key);
            pattern = held == null ? null : held.get();
        }
        if (pattern == null) {
            pattern = SwatchPattern.read(file, texture);
            synchronized (known) {
                known.put(key, new SoftReference<>(pattern));
            }
        }
        return pattern;
    }
}
