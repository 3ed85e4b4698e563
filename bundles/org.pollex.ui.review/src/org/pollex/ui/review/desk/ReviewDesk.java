/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.desk;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.core.resources.IContainer;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.IResourceChangeListener;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.part.ViewPart;
import org.pollex.editor.session.DesignPages;
import org.pollex.markers.StudioSuite;
import org.pollex.model.store.StoreException;
import org.pollex.rules.CheckEntry;
import org.pollex.rules.Finding;
import org.pollex.rules.review.JobReview;
import org.pollex.ui.JobNames;
import org.pollex.ui.Person;
import org.pollex.ui.review.Narrow;
import org.pollex.ui.review.ReviewWork;
import org.pollex.ui.review.WaiveDialog;
import org.pollex.ui.review.fix.Mending;

/**
 * Where an art director goes through the findings of saved designs: one at a time, enlarged beside true size; waives,
 * sends back, makes revisions and signs them off.
 */
public final class ReviewDesk extends ViewPart {

    /** Id of the view. */
    public static final String ID = "org.pollex.ui.review.desk";

    private static final int WIDE = 180;

    private final IResourceChangeListener changes = this::changed;
    private final List<Button> needEntry = new ArrayList<>();
    private Combo jobs;
    private Button unsettled;
    private Label progress;
    private EntryPane pane;
    private Button waive;
    private DeskPictures pictures;
    private List<IContainer> folders = List.of();
    private Queue queue = Queue.empty();
    private int index;

    @Override
    public void createPartControl(Composite parent) {
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
        bar(parent);
        SashForm sash = new SashForm(parent, SWT.HORIZONTAL);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
        Composite left = new Composite(sash, SWT.NONE);
        left.setLayout(new org.eclipse.swt.layout.FillLayout());
        pane = new EntryPane(sash, this::mend, way -> way.take(getSite().getPage(), entry().path()));
        pictures = new DeskPictures(left, pane.actual(), pane::actualHeight);
        pictures.large().addListener(SWT.Resize, event -> pictures.show(entry()));
        buttons(pane.buttons());
        sash.setWeights(60, 40);
        Narrow.follow(sash);
        ResourcesPlugin.getWorkspace().addResourceChangeListener(changes, IResourceChangeEvent.POST_CHANGE);
        refresh();
    }

    private void bar(Composite parent) {
        Composite bar = new Composite(parent, SWT.NONE);
        RowLayoutFactory.swtDefaults().center(true).wrap(true).spacing(6).applyTo(bar);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(bar);
        new Label(bar, SWT.NONE).setText("Re&view:");
        jobs = new Combo(bar, SWT.READ_ONLY);
        jobs.setLayoutData(new RowData(WIDE, SWT.DEFAULT));
        jobs.addListener(SWT.Selection, event -> reload());
        unsettled = new Button(bar, SWT.CHECK);
        unsettled.setText("&Unsettled only");
        unsettled.addListener(SWT.Selection, event -> reload());
        button(bar, "&Previous", () -> go(-1));
        button(bar, "&Next", () -> go(1));
        progress = new Label(bar, SWT.NONE);
    }

    private void buttons(Composite row) {
        waive = button(row, "&Waive\u2026", this::waive);
        button(row, "&Open in the editor", this::open);
        button(row, "Send &back\u2026", this::sendBack);
        button(row, "Make a &revision", this::revise);
        button(row, "&Sign off\u2026", this::signOff);
        button(row, "&Begin a new revision", this::begin);
    }

