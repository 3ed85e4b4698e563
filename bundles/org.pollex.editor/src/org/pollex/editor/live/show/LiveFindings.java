/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.live.show;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.gef.EditPart;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.pollex.edit.Pose;
import org.pollex.editor.figure.ItemLook;
import org.pollex.editor.figure.MarkLook;
import org.pollex.editor.live.Limits;
import org.pollex.editor.live.MarkMeasure;
import org.pollex.editor.live.MovedMark;
import org.pollex.editor.live.Readout;
import org.pollex.editor.live.RestOfSide;
import org.pollex.editor.live.ThinPlace;
import org.pollex.editor.live.Worn;
import org.pollex.editor.live.ZoneParts;
import org.pollex.editor.setting.Choices;
import org.pollex.editor.setting.LeastShown;
import org.pollex.editor.side.Shown;
import org.pollex.editor.side.SidePage;
import org.pollex.editor.view.Scale;
import org.pollex.editor.part.MarkPart;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.session.Known;
import org.pollex.editor.session.SessionListener;
import org.pollex.model.design.Mark;
import org.pollex.print.PrintedSide;
import org.pollex.print.item.ItemFace;

/**
 * Keeps the findings of a page up with the art. While a gesture lasts, thin places are looked up again in the
 * background when the scale changes, and the zones are tested by the hull; afterwards the findings of the exact check
 * stand.
 */
public final class LiveFindings implements SidePage.PreviewListener, SessionListener {

    private static final double FAR = 200;
    /** Measuring rests twice as long as it worked, so that the gesture has the processors, but at most so long, ms. */
    private static final long MOST_PAUSE = 120;

    private final SidePage page;
    private final DesignSession session;
    private final GestureFigure gesture;
    private final FoundFigure found;
    private final ReadoutBar bar;
    private MarkLook measuredLook;
    private MarkMeasure measured;
    private List<ThinPlace> thin = List.of();
    private double thinScale = -1;
    private int gestures;
    private volatile long pause;
    private Ask drawnFor;
    private List<ThinPlace> drawnOf;
    private RestOfSide rest = RestOfSide.NONE;
    private Known restOf;
    private String restWithout = "";
    private double weighted;
    private Readout live = Readout.NONE;
    private final AtomicReference<Ask> newest = new AtomicReference<>();
    private final Job measuring = new MeasureJob();
    private Readout exact = Readout.NONE;
    private Mark mark;
    private Pose pose;
    private List<ThinPlace> places = List.of();
    private Parts parts = new Parts(null, null);
    private Geometry offZone;
    private Geometry wearZone;
    private ItemLook zonesOf;
    private Geometry off;
    private PreparedGeometry safe;
    private PreparedGeometry wear;
    private PreparedGeometry printable;

    /** What to find out; zones only where the hull reaches them. */
    private record Ask(MarkLook look, double now, Pose pose, Limits limits, Geometry off, Geometry wear,
            Optional<Known> known, String face, String id, Readout before, double zoom, int gesture) {

        /** Whether the picture of the other's thin places serves; it is turned as it is shown. */
        boolean looksLike(Ask other) {
            return other != null && gesture == other.gesture && zoom == other.zoom && pose.scale() == other.pose.scale()
                    && pose.mirror() == other.pose.mirror();
        }

        Optional<PrintedSide> side() {
            return known.flatMap(each -> each.printed().side(face));
        }
    }

    private record Parts(Geometry off, Geometry wear) {
    }

    /** Findings of a page; they live as long as the page. */
    public LiveFindings(SidePage page, DesignSession session) {
        this.page = page;
        this.session = session;
        this.gesture = new GestureFigure(() -> page.root().getZoomManager().getZoom());
        this.found = new FoundFigure(() -> page.root().getZoomManager().getZoom());
        this.bar = new ReadoutBar(page.footer());
        page.root().findings().add(found);
        page.root().findings().add(gesture);
        gesture.setVisible(false);
        PinTips.install(page, found);
        measuring.setSystem(true);
        measuring.setPriority(Job.INTERACTIVE);
        page.add(this);
        session.add(this);
        Runnable following = Choices.follow(Set.of(LeastShown.KEY), () -> soon(() -> session.known()
                .ifPresent(this::known)));
        page.control().addDisposeListener(event -> {
            following.run();
            session.remove(this);
            measuring.cancel();
            gesture.end();
            found.dispose();
        });
    }

