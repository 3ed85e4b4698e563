/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.pictures;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.part.ViewPart;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.session.Known;
import org.pollex.fixes.Colourway;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.store.EntryNames;
import org.pollex.output.picture.PairPicture;
import org.pollex.rules.Measures;
import org.pollex.rules.Suite;
import org.pollex.rules.rank.Ranked;
import org.pollex.rules.rank.Ranking;
import org.pollex.rules.rank.StockNoise;
import org.pollex.ui.ActiveDesign;
import org.pollex.ui.ScreenImages;

/**
 * Which inks read on which materials: every pair for the design in front, with a small picture of it, its score and the
 * reason; a heading sorts. Worked out in the background.
 */
public final class RankView extends ViewPart {

    /** Id of the view. */
    public static final String ID = "org.pollex.ui.pictures.rank";

    private static final int HEIGHT = 56;
    private static final long PAUSE = 200;
    private static final String WORKING = "Working\u2026 every ink is held against every material.";
    private static final Comparator<Ranked> BEST = Comparator.comparingDouble(Ranked::score).reversed();

    private Table table;
    private ActiveDesign active;
    private Job job;
    private Known shown;
    private List<Ranked> ranking = List.of();
    private final List<ImageData> drawn = new ArrayList<>();
    private final List<Image> images = new ArrayList<>();
    private Comparator<Ranked> order = BEST;
    /** What changed while nobody saw the ranking is ranked when it comes to the front. */
    private final IPartListener2 parts = new IPartListener2() {
        @Override
        public void partVisible(IWorkbenchPartReference reference) {
            if (reference.getPart(false) == RankView.this) {
                follow();
            }
        }
    };

    @Override
    public void createPartControl(Composite parent) {
        parent.setLayout(new FillLayout());
        table = new Table(parent, SWT.FULL_SELECTION | SWT.SINGLE);
        table.setHeaderVisible(true);
        table.getAccessible().addAccessibleListener(new org.eclipse.swt.accessibility.AccessibleAdapter() {
            @Override
            public void getName(org.eclipse.swt.accessibility.AccessibleEvent event) {
                event.result = "Inks over materials";
            }
        });
        column("Inks", 150, Comparator.comparing(RankView::inks));
        column("Material", 130, Comparator.comparing(RankView::material));
        column("Score", 120, BEST);
        column("Reason", 420, Comparator.comparing(Ranked::reason));
        table.addDisposeListener(event -> images.forEach(Image::dispose));
        table.addListener(SWT.DefaultSelection, event -> choose());
        Menu menu = new Menu(table);
        MenuItem choose = new MenuItem(menu, SWT.PUSH);
        choose.setText("&Print in these inks on this material");
        choose.addListener(SWT.Selection, event -> choose());
        menu.addListener(SWT.Show, event -> choose.setEnabled(selected().filter(each -> !each.own()).isPresent()));
        table.setMenu(menu);
        active = new ActiveDesign(getSite().getPage(), this::follow);
        getSite().getPage().addPartListener(parts);
        follow();
    }

    private void column(String title, int width, Comparator<Ranked> by) {
        TableColumn column = new TableColumn(table, SWT.NONE);
        column.setText(title);
        column.setWidth(width);
        column.addListener(SWT.Selection, event -> {
            order = by.thenComparing(BEST);
            table.setSortColumn(column);
            table.setSortDirection(SWT.UP);
            fill();
        });
    }

    /** The table. */
    public Table table() {
        return table;
    }