    private Button button(Composite parent, String label, Runnable action) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(label);
        button.addListener(SWT.Selection, event -> action.run());
        needEntry.add(button);
        return button;
    }

    private void changed(IResourceChangeEvent event) {
        if (QueueChanges.in(event) && !jobs.isDisposed()) {
            jobs.getDisplay().asyncExec(() -> {
                if (!jobs.isDisposed()) {
                    refresh();
                }
            });
        }
    }

    private void refresh() {
        List<IContainer> now = Queue.folders();
        if (!now.equals(folders) || jobs.getItemCount() == 0) {
            IContainer chosen = folder();
            folders = now;
            jobs.setItems("All jobs");
            JobNames.fill(jobs, folders);
            jobs.select(chosen == null ? 0 : Math.max(0, folders.indexOf(chosen) + 1));
        }
        reload();
    }

    private IContainer folder() {
        int chosen = jobs.getSelectionIndex();
        return chosen <= 0 || chosen > folders.size() ? null : folders.get(chosen - 1);
    }

    private void reload() {
        Entry before = entry();
        queue = Queue.of(folder(), unsettled.getSelection());
        index = queue.near(before, index);
        show();
    }

    private Entry entry() {
        return index >= 0 && index < queue.size() ? queue.get(index) : null;
    }

    private void go(int step) {
        if (queue.size() > 0) {
            index = Math.floorMod(index + step, queue.size());
            pane.say("");
            show();
        }
    }

    private void show() {
        Entry entry = entry();
        needEntry.forEach(each -> each.setEnabled(entry != null));
        progress.setText(queue.size() == 0 ? "" : (index + 1) + " of " + queue.size() + ", " + queue.settled()
                + " of " + queue.decisions() + " settled");
        progress.requestLayout();
        waive.setEnabled(entry != null && entry.open());
        waive.setText(entry != null && entry.finding().waived() ? "Take &waiver back" : "&Waive\u2026");
        pane.show(entry, entry == null ? "" : description(entry.finding()));
        if (entry != null) {
            facts(entry);
        }
        pictures.show(entry);
    }

    private static String description(Finding finding) {
        return StudioSuite.get().checks().stream().filter(each -> each.id().equals(finding.check())).findFirst()
                .map(CheckEntry::description).orElse("");
    }

    /** Reads whose design it is, what it is printed on, and how far its review; says so when it is still in front. */
    private void facts(Entry entry) {
        Job reading = Job.createSystem("Looking at a review", (ICoreRunnable) monitor -> {
            DesignFacts facts = new DesignFacts("", "");
            String words;
            try {
                facts = DesignFacts.of(entry.path());
                Optional<JobReview> review = JobReview.of(entry.path(), Clock.systemUTC());
                words = review.isEmpty() ? "The design belongs to no job." : reviewed(review.get(), entry);
            } catch (StoreException e) {
                words = e.getMessage();
            }
            DesignFacts known = facts;
            String said = words;
            getSite().getShell().getDisplay().asyncExec(() -> {
                if (!pane.isDisposed() && entry.equals(entry())) {
                    pane.facts(known, said);
                }
            });
        });
        reading.schedule();
    }

    private static String reviewed(JobReview review, Entry entry) throws StoreException {
        String note = JobReview.newest(review.read()).map(each -> "revision " + each.getNumber()
                + (each.getNote() == null ? "" : ": " + each.getNote())).orElse("");
        return "The design: " + review.state(entry.path()).words() + (note.isEmpty() ? "" : " (" + note + ")") + ".";
    }

    private void mend(String remedy) {
        Entry entry = entry();
        Mending.run(remedy, Map.of(entry.file(), List.of(entry.finding())), this::say, this::say);
    }

    private void waive() {
        Entry entry = entry();
        if (entry.finding().waived()) {
            ReviewWork.run("Taking back a waiver", entry.path(), review -> review.takeBack(entry.path(),
                    entry.finding()), this::say, this::refresh);
            return;
        }
        WaiveDialog dialog = new WaiveDialog(getSite().getShell(), entry.finding());
        if (dialog.open() == WaiveDialog.OK) {
            ReviewWork.run("Waiving", entry.path(), review -> review.waive(entry.path(), entry.finding(),
                    dialog.reason(), dialog.who()), this::say, this::refresh);
        }
    }

    private void sendBack() {
        Optional<NoteDialog.Note> note = NoteDialog.ask(getSite().getShell(), "Send back",
                "What should change in " + entry().file().getParent().getName() + "?", true, List.of());
        note.ifPresent(each -> ReviewWork.run("Sending back", entry().path(), review -> review.sendBack(each.text(),
                each.who()), this::say, () -> done("Sent back.")));
    }

    private void revise() {
        ReviewWork.run("Making a revision", entry().path(), review -> review.revise(Person.name()), this::say,
                () -> done("A revision holds the designs as they are saved now."));
    }

    private void signOff() {
        Entry entry = entry();
        OpenErrors open = OpenErrors.of(Queue.of(entry.file().getParent(), true));
        Optional<NoteDialog.Note> note = NoteDialog.ask(getSite().getShell(), "Sign off", open.question(), false,
                open.lines());
        note.ifPresent(each -> ReviewWork.run("Signing off", entry.path(), review -> review.signOff(each.who(),
                each.text()), this::say, () -> done("Signed off; the designs are locked.")));
    }

    private void begin() {
        ReviewWork.run("Beginning a revision", entry().path(), review -> review.begin(Person.name()), this::say,
                () -> done("A new revision is begun; the designs may be changed."));
    }

    private void done(String sentence) {
        if (!pane.isDisposed()) {
            say(sentence);
            refresh();
        }
    }

    private void say(String sentence) {
        pane.say(sentence);
    }

    private void open() {
        Entry entry = entry();
        try {
            DesignPages pages = IDE.openEditor(getSite().getPage(), entry.file()).getAdapter(DesignPages.class);
            if (pages != null && !entry.finding().where().isEmpty()) {
                pages.reveal(entry.finding().side(), entry.finding().where().getEnvelopeInternal());
            }
        } catch (PartInitException e) {
            say(e.getMessage());
        }
    }

    /** Whether the pictures of the finding in front are there. */
    public boolean painted() {
        return pictures.painted();
    }

    @Override
    public void setFocus() {
        jobs.setFocus();
    }

    @Override
    public void dispose() {
        ResourcesPlugin.getWorkspace().removeResourceChangeListener(changes);
        super.dispose();
    }
}