    /** The readout as it stands. */
    public String readout() {
        return bar.text();
    }

    /** The readout with words for its signs, as it is read aloud. */
    public String readoutAloud() {
        return ReadoutBar.aloud(bar.text());
    }

    /** How many places are marked now: during a gesture the thin ones, else the findings that have a place. */
    public int marked() {
        return mark != null ? gesture.count() : found.count();
    }

    /** Whether a part off the edge is tinted now. */
    public boolean showsOff() {
        return gesture.showsOff();
    }

    /** Whether a part in the wear zone is tinted now. */
    public boolean showsWear() {
        return gesture.showsWear();
    }

    private Limits limits() {
        return session.suite().catalogues().method(session.design().getMethod())
                .map(each -> Limits.of(each, session.suite().catalogues())).orElse(null);
    }

    @Override
    public void previewing(SidePage shown, Mark moved, Pose at) {
        if (at == null) {
            mark = null;
            gesture.end();
            found.setVisible(session.fresh());
            return;
        }
        MarkLook look = page.look(moved);
        if (mark != moved) {
            mark = moved;
            gestures++;
            places = List.of();
            parts = new Parts(null, null);
            live = exact;
            found.setVisible(false);
        }
        if (!Shown.LIVE.on()) {
            return;
        }
        pose = at;
        zones();
        reach();
        Limits limits = limits();
        if (limits != null && !look.areas().isEmpty()) {
            newest.set(new Ask(look, moved.getScale(), at, limits, offZone, wearZone, session.known(), page.face(),
                    String.valueOf(moved.getId()), exact, page.root().getZoomManager().getZoom() * Scale.UM, gestures));
            measuring.schedule(pause);
        }
        draw();
    }

    private void zones() {
        ItemLook item = page.item();
        if (item == zonesOf) {
            return;
        }
        zonesOf = item;
        Geometry inside = item.area().difference(item.unprintable());
        Envelope all = item.area().getEnvelopeInternal();
        all = new Envelope(all);
        all.expandBy(FAR);
        GeometryFactory factory = item.area().getFactory();
        off = factory.toGeometry(all).difference(inside);
        printable = PreparedGeometryFactory.prepare(inside);
        safe = PreparedGeometryFactory.prepare(item.safe());
        wear = PreparedGeometryFactory.prepare(item.wearRisk());
    }

    private void draw() {
        EditPart part = (EditPart) page.viewer().getEditPartRegistry().get(mark);
        if (!(part instanceof MarkPart shown)) {
            return;
        }
        gesture.show(pose, shown.markFigure().getBounds(), offZone == null ? null : parts.off(),
                wearZone == null ? null : parts.wear(), places);
        Limits limits = limits();
        if (limits != null) {
            bar.show(live, limits, true);
        }
    }

    /** Which zones that are not safe the hull of the mark reaches. */
    private void reach() {
        EditPart part = (EditPart) page.viewer().getEditPartRegistry().get(mark);
        Polygon hull = part instanceof MarkPart shown ? hull(shown.markFigure().outline()) : null;
        boolean clean = hull == null || safe.covers(hull);
        offZone = clean || printable.covers(hull) ? null : off;
        wearZone = clean || !wear.intersects(hull) ? null : page.item().wearRisk();
    }

    private static Polygon hull(Coordinate[] outline) {
        if (outline.length < 3) {
            return null;
        }
        Coordinate[] ring = java.util.Arrays.copyOf(outline, outline.length + 1);
        ring[outline.length] = outline[0].copy();
        return new GeometryFactory().createPolygon(ring);
    }

    @Override
    public void changed() {
        if (mark == null && !session.fresh()) {
            found.setVisible(false);
        }
    }

    @Override
    public void known(Known known) {
        Limits limits = limits();
        PrintedSide side = known.printed().side(page.face()).orElse(null);
        // what concerns everything that is printed has no place of its own
        Envelope all = side == null ? new Envelope() : side.printed().getEnvelopeInternal();
        found.show(known.findings().stream().filter(each -> each.side().equals(page.face())
                && !each.where().getEnvelopeInternal().equals(all)).toList(),
                page.item().area().getEnvelopeInternal());
        found.setVisible(mark == null);
        if (limits == null || side == null) {
            exact = Readout.NONE;
            if (limits != null) {
                bar.show(exact, limits, false);
            }
            return;
        }
        Job job = Job.createSystem("Measuring", monitor -> {
            Readout readout = Readout.of(side, limits);
            soon(() -> {
                if (session.known().orElse(null) == known) {
                    exact = readout;
                    if (mark == null) {
                        bar.show(readout, limits, false);
                    }
                }
            });
        });
        job.setPriority(Job.SHORT);
        job.schedule();
    }

