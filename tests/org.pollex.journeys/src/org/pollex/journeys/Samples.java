/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Placement;
import org.pollex.model.design.PlainShape;
import org.pollex.model.design.ShapeKind;
import org.pollex.model.design.Side;
import org.pollex.model.design.TextLine;
import org.pollex.model.store.ArtFile;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.ModelFiles;

/** Designs to journey through, made in a folder of the test: a lighthouse ferry line and its small fleet. */
final class Samples {

    private static final String BOAT = """
            <svg xmlns="http://www.w3.org/2000/svg" width="12mm" height="10mm" viewBox="0 0 120 100">
              <path d="M10 70h100l-18 22H28z" fill="#1b3a5c"/>
              <path d="M56 64V8l-34 50z" fill="#1b3a5c"/>
              <path d="M63 64V20l26 38z" fill="#1b3a5c"/>
              <path d="M4 96h112" stroke="#1b3a5c" stroke-width="1.2" fill="none"/>
            </svg>
            """;

    private Samples() {
    }

    /** A design with a boat on the front and a line of text on the back. */
    static Path ferry(Path folder, String name) throws Exception {
        Files.createDirectories(folder);
        Path art = folder.resolve("boat.svg");
        Files.write(art, BOAT.getBytes(StandardCharsets.UTF_8));
        Path file = folder.resolve(name + ".design");
        Design design = DesignFactory.eINSTANCE.createDesign();
        design.setName("Ferry " + name);
        design.setProduct("standard-pick");
        design.setMaterial("solid-yellow");
        design.setMethod("pad-one-colour");
        design.getInks().add("navy");
        ArtFile adopted = ArtFiles.adopt(file, art);
        Placement boat = DesignFactory.eINSTANCE.createPlacement();
        boat.setName("Boat");
        boat.setArt(adopted.path());
        boat.setSha256(adopted.sha256());
        boat.setY(-3);
        side(design, "front").getMarks().add(boat);
        TextLine text = DesignFactory.eINSTANCE.createTextLine();
        text.setText("Lamp Rock");
        text.setInk("navy");
        text.setY(-4);
        Layer back = side(design, "back");
        back.getMarks().add(text);
        PlainShape dot = DesignFactory.eINSTANCE.createPlainShape();
        dot.setKind(ShapeKind.ELLIPSE);
        dot.setWidth(3);
        dot.setHeight(3);
        dot.setInk("navy");
        dot.setY(2);
        back.getMarks().add(dot);
        ModelFiles.DESIGNS.create(design, file);
        return file;
    }

    /** A large name, a web address and a tour on the front, too small to print beside it; the back is bare. */
    static Path band(Path folder, String name) throws Exception {
        Files.createDirectories(folder);
        Path file = folder.resolve(name + ".design");
        Design design = DesignFactory.eINSTANCE.createDesign();
        design.setName("Tide Bell");
        design.setProduct("standard-pick");
        design.setMaterial("solid-yellow");
        design.setMethod("pad-one-colour");
        design.getInks().add("navy");
        Layer front = side(design, "front");
        front.getMarks().add(line("TIDE BELL", -6, 4.2));
        front.getMarks().add(line("tidebell.example", -2, 1.3));
        front.getMarks().add(line("tour of twenty harbours", 0, 1.3));
        ModelFiles.DESIGNS.create(design, file);
        return file;
    }

    private static TextLine line(String words, double y, double size) {
        TextLine line = DesignFactory.eINSTANCE.createTextLine();
        line.setText(words);
        line.setInk("navy");
        line.setSize(size);
        line.setY(y);
        return line;
    }

    /** A design whose art is a net of 121 wavy rings, 0.12 mm thin at every place, with more than 10,000 corners. */
    static Path rings(Path folder, String name) throws Exception {
        StringBuilder net = new StringBuilder();
        for (int i = 0; i < 121; i++) {
            ring(net, 0.75 + i % 11 * 1.35, 0.75 + i / 11 * 1.35, 0.56, 46);
            ring(net, 0.75 + i % 11 * 1.35, 0.75 + i / 11 * 1.35, 0.44, 42);
        }
        Files.createDirectories(folder);
        Path art = folder.resolve("rings.svg");
        Files.writeString(art, "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"15mm\" height=\"15mm\" "
                + "viewBox=\"0 0 15 15\"><path fill-rule=\"evenodd\" fill=\"#1b3a5c\" d=\"" + net + "\"/></svg>");
        Path file = folder.resolve(name + ".design");
        Design design = DesignFactory.eINSTANCE.createDesign();
        design.setName("Net of rings");
        design.setProduct("standard-pick");
        design.setMaterial("solid-yellow");
        design.setMethod("pad-one-colour");
        design.getInks().add("navy");
        ArtFile adopted = ArtFiles.adopt(file, art);
        Placement rings = DesignFactory.eINSTANCE.createPlacement();
        rings.setName("Rings");
        rings.setArt(adopted.path());
        rings.setSha256(adopted.sha256());
        rings.setY(-3);
        side(design, "front").getMarks().add(rings);
        ModelFiles.DESIGNS.create(design, file);
        return file;
    }

    private static void ring(StringBuilder net, double x, double y, double radius, int corners) {
        for (int i = 0; i < corners; i++) {
            double turn = 2 * Math.PI * i / corners;
            double wave = radius * (1 + 0.05 * Math.sin(6 * turn));
            net.append(String.format(java.util.Locale.ROOT, "%s%.4f %.4f", i == 0 ? "M" : "L",
                    x + wave * Math.cos(turn), y + wave * Math.sin(turn)));
        }
        net.append('Z');
    }

    private static Layer side(Design design, String name) {
        Side side = DesignFactory.eINSTANCE.createSide();
        side.setName(name);
        Layer layer = DesignFactory.eINSTANCE.createLayer();
        side.getLayers().addAll(List.of(layer));
        design.getSides().add(side);
        return layer;
    }
}
