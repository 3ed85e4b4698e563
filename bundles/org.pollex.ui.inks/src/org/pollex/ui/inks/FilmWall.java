/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.inks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.Material;
import org.pollex.model.store.EntryNames;
import org.pollex.output.picture.InkPicture;
import org.pollex.print.stock.Stock;
import org.pollex.ui.ScreenImages;

/** The film of one ink on every material, each a chip with the true pattern; drawn in the background. */
final class FilmWall {

    private static final double SCALE = 10;
    private static final int WIDTH = (int) (InkPicture.WIDTH * SCALE);
    private static final int HEIGHT = (int) (InkPicture.HEIGHT * SCALE);
    private static final int GAP = 12;
    private static final int PAUSE = 120;

    private final ScrolledComposite scroll;
    private final Canvas canvas;
    private final List<Image> images = new ArrayList<>();
    private final Map<Material, Stock> surfaces = new HashMap<>();
    private List<Material> materials = List.of();
    private List<String> names = List.of();
    private Job job;
    private int asked;

    FilmWall(Composite parent) {
        scroll = new ScrolledComposite(parent, SWT.V_SCROLL | SWT.BORDER);
        canvas = new Canvas(scroll, SWT.DOUBLE_BUFFERED);
        scroll.setContent(canvas);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        scroll.getVerticalBar().setIncrement(GAP * 2);
        scroll.addListener(SWT.Resize, event -> lay());
        canvas.addListener(SWT.Paint, event -> paint(event.gc));
        canvas.addListener(SWT.KeyDown, this::key);
        canvas.addListener(SWT.Traverse, event -> event.doit = true);
        canvas.addListener(SWT.MouseDown, event -> canvas.setFocus());
        canvas.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = "The ink on every material";
            }
        });
        canvas.addDisposeListener(event -> {
            if (job != null) {
                job.cancel();
            }
            images.forEach(Image::dispose);
        });
    }

    ScrolledComposite control() {
        return scroll;
    }

    /** Says which materials there are. */
    void materials(List<Material> all) {
        materials = all.stream().filter(each -> each.getLab() != null).toList();
        synchronized (surfaces) {
            surfaces.clear();
        }
    }

    /** Shows an ink, of which the caller keeps the original; null for none. */
    void show(Ink ink) {
        int now = ++asked;
        if (job != null) {
            job.cancel();
        }
        if (ink == null || ink.getLab() == null) {
            take(now, List.of());
            return;
        }
        Ink copy = EcoreUtil.copy(ink);
        List<Material> on = materials;
        job = new Job("Drawing the ink on materials") {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                return draw(now, copy, on, monitor);
            }
        };
        job.setSystem(true);
        job.setPriority(Job.SHORT);
        job.schedule(images.isEmpty() ? 0 : PAUSE);
    }

    private IStatus draw(int ask, Ink ink, List<Material> on, IProgressMonitor monitor) {
        List<ImageData> pictures = new ArrayList<>();
        try {
            for (Material each : on) {
                if (monitor.isCanceled()) {
                    return Status.CANCEL_STATUS;
                }
                Stock surface;
                synchronized (surfaces) {
                    surface = surfaces.computeIfAbsent(each, Stock::of);
                }
                pictures.add(ScreenImages.data(InkPicture.of(ink, surface, SCALE)));
            }
        } catch (RuntimeException e) {
            ILog.of(FilmWall.class).error("The ink could not be drawn on materials", e);
            return Status.OK_STATUS;
        }
        if (!canvas.isDisposed()) {
            canvas.getDisplay().asyncExec(() -> {
                if (!canvas.isDisposed()) {
                    take(ask, pictures);
                }
            });
        }
        return Status.OK_STATUS;
    }

    private void take(int ask, List<ImageData> pictures) {
        if (ask != asked) {
            return;
        }
        images.forEach(Image::dispose);
        images.clear();
        pictures.forEach(each -> images.add(new Image(canvas.getDisplay(), each)));
        names = materials.stream().limit(pictures.size()).map(EntryNames::of).toList();
        lay();
        canvas.redraw();
    }

    private int columns() {
        return Math.max(1, (scroll.getClientArea().width - GAP) / (WIDTH + GAP));
    }

    private int row(GC gc) {
        return HEIGHT + gc.getFontMetrics().getHeight() + GAP + 2;
    }

    private void lay() {
        GC gc = new GC(canvas);
        int rows = (images.size() + columns() - 1) / columns();
        scroll.setMinSize(new Point(WIDTH + 2 * GAP, rows * row(gc) + GAP));
        gc.dispose();
    }

    private void paint(GC gc) {
        gc.setForeground(canvas.getForeground());
        int columns = columns();
        for (int i = 0; i < images.size(); i++) {
            int x = GAP + i % columns * (WIDTH + GAP);
            int y = GAP + i / columns * row(gc);
            gc.drawImage(images.get(i), x, y);
            gc.drawRectangle(x - 1, y - 1, WIDTH + 1, HEIGHT + 1);
            String name = fitting(gc, names.get(i));
            gc.drawText(name, x, y + HEIGHT + 2, true);
        }
        if (canvas.isFocusControl()) {
            gc.drawFocus(1, 1, canvas.getSize().x - 2, canvas.getSize().y - 2);
        }
    }

    private static String fitting(GC gc, String name) {
        String shown = name;
        while (gc.textExtent(shown).x > WIDTH && shown.length() > 2) {
            shown = shown.substring(0, shown.length() - 2).strip() + "…";
        }
        return shown;
    }

    private void key(Event event) {
        int page = scroll.getClientArea().height - GAP;
        int by = switch (event.keyCode) {
            case SWT.ARROW_DOWN -> GAP * 2;
            case SWT.ARROW_UP -> -GAP * 2;
            case SWT.PAGE_DOWN -> page;
            case SWT.PAGE_UP -> -page;
            default -> 0;
        };
        if (by != 0) {
            scroll.setOrigin(0, Math.max(0, scroll.getOrigin().y + by));
        }
    }
}