    private void soon(Runnable run) {
        if (!page.control().isDisposed()) {
            page.control().getDisplay().asyncExec(() -> {
                if (!page.control().isDisposed()) {
                    run.run();
                }
            });
        }
    }

    /** Looks thin places up again for the newest scale. */
    private final class MeasureJob extends Job {
        MeasureJob() {
            super("Measuring");
        }

        @Override
        protected IStatus run(IProgressMonitor monitor) {
            Ask ask = newest.getAndSet(null);
            if (ask == null) {
                return Status.OK_STATUS;
            }
            long begin = System.nanoTime();
            try {
                List<Geometry> areas = ask.look().areas().stream().map(MarkLook.Area::area).toList();
                Parts cut = new Parts(ask.off() == null ? null : ZoneParts.in(areas, ask.pose(), ask.off()),
                        ask.wear() == null ? null : ZoneParts.in(areas, ask.pose(), ask.wear()));
                if (measuredLook != ask.look()) {
                    measured = MarkMeasure.of(areas, ask.now(), ask.limits());
                    measuredLook = ask.look();
                    thinScale = -1;
                }
                if (thinScale != ask.pose().scale()) {
                    thin = measured.places(ask.pose().scale());
                    thinScale = ask.pose().scale();
                }
                show(ask, cut, numbers(ask, areas, cut));
            } catch (RuntimeException e) {
                ILog.of(LiveFindings.class).error("A mark could not be measured", e);
            }
            pause = Math.min(MOST_PAUSE, TimeUnit.NANOSECONDS.toMillis(2 * (System.nanoTime() - begin)));
            return Status.OK_STATUS;
        }

        private void show(Ask ask, Parts cut, Readout numbers) {
            List<ThinPlace> found = thin;
            boolean anew = !ask.looksLike(drawnFor) || found != drawnOf;
            LinesPicture lines = anew ? LinesPicture.of(page.control().getDisplay(), found, ask.pose(), ask.zoom())
                    .orElse(null) : null;
            drawnFor = ask;
            drawnOf = found;
            soon(() -> {
                if (mark != null && gestures == ask.gesture() && page.look(mark) == ask.look()) {
                    if (anew) {
                        gesture.picture(lines);
                    }
                    places = found;
                    parts = cut;
                    live = numbers;
                    draw();
                } else if (lines != null) {
                    lines.image().dispose();
                }
            });
        }

        private Readout numbers(Ask ask, List<Geometry> areas, Parts cut) {
            Optional<PrintedSide> side = ask.side();
            if (side.isEmpty()) {
                return Readout.NONE;
            }
            if (restOf != ask.known().get() || !restWithout.equals(ask.id())) {
                rest = RestOfSide.of(side.get(), ask.known().get().findings(), ask.id(), ask.limits());
                restOf = ask.known().get();
                restWithout = ask.id();
            }
            OptionalDouble type = side.get().types().stream().filter(each -> each.mark().equals(ask.id()))
                    .mapToDouble(each -> each.xHeight() / ask.now()).min();
            ItemFace face = side.get().face();
            double scale = ask.pose().scale();
            double whole = (ask.off() == null ? areas.stream().mapToDouble(Geometry::getArea).sum()
                    : ZoneParts.in(areas, ask.pose(), face.area()).getArea()) * scale * scale;
            // the dearest number waits for the pointer to slow down
            if (cut.wear() == null) {
                weighted = 0;
            } else if (newest.get() == null) {
                weighted = Worn.weighted(ZoneParts.placing(ask.pose()).transform(cut.wear()), face.wear());
            }
            Readout now = new MovedMark(areas, ask.look().hull(), type).at(ask.pose(), thin, measured, rest,
                    new Worn(weighted, whole), face.safe().getArea(), ask.limits());
            return scale == ask.now() ? now.moved(ask.before()) : now;
        }
    }
}
