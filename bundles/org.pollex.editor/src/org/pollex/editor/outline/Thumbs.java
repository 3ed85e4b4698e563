/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.outline;

import java.util.HashMap;
import java.util.Map;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.jface.resource.ResourceLocator;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.ResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageGcDrawer;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Transform;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.locationtech.jts.geom.Envelope;
import org.pollex.edit.Pose;
import org.pollex.editor.figure.MarkLook;
import org.pollex.editor.figure.Paths;
import org.pollex.editor.look.Look;
import org.pollex.editor.side.FaceLook;
import org.pollex.editor.snap.Boxes;
import org.pollex.editor.view.Scale;
import org.pollex.editor.work.Session;
import org.pollex.model.design.Mark;

/**
 * Small pictures for the lines of the tree: of a mark what it prints, on the material; kept while a mark looks the
 * same. Marks and icons are equally large, since a tree takes the height of all its lines from one of them.
 */
final class Thumbs {

    /** Width and height in pixels. */
    static final int SIZE = 22;

    private static final int MARGIN = 3;

    private record Key(MarkLook look, double turn, boolean mirror, RGB material) {
    }

    private record Kept(Key key, Image image) {
    }

    private final Display display;
    private final ResourceManager icons;
    private final Map<Mark, Kept> marks = new HashMap<>();

    /** @param owner the pictures live as long as it does */
    Thumbs(Control owner) {
        display = owner.getDisplay();
        icons = new LocalResourceManager(JFaceResources.getResources(), owner);
        owner.addDisposeListener(event -> forget());
    }

    /** A drawing of this bundle. */
    static ImageDescriptor icon(String name) {
        return ResourceLocator.imageDescriptorFromBundle("org.pollex.editor", "icons/" + name + ".svg")
                .orElseThrow();
    }

    /** The image of a drawing of this bundle. */
    Image image(String name) {
        return icons.get(icon(name));
    }

    /** Lets all pictures of marks go. */
    void forget() {
        marks.values().forEach(each -> each.image().dispose());
        marks.clear();
    }

    /** The picture of a mark. */
    Image of(Session session, Mark mark) {
        RGB material = FaceLook.material(session);
        Key key = new Key(session.look(mark), mark.getTurn(), mark.isMirror(), material);
        Kept kept = marks.get(mark);
        if (kept != null && kept.key().equals(key)) {
            return kept.image();
        }
        if (kept != null) {
            kept.image().dispose();
        }
        ImageGcDrawer drawing = (gc, width, height) -> draw(gc, key);
        Image image = new Image(display, drawing, SIZE, SIZE);
        marks.put(mark, new Kept(key, image));
        return image;
    }

    private static void draw(GC gc, Key key) {
        gc.setAntialias(SWT.ON);
        gc.setBackground(new Color(key.material()));
        gc.fillRectangle(0, 0, SIZE, SIZE);
        Pose pose = new Pose(0, 0, 1, key.turn(), key.mirror());
        Envelope box = Boxes.of(key.look().hull(), pose);
        if (!key.look().trouble().isEmpty()) {
            gc.setForeground(new Color(Look.ERROR >> 16 & 255, Look.ERROR >> 8 & 255, Look.ERROR & 255));
            gc.setLineWidth(2);
            gc.drawLine(MARGIN, MARGIN, SIZE - MARGIN, SIZE - MARGIN);
            gc.drawLine(SIZE - MARGIN, MARGIN, MARGIN, SIZE - MARGIN);
        } else if (!box.isNull() && Math.max(box.getWidth(), box.getHeight()) > 0) {
            areas(gc, key, pose, box);
        }
        gc.setTransform(null);
        gc.setForeground(new Color(128, 128, 128));
        gc.setLineWidth(1);
        gc.drawRectangle(0, 0, SIZE - 1, SIZE - 1);
    }

    private static void areas(GC gc, Key key, Pose pose, Envelope box) {
        float scale = (float) ((SIZE - 2 * MARGIN) / Math.max(box.getWidth(), box.getHeight()) / Scale.UM);
        Transform all = new Transform(gc.getDevice());
        all.translate(SIZE / 2f, SIZE / 2f);
        all.scale(scale, scale);
        all.translate((float) (-box.centre().x * Scale.UM), (float) (-box.centre().y * Scale.UM));
        all.rotate((float) pose.turn());
        all.scale(pose.mirror() ? -1 : 1, 1);
        gc.setTransform(all);
        for (MarkLook.Area area : key.look().areas()) {
            Path path = Paths.of(gc.getDevice(), area.area());
            gc.setBackground(new Color(area.colour()));
            gc.fillPath(path);
            path.dispose();
        }
        gc.setTransform(null);
        all.dispose();
    }
}