    private void follow() {
        if (table.isDisposed()) {
            return;
        }
        Optional<Known> known = active.known();
        if (known.isEmpty()) {
            if (job != null) {
                job.cancel();
            }
            shown = null;
            ranking = List.of();
            fill();
            say(active.session().isEmpty() ? "Open a design to rank inks over materials for it."
                    : active.session().get().trouble().orElse("The design is being checked; its ranking follows."));
            return;
        }
        if (known.get() == shown || !getSite().getPage().isPartVisible(this)) {
            return;
        }
        say(WORKING);
        shown = known.get();
        Suite suite = active.session().map(DesignSession::suite).orElseThrow();
        if (job != null) {
            job.cancel();
        }
        int backdrop = ScreenImages.rgb(table.getBackground());
        job = new Job("Ranking inks over materials") {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                return rank(known.get(), suite, backdrop, monitor);
            }
        };
        job.setSystem(true);
        job.setPriority(Job.DECORATE);
        job.schedule(PAUSE);
    }

    private IStatus rank(Known known, Suite suite, int backdrop, IProgressMonitor monitor) {
        try {
            List<Ranked> ranked = Ranking.of(known.printed(), suite.catalogues(),
                    new StockNoise(known.printed(), suite.catalogues()));
            List<ImageData> pictures = new ArrayList<>();
            for (Ranked each : ranked) {
                if (monitor.isCanceled()) {
                    return Status.CANCEL_STATUS;
                }
                BufferedImage picture = PairPicture.of(known.printed(), each, HEIGHT, backdrop);
                pictures.add(ScreenImages.data(picture));
            }
            if (!table.isDisposed()) {
                table.getDisplay().asyncExec(() -> {
                    // one that had ended when it was cancelled does not know
                    if (!table.isDisposed() && shown == known) {
                        ranking = ranked;
                        drawn.clear();
                        drawn.addAll(pictures);
                        fill();
                        say("");
                    }
                });
            }
        } catch (RuntimeException e) {
            ILog.of(RankView.class).error("Ranking inks over materials", e);
            if (!table.isDisposed()) {
                table.getDisplay().asyncExec(() -> say("The ranking failed; what went wrong is in the log."));
            }
        }
        return Status.OK_STATUS;
    }

    private void say(String sentence) {
        if (!table.isDisposed()) {
            setContentDescription(sentence);
        }
    }

    private void fill() {
        table.setRedraw(false);
        table.removeAll();
        images.forEach(Image::dispose);
        images.clear();
        List<Integer> sorted = new ArrayList<>();
        for (int i = 0; i < ranking.size(); i++) {
            sorted.add(i);
        }
        sorted.sort((a, b) -> order.compare(ranking.get(a), ranking.get(b)));
        for (int i : sorted) {
            Ranked each = ranking.get(i);
            Image image = new Image(table.getDisplay(), drawn.get(i));
            images.add(image);
            TableItem item = new TableItem(table, SWT.NONE);
            item.setImage(0, image);
            item.setData(each);
            item.setText(new String[] {inks(each) + (each.own() ? " (as it is)" : ""), material(each),
                Measures.number(each.score(), 0) + ", " + each.verdict().words(), each.reason()});
        }
        table.setRedraw(true);
    }

    private Optional<Ranked> selected() {
        int index = table.getSelectionIndex();
        return index < 0 || !(table.getItem(index).getData() instanceof Ranked pair) ? Optional.empty()
                : Optional.of(pair);
    }

    /** Prints the design in the inks and on the material of the line that is selected; undo takes it back. */
    private void choose() {
        Optional<Ranked> pair = selected();
        if (pair.isEmpty() || pair.get().own() || shown == null || active.session().isEmpty()) {
            return;
        }
        DesignSession session = active.session().get();
        List<Ink> own = Ranking.inks(shown.printed());
        Map<String, String> exchanged = new LinkedHashMap<>();
        for (int i = 0; i < own.size() && i < pair.get().inks().size(); i++) {
            if (!own.get(i).getId().equals(pair.get().inks().get(i).getId())) {
                exchanged.put(own.get(i).getId(), pair.get().inks().get(i).getId());
            }
        }
        session.locked().ifPresentOrElse(each -> MessageDialog.openInformation(table.getShell(), "Not changed", each),
                () -> session.run(Colourway.of(session.design(), shown.printed(), pair.get().material().getId(),
                        exchanged)));
    }

    private static String inks(Ranked each) {
        return each.inks().isEmpty() ? "full colour" : each.inkNames();
    }

    private static String material(Ranked each) {
        return EntryNames.of(each.material());
    }

    @Override
    public void setFocus() {
        table.setFocus();
    }

    @Override
    public void dispose() {
        getSite().getPage().removePartListener(parts);
        if (active != null) {
            active.dispose();
        }
        if (job != null) {
            job.cancel();
        }
        super.dispose();
    }
}
