/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Random;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Guide;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;
import org.pollex.model.design.PlainShape;
import org.pollex.model.design.Placement;
import org.pollex.model.design.ShapeKind;
import org.pollex.model.design.Side;
import org.pollex.model.design.TextLine;

/** Designs to run commands on, and their bytes. */
final class Designs {

    private static final DesignFactory FACTORY = DesignFactory.eINSTANCE;

    private Designs() {
    }

    /** Two sides, three layers, five marks of every kind. */
    static Design sample() {
        Design design = FACTORY.createDesign();
        design.setName("Sample");
        design.setProduct("standard-pick");
        design.getInks().add("black");
        Side front = side(design, "front");
        Guide guide = FACTORY.createGuide();
        guide.setUpright(true);
        guide.setAt(2);
        front.getGuides().add(guide);
        Layer art = layer(front, "art");
        Placement placement = FACTORY.createPlacement();
        placement.setArt("art/lighthouse.svg");
        placement.setSha256("00");
        placement.setId("m1");
        art.getMarks().add(placement);
        art.getMarks().add(shape("m2", 2, 1));
        Layer words = layer(front, "words");
        words.getMarks().add(text("m3", "Ferry"));
        words.getMarks().add(shape("m4", -3, 4));
        layer(side(design, "back"), "back").getMarks().add(text("m5", "Harbour"));
        return design;
    }

    /** Another design: fewer marks, another material, no method. */
    static Design changed() {
        Design design = sample();
        design.getSides().remove(1);
        design.setMaterial("solid-black");
        design.eUnset(org.pollex.model.design.DesignPackage.Literals.DESIGN__METHOD);
        return design;
    }

    static Side side(Design design, String name) {
        Side side = FACTORY.createSide();
        side.setName(name);
        design.getSides().add(side);
        return side;
    }

    static Layer layer(Side side, String name) {
        Layer layer = FACTORY.createLayer();
        layer.setId("layer-" + name);
        layer.setName(name);
        side.getLayers().add(layer);
        return layer;
    }

    static PlainShape shape(String id, double x, double y) {
        PlainShape shape = FACTORY.createPlainShape();
        shape.setId(id);
        shape.setKind(ShapeKind.ELLIPSE);
        shape.setX(x);
        shape.setY(y);
        shape.setInk("black");
        return shape;
    }

    static TextLine text(String id, String words) {
        TextLine line = FACTORY.createTextLine();
        line.setId(id);
        line.setText(words);
        return line;
    }

    static Mark mark(Design design, String id) {
        for (Side side : design.getSides()) {
            for (Layer layer : side.getLayers()) {
                for (Mark mark : layer.getMarks()) {
                    if (id.equals(mark.getId())) {
                        return mark;
                    }
                }
            }
        }
        throw new IllegalArgumentException("no mark " + id);
    }

    static Layer anyLayer(Design design, Random random) {
        Side side = design.getSides().get(random.nextInt(design.getSides().size()));
        return side.getLayers().isEmpty() ? null : side.getLayers().get(random.nextInt(side.getLayers().size()));
    }

    static Mark anyMark(Design design, Random random) {
        Layer layer = anyLayer(design, random);
        return layer == null || layer.getMarks().isEmpty() ? null
                : layer.getMarks().get(random.nextInt(layer.getMarks().size()));
    }

    /** The model as the file would hold it; elements without an id get none, so that two states compare by content. */
    static String bytes(EObject model) {
        XMIResourceImpl resource = new XMIResourceImpl(URI.createURI("memory.xml"));
        resource.getContents().add(EcoreUtil.copy(model));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            resource.save(out, null);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString(java.nio.charset.StandardCharsets.UTF_8);
    }
}
