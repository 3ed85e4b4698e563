/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.worker;

import java.io.File;
import java.net.URI;
import java.net.URISyntaxException;
import java.security.CodeSource;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Finds the class path of the separate process from where the classes it needs came from. On a plain JVM that is the
 * class path of this one; under OSGi each bundle's jar or folder.
 */
final class WorkerPath {

    /** One class of every jar or bundle that reading needs; those that are not there are not needed. */
    private static final List<String> NEEDED = List.of("org.pollex.artwork.ArtReader",
            "org.pollex.artwork.svg.worker.WorkerMain", "org.apache.batik.bridge.BridgeContext",
            "org.apache.batik.gvt.GraphicsNode", "org.apache.xmlgraphics.java2d.AbstractGraphics2D",
            "org.w3c.dom.svg.SVGDocument");
    /** Classes that only the artwork bundle sees. */
    private static final List<String> NEEDED_BY_ARTWORK = List.of("org.apache.fontbox.ttf.TTFParser",
            "org.apache.pdfbox.io.RandomAccessReadBuffer", "org.apache.commons.logging.LogFactory",
            "org.pollex.geometry.shape.Polygons", "org.pollex.colour.Lab");

    private WorkerPath() {
    }

    static String classPath() {
        Set<String> places = new LinkedHashSet<>();
        ClassLoader own = WorkerPath.class.getClassLoader();
        for (String name : NEEDED) {
            add(name, own, places);
        }
        ClassLoader artwork = org.pollex.artwork.ArtReader.class.getClassLoader();
        for (String name : NEEDED_BY_ARTWORK) {
            add(name, artwork, places);
        }
        if (own == ClassLoader.getSystemClassLoader()) {
            places.addAll(List.of(System.getProperty("java.class.path").split(File.pathSeparator)));
        }
        return String.join(File.pathSeparator, places);
    }

    private static void add(String name, ClassLoader loader, Set<String> places) {
        try {
            CodeSource source = Class.forName(name, false, loader).getProtectionDomain().getCodeSource();
            if (source == null || source.getLocation() == null) {
                return;
            }
            String location = source.getLocation().toString().replaceFirst("^reference:", "");
            File place = new File(new URI(location.replace(" ", "%20")));
            if (place.isDirectory()) {
                // A bundle that runs from its project has its classes in a folder of its own.
                for (String folder : List.of("target/classes", "bin")) {
                    if (new File(place, folder).isDirectory()) {
                        places.add(new File(place, folder).getPath());
                    }
                }
            }
            places.add(place.getPath());
        } catch (ClassNotFoundException | LinkageError | URISyntaxException | IllegalArgumentException e) {
            // Not there, or not a file: the separate process does without and says so if it cannot.
        }
    }
}
