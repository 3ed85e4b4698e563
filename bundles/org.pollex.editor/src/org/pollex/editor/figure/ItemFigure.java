/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.figure;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;
import org.locationtech.jts.geom.Envelope;
import org.pollex.editor.look.Look;
import org.pollex.editor.view.Scale;

/** The item on its material; marks are its children; zones are drawn above them by {@link ZonesFigure}. */
public final class ItemFigure extends Figure {

    private static final int SHADOW_STEPS = 3;
    private static final int BESIDE = Scale.um(40);

    private ItemLook look;
    private Path area;
    private final List<Printed> print = new ArrayList<>();
    private final List<Printed> behind = new ArrayList<>();
    private boolean printShown;
    private final SurfaceImage surface = new SurfaceImage(Display.getCurrent(), this::repaint);

    private record Printed(Path path, Color colour) {
    }

    /**
     * Gives the exact print of the side, lowest first, in mm; drawn while {@link #showPrint} is on.
     *
     * @param through  what shows through plain stock from the other side, which is drawn all the time
     */
    public void print(List<MarkLook.Area> through, List<MarkLook.Area> areas) {
        disposePrint();
        through.forEach(each -> behind.add(printed(each)));
        areas.forEach(each -> print.add(printed(each)));
        repaint();
    }

    private static Printed printed(MarkLook.Area each) {
        return new Printed(Paths.of(Display.getCurrent(), each.area()), new Color(each.colour()));
    }

    /** Draws the exact print, or leaves the drawing to the marks. */
    public void showPrint(boolean on) {
        if (printShown != on) {
            printShown = on;
            repaint();
        }
    }

    private void disposePrint() {
        for (List<Printed> each : List.of(print, behind)) {
            each.forEach(part -> part.path().dispose());
            each.clear();
        }
    }

    /** Shows another item or material. */
    public void show(ItemLook shown) {
        if (area != null && shown == look) {
            return;
        }
        if (area != null) {
            area.dispose();
        }
        look = shown;
        area = Paths.of(Display.getCurrent(), shown.area());
        surface.show(shown.surface(), shown.area());
        // art may lie off the item, and must be seen there
        setBounds(box(shown.area().getEnvelopeInternal()).expand(BESIDE, BESIDE));
        repaint();
    }

    /** Box of an envelope in mm as whole micrometres that hold it. */
    public static Rectangle box(Envelope mm) {
        int x = (int) Math.floor(mm.getMinX() * Scale.UM);
        int y = (int) Math.floor(mm.getMinY() * Scale.UM);
        return new Rectangle(x, y, (int) Math.ceil(mm.getMaxX() * Scale.UM) - x + 1,
                (int) Math.ceil(mm.getMaxY() * Scale.UM) - y + 1);
    }

    /** Frees the paths; the figure must not be drawn afterwards. */
    public void disposePaths() {
        disposePrint();
        surface.dispose();
        if (area != null) {
            area.dispose();
            area = null;
        }
    }

    @Override
    protected boolean useLocalCoordinates() {
        return false;
    }

    @Override
    protected void paintFigure(Graphics graphics) {
        if (area == null) {
            return;
        }
        graphics.pushState();
        graphics.setAntialias(SWT.ON);
        for (int i = SHADOW_STEPS; i > 0; i--) {
            graphics.pushState();
            graphics.translate(0, 120 * i);
            graphics.setAlpha(18);
            graphics.setBackgroundColor(Display.getCurrent().getSystemColor(SWT.COLOR_BLACK));
            graphics.fillPath(area);
            graphics.popState();
        }
        graphics.setBackgroundColor(new Color(look.material()));
        graphics.fillPath(area);
        surface.image().ifPresent(pattern -> {
            Rectangle box = box(look.area().getEnvelopeInternal());
            org.eclipse.swt.graphics.Rectangle size = pattern.getBounds();
            graphics.drawImage(pattern, 0, 0, size.width, size.height, box.x, box.y, box.width, box.height);
        });
        paint(graphics, behind);
        if (printShown) {
            paint(graphics, print);
        }
        graphics.popState();
    }

