/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.bench.geometry;

import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.jar.JarEntry;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.shape.Polygons;

/**
 * Real art: a square sheet, 28 mm wide, of icons of the Bootstrap Icons set (MIT licence), flattened with a chord
 * error of 1 micrometre and made valid. Icons are taken by the first word of their name, all of them plain things.
 */
public final class IconSheet {

    private static final String FOLDER = "META-INF/resources/webjars/bootstrap-icons/1.13.1/icons/";
    private static final double WIDTH = 28;
    private static final double CHORD_ERROR = 0.001;
    private static final Set<String> THINGS = Set.of("alarm", "award", "bag", "bank", "basket", "bell", "bicycle",
            "binoculars", "book", "boombox", "box", "briefcase", "brightness", "brush", "bucket", "building", "bus",
            "cake", "calculator", "calendar", "camera", "car", "cart", "clipboard", "clock", "cloud", "compass", "cup",
            "dice", "door", "droplet", "egg", "envelope", "eye", "eyeglasses", "feather", "film", "flag", "flower",
            "folder", "gear", "gem", "gift", "globe", "hammer", "hand", "heart", "hospital", "hourglass", "house",
            "image", "journal", "key", "keyboard", "lamp", "lightbulb", "lightning", "lock", "magnet", "map", "mic",
            "moon", "mouse", "music", "newspaper", "palette", "pencil", "person", "phone", "piggy", "plug", "printer",
            "puzzle", "rainbow", "receipt", "rocket", "router", "safe", "scissors", "shield", "shop", "signpost",
            "snow", "star", "stopwatch", "suitcase", "sun", "telephone", "tools", "train", "trash", "tree", "trophy",
            "truck", "umbrella", "wallet", "watch", "water", "wrench");
    private static final Pattern PATH = Pattern.compile("<path([^>]*?)/>", Pattern.DOTALL);
    private static final Pattern DATA = Pattern.compile("\\bd=\"([^\"]*)\"");

    private IconSheet() {
    }

    /** A sheet of n by n icons. */
    public static Geometry sheet(int n) {
        List<String> icons = icons();
        double cell = WIDTH / n;
        List<Geometry> pieces = new ArrayList<>();
        for (int i = 0; i < n * n; i++) {
            String svg = icons.get((int) ((long) i * icons.size() / (n * n)));
            AffineTransform place = AffineTransform.getTranslateInstance(i % n * cell + 0.03 * cell,
                    i / n * cell + 0.03 * cell);
            place.scale(0.94 * cell / 16, 0.94 * cell / 16);
            pieces.add(area(svg, place));
        }
        return Polygons.withoutSlivers(Polygons.union(pieces), 0.003);
    }

    private static List<String> icons() {
        URL one = IconSheet.class.getClassLoader().getResource(FOLDER + "alarm.svg");
        TreeMap<String, String> icons = new TreeMap<>();
        try {
            var jar = ((JarURLConnection) one.openConnection()).getJarFile();
            for (JarEntry entry : java.util.Collections.list(jar.entries())) {
                String name = entry.getName().substring(entry.getName().lastIndexOf('/') + 1);
                if (name.endsWith(".svg") && THINGS.contains(name.split("[-.]")[0])) {
                    try (InputStream in = jar.getInputStream(entry)) {
                        icons.put(name, new String(in.readAllBytes(), StandardCharsets.UTF_8));
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new ArrayList<>(icons.values());
    }

    private static Geometry area(String svg, AffineTransform place) {
        Area area = new Area();
        Matcher paths = PATH.matcher(svg);
        while (paths.find()) {
            Matcher data = DATA.matcher(paths.group(1));
            if (data.find()) {
                boolean evenOdd = paths.group(1).contains("evenodd");
                area.add(new Area(place.createTransformedShape(IconPath.parse(data.group(1), evenOdd))));
            }
        }
        List<Coordinate> ring = new ArrayList<>();
        Geometry whole = Polygons.empty();
        double[] c = new double[6];
        for (PathIterator it = area.getPathIterator(null, CHORD_ERROR); !it.isDone(); it.next()) {
            int kind = it.currentSegment(c);
            if (kind == PathIterator.SEG_CLOSE || kind == PathIterator.SEG_MOVETO) {
                if (ring.size() > 2) {
                    Geometry piece = Polygons.valid(Polygons.polygon(ring.toArray(new Coordinate[0])));
                    // The rings of an AWT area do not cross, so even-odd is what it means.
                    whole = Polygons.symmetricDifference(whole, piece);
                }
                ring.clear();
            }
            if (kind != PathIterator.SEG_CLOSE) {
                ring.add(new Coordinate(c[0], c[1]));
            }
        }
        return whole;
    }
}
