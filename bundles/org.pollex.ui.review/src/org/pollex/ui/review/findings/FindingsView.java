/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.findings;

import java.util.List;
import java.util.Optional;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.part.ViewPart;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.session.Known;
import org.pollex.markers.StudioSuite;
import org.pollex.rules.CheckEntry;
import org.pollex.ui.ActiveDesign;
import org.pollex.ui.ScreenImages;
import org.pollex.ui.review.Narrow;
import org.pollex.ui.review.SavedPrint;
import org.pollex.ui.review.findings.SavedFindings.Saved;

/**
 * What the checks find in the design in front, by side, worst first; with no design open, what they found in the saved
 * designs that are selected. Selecting a finding brings its place into view.
 */
public final class FindingsView extends ViewPart {

    /** Id of the view. */
    public static final String ID = "org.pollex.ui.review.findings";

    private static final int NARROWEST = 160;

    private final FindingFilter filter = new FindingFilter();
    private FindingsTree tree;
    private FindingDetail detail;
    private FindingActions actions;
    private Text search;
    private Label note;
    private ActiveDesign active;
    private SavedFindings selection;
    private Thumbnails thumbnails;
    private Saved saved = Saved.NONE;
    private Object shown;
    private List<Found> all = List.of();

    @Override
    public void createPartControl(Composite parent) {
        parent.setLayout(new FillLayout());
        Composite area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(area);
        search = new Text(area, SWT.SEARCH | SWT.ICON_CANCEL | SWT.ICON_SEARCH);
        search.setMessage("Filter findings");
        search.setToolTipText("Show only findings whose sentence or check holds this text");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(search);
        note = new Label(area, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(NARROWEST, SWT.DEFAULT).indent(4, 2).applyTo(note);
        SashForm sash = new SashForm(area, SWT.HORIZONTAL);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
        thumbnails = new Thumbnails(parent.getDisplay(), () -> {
            if (!tree.viewer().getControl().isDisposed()) {
                tree.viewer().refresh(true);
            }
        });
        tree = new FindingsTree(sash, thumbnails::of);
        actions = new FindingActions(getSite().getPage(), tree::selected, () -> active.session(), this::say);
        detail = new FindingDetail(sash, id -> actions.mend(id, tree.selected()),
                way -> tree.one().ifPresent(each -> way.take(getSite().getPage(), each.design())),
                () -> tree.one().ifPresent(actions::waive));
        sash.setWeights(62, 38);
        Narrow.follow(sash);
        tree.viewer().addSelectionChangedListener(event -> selected());
        tree.viewer().addDoubleClickListener(event -> tree.one().ifPresent(actions::place));
        search.addModifyListener(event -> {
            filter.search(search.getText());
            list();
        });
        bars();
        getSite().setSelectionProvider(tree.viewer());
        active = new ActiveDesign(getSite().getPage(), this::refresh);
        selection = new SavedFindings(getSite().getPage(), this::told);
        refresh();
    }

    private void bars() {
        FilterMenu menu = new FilterMenu(filter, () -> all, this::checkName, this::list, this::showAll);
        IActionBars bars = getViewSite().getActionBars();
        bars.getToolBarManager().add(menu.button(search));
        bars.setGlobalActionHandler(ActionFactory.COPY.getId(), actions.copyAction());
        MenuManager context = new MenuManager();
        context.setRemoveAllWhenShown(true);
        context.addMenuListener(actions::fill);
        context.addMenuListener(each -> each.add(menu.manager("Show in the &list")));
        tree.viewer().getControl().setMenu(context.createContextMenu(tree.viewer().getControl()));
    }

    private void showAll() {
        filter.showAll();
        search.setText("");
        list();
    }

    private void told(Saved now) {
        saved = now;
        if (active.session().isEmpty()) {
            refresh();
        }
    }

    private void refresh() {
        if (search.isDisposed()) {
            return;
        }
        Optional<DesignSession> session = active.session();
        Optional<Known> known = active.known();
        Object now = session.isEmpty() ? saved : known.orElse(null);
        if (now != null && now == shown) {
            return;
        }
        shown = now;
        int backdrop = ScreenImages.rgb(tree.viewer().getControl().getBackground());
        if (session.isPresent()) {
            all = known.map(each -> each.findings().stream().map(finding -> new Found(session.get().file(), finding))
                    .toList()).orElse(List.of());
            known.ifPresent(each -> thumbnails.show(all, design -> each.printed(), backdrop));
        } else {
            all = saved.findings();
            thumbnails.show(all, SavedPrint::of, backdrop);
        }
        list();
    }

    /** Lists what fits the filter, and says so when something does not. */
    private void list() {
        List<Found> fit = all.stream().filter(each -> filter.shows(each.finding())).toList();
        boolean several = active.session().isEmpty() && saved.designs() > 1;
        tree.show(FindingGroup.of(fit, several));
        note(all.isEmpty() ? none() : fit.size() == all.size() ? "" : (fit.isEmpty() ? "None"
                : Integer.toString(fit.size())) + " of " + all.size() + (all.size() == 1 ? " finding fits"
                        : " findings fit") + " the filter; Show > Show everything lists all.");
        detail();
    }

    private void note(String sentence) {
        note.setText(sentence.replace("&", "&&"));
        note.setVisible(!sentence.isEmpty());
        ((GridData) note.getLayoutData()).exclude = sentence.isEmpty();
        note.getParent().layout(true, true);
    }

    private String none() {
        Optional<DesignSession> session = active.session();
        if (session.isPresent()) {
            return active.known().isEmpty() ? session.get().trouble().orElse("The design is being checked.")
                    : "Nothing found: this design prints as it is.";
        }
        return saved.designs() == 0 ? "Open a design, or select designs or jobs in the list of jobs, to see what will "
                + "not print." : "Nothing is found on the saved " + (saved.designs() == 1 ? "design" : "designs") + ".";
    }

    private void selected() {
        detail();
        tree.one().filter(each -> !each.finding().where().isEmpty()).ifPresent(each -> active.pages()
                .ifPresent(pages -> pages.reveal(each.finding().side(), each.finding().where()
                        .getEnvelopeInternal())));
    }

    private void detail() {
        detail.show(tree.one().map(Found::finding), tree.selected().size(),
                tree.one().flatMap(each -> entry(each.finding().check())).map(CheckEntry::description).orElse(""));
    }

    private Optional<CheckEntry> entry(String check) {
        return active.session().map(DesignSession::suite).orElseGet(StudioSuite::get).checks().stream()
                .filter(each -> each.id().equals(check)).findFirst();
    }

    private String checkName(String check) {
        return entry(check).map(CheckEntry::name).orElse(check);
    }

    private void say(String sentence) {
        if (!search.isDisposed()) {
            detail.say(sentence);
        }
    }

    @Override
    public void setFocus() {
        tree.viewer().getControl().setFocus();
    }

    @Override
    public void dispose() {
        if (active != null) {
            active.dispose();
            selection.dispose();
            thumbnails.dispose();
        }
        super.dispose();
    }
}