    private static void paint(Graphics graphics, List<Printed> parts) {
        for (Printed each : parts) {
            graphics.setBackgroundColor(each.colour());
            graphics.fillPath(each.path());
        }
    }

    @Override
    protected void paintClientArea(Graphics graphics) {
        // children may stand over the edge of the item: what falls off must be seen
        graphics.pushState();
        Rectangle clip = new Rectangle();
        graphics.getClip(clip);
        paintChildrenUnclipped(graphics, clip);
        graphics.popState();
    }

    private void paintChildrenUnclipped(Graphics graphics, Rectangle clip) {
        for (Object child : getChildren()) {
            org.eclipse.draw2d.IFigure figure = (org.eclipse.draw2d.IFigure) child;
            if (figure.isVisible() && figure.getBounds().intersects(clip)) {
                figure.paint(graphics);
            }
        }
    }

    @Override
    public org.eclipse.draw2d.IFigure findFigureAt(int x, int y, org.eclipse.draw2d.TreeSearch search) {
        for (int i = getChildren().size() - 1; i >= 0; i--) {
            org.eclipse.draw2d.IFigure child = (org.eclipse.draw2d.IFigure) getChildren().get(i);
            org.eclipse.draw2d.IFigure found = child.isVisible() ? child.findFigureAt(x, y, search) : null;
            if (found != null) {
                return found;
            }
        }
        return search.accept(this) ? this : null;
    }

    @Override
    public boolean containsPoint(int x, int y) {
        return true;
    }

    /** Which zones an overlay shows. */
    public enum ZoneShown { SAFE, WEAR, RIM }

    /** The zones of an item as hatches and lines, each switchable. */
    public static final class ZonesFigure extends Figure {

        private static final RGB RIM = rgb(Look.RIM);
        private static final RGB WEAR = rgb(Look.WEAR);
        private static final RGB SAFE = rgb(Look.SAFE);

        private final Set<ZoneShown> shown = EnumSet.allOf(ZoneShown.class);
        private final java.util.function.DoubleSupplier zoom;
        private Path safe;
        private Path wear;
        private Path rim;

        /** @param zoom pixels a micrometre now */
        public ZonesFigure(java.util.function.DoubleSupplier zoom) {
            this.zoom = zoom;
        }

        /** Shows the zones of another item. */
        public void show(ItemLook look) {
            disposePaths();
            safe = Paths.of(Display.getCurrent(), look.safe());
            wear = Paths.of(Display.getCurrent(), look.wearRisk());
            rim = Paths.of(Display.getCurrent(), look.unprintable());
            setBounds(box(look.area().getEnvelopeInternal()).expand(200, 200));
            repaint();
        }

        /** Switches one zone on or off. */
        public void set(ZoneShown zone, boolean on) {
            if (on ? shown.add(zone) : shown.remove(zone)) {
                repaint();
            }
        }

        /** Frees the paths. */
        public void disposePaths() {
            for (Path path : new Path[] {safe, wear, rim}) {
                if (path != null) {
                    path.dispose();
                }
            }
            safe = null;
        }

        @Override
        public boolean containsPoint(int x, int y) {
            return false;
        }

        @Override
        protected void paintFigure(Graphics graphics) {
            if (safe == null) {
                return;
            }
            double scale = zoom.getAsDouble();
            Display display = Display.getCurrent();
            if (shown.contains(ZoneShown.WEAR)) {
                Hatch.fill(graphics, display, wear, Hatch.Kind.SINGLE, scale, WEAR);
            }
            if (shown.contains(ZoneShown.RIM)) {
                Hatch.fill(graphics, display, rim, Hatch.Kind.CROSSED, scale, RIM);
            }
            Color light = display.getSystemColor(SWT.COLOR_WHITE);
            if (shown.contains(ZoneShown.SAFE)) {
                Hatch.outline(graphics, safe, scale, new Color(SAFE), light, true);
            }
        }
    
        private static RGB rgb(int colour) {
            return new RGB(colour >> 16 & 255, colour >> 8 & 255, colour & 255);
        }
    }
}
