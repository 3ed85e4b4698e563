/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.WeakHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Consumer;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.pollex.artwork.ArtException;
import org.pollex.editor.figure.MarkLook;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.model.design.PlainShape;
import org.pollex.model.design.Side;
import org.pollex.model.design.TextLine;
import org.pollex.model.design.UnknownMark;
import org.pollex.print.InkRegion;
import org.pollex.print.PrintException;
import org.pollex.print.Printed;
import org.pollex.print.PrintedTones;
import org.pollex.print.ShippedLettering;
import org.pollex.print.item.ItemException;
import org.pollex.rules.Suite;

/**
 * How each mark looks by itself: printed alone in the background, about its own middle, and kept until something that
 * matters to it changes. Where it lies and how it is turned never matters; its scale does only when it changes much,
 * since curves are flattened for the size they have.
 */
final class MarkLooks {

    private static final double SCALE_STEP = 3;

    private record Shown(String key, MarkLook look) {
    }

    private record Ask(Mark mark, String key, Design alone, double scale) {
    }

    private final Suite suite;
    private final CachedArt art;
    private final Consumer<Runnable> answers;
    private final Map<Mark, Shown> shown = new WeakHashMap<>();
    private final Map<Mark, String> asked = new HashMap<>();
    private final ConcurrentLinkedQueue<Ask> queue = new ConcurrentLinkedQueue<>();
    private final Job job = new LookJob();

    /** @param answers runs something in the window's thread */
    MarkLooks(Suite suite, CachedArt art, Consumer<Runnable> answers) {
        this.suite = suite;
        this.art = art;
        this.answers = answers;
        job.setSystem(true);
        job.setPriority(Job.INTERACTIVE);
    }

    void close() {
        queue.clear();
        job.cancel();
    }

    void forget() {
        shown.clear();
        asked.clear();
    }

    /** The look, the last one while a newer is made; empty before the first. In the window's thread. */
    MarkLook of(Design design, Mark mark) {
        String key = key(design, mark);
        Shown known = shown.get(mark);
        if (known != null && known.key().equals(key)) {
            return known.look();
        }
        if (!key.equals(asked.get(mark))) {
            asked.put(mark, key);
            queue.add(new Ask(mark, key, alone(design, mark), mark.getScale()));
            job.schedule();
        }
        return known == null ? new MarkLook(List.of(), List.of(), "") : known.look();
    }

    private static String key(Design design, Mark mark) {
        StringBuilder key = new StringBuilder();
        key.append(design.getMaterial()).append('|').append(design.getMethod()).append('|').append(design.getInks());
        key.append('|').append(Math.round(Math.log(mark.getScale()) / Math.log(SCALE_STEP)));
        if (mark instanceof Placement placement) {
            key.append('|').append(placement.getArt()).append('|').append(placement.getSha256()).append('|')
                    .append(placement.getGround());
            placement.getAssignments().forEach(each -> key.append('|').append(each.getColour()).append('=')
                    .append(each.getInk()));
        } else if (mark instanceof TextLine line) {
            key.append('|').append(List.of(Objects.toString(line.getText()), Objects.toString(line.getFont()),
                    line.isBold(), line.isItalic(), line.getSize(), line.getSpacing(),
                    Objects.toString(line.getInk())));
        } else if (mark instanceof PlainShape shape) {
            key.append('|').append(List.of(shape.getKind(), shape.getWidth(), shape.getHeight(),
                    shape.getLineWidth(), Objects.toString(shape.getInk())));
        }
        if (mark instanceof UnknownMark) {
            // its look tells its name
            key.append('|').append(mark.getName());
        }
        return key.toString();
    }

    private static Design alone(Design design, Mark mark) {
        Design alone = DesignFactory.eINSTANCE.createDesign();
        alone.setProduct(design.getProduct());
        alone.setMaterial(design.getMaterial());
        alone.setMethod(design.getMethod());
        alone.getInks().addAll(design.getInks());
        Side side = DesignFactory.eINSTANCE.createSide();
        side.setName(((Side) mark.eContainer().eContainer()).getName());
        Layer layer = DesignFactory.eINSTANCE.createLayer();
        Mark copy = EcoreUtil.copy(mark);
        copy.setX(0);
        copy.setY(0);
        copy.setTurn(0);
        copy.setMirror(false);
        copy.setHidden(false);
        layer.getMarks().add(copy);
        side.getLayers().add(layer);
        alone.getSides().add(side);
        return alone;
    }

    private MarkLook make(Ask ask) {
        try {
            Printed printed = suite.printer(ask.alone(), art, new ShippedLettering()).print(ask.alone());
            PrintedTones tones = PrintedTones.of(printed);
            AffineTransformation shrink = AffineTransformation.scaleInstance(1 / ask.scale(), 1 / ask.scale());
            List<MarkLook.Area> areas = new ArrayList<>();
            List<Coordinate> points = new ArrayList<>();
            for (InkRegion region : printed.sides().get(0).regions()) {
                Geometry area = shrink.transform(region.area());
                areas.add(MarkLook.Area.of(area, tones.of(region)));
                points.addAll(List.of(area.convexHull().getCoordinates()));
            }
            return new MarkLook(areas, hull(points), areas.isEmpty() ? "This prints nothing." : "");
        } catch (PrintException | ItemException | ArtException e) {
            return new MarkLook(List.of(), List.of(), e.getMessage());
        } catch (RuntimeException | LinkageError e) {
            ILog.of(MarkLooks.class).error("A mark could not be drawn", e);
            return new MarkLook(List.of(), List.of(), "This cannot be drawn; what went wrong is in the log.");
        }
    }

    private static List<Coordinate> hull(List<Coordinate> points) {
        if (points.isEmpty()) {
            return List.of();
        }
        Coordinate[] ring = new ConvexHull(points.toArray(Coordinate[]::new),
                new org.locationtech.jts.geom.GeometryFactory()).getConvexHull().getCoordinates();
        return List.of(ring).subList(0, Math.max(1, ring.length - 1));
    }

    private final class LookJob extends Job {
        LookJob() {
            super("Drawing marks");
        }

        @Override
        protected IStatus run(IProgressMonitor monitor) {
            for (Ask ask = queue.poll(); ask != null && !monitor.isCanceled(); ask = queue.poll()) {
                Ask done = ask;
                MarkLook look = make(ask);
                answers.accept(() -> shown.put(done.mark(), new Shown(done.key(), look)));
            }
            return Status.OK_STATUS;
        }
    }
}
