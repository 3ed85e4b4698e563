/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.welcome;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.part.EditorPart;
import org.pollex.making.sample.SampleJob;
import org.pollex.making.session.Refusal;
import org.pollex.ui.ScreenImages;
import org.pollex.ui.Swatches;
import org.pollex.ui.jobs.wizard.Wizards;
import org.pollex.ui.jobs.work.SampleSteps;
import org.pollex.ui.jobs.work.Studio;
import org.pollex.ui.jobs.work.Work;

/** The first page: what the suite does, and where to begin. */
public final class WelcomePage extends EditorPart {

    /** Id of the page among the editors. */
    public static final String ID = "org.pollex.ui.jobs.welcome";

    /** The view with the pages of help, when the program has one. */
    private static final String HELP = "org.pollex.app.help";
    private static final int MARGIN = 36;
    private static final int WIDTH = 460;
    private static final int LARGER = 6;
    private static final int PICTURE = 150;
    private static final int PICTURES = 3;

    private final List<Image> images = new ArrayList<>();
    private Composite pictures;
    private Button sample;

    /** Shows the page, opening it if it is not open. */
    public static void show(IWorkbenchPage page) {
        try {
            page.openEditor(new WelcomeInput(), ID);
        } catch (PartInitException e) {
            ILog.of(WelcomePage.class).error("The first page could not be shown", e);
        }
    }

    @Override
    public void init(IEditorSite site, IEditorInput input) {
        setSite(site);
        setInput(input);
        setPartName(input.getName());
    }

    @Override
    public void createPartControl(Composite parent) {
        ScrolledComposite scrolled = new ScrolledComposite(parent, SWT.H_SCROLL | SWT.V_SCROLL);
        scrolled.setExpandHorizontal(true);
        scrolled.setExpandVertical(true);
        Composite area = new Composite(scrolled, SWT.NONE);
        area.setBackgroundMode(SWT.INHERIT_FORCE);
        scrolled.setContent(area);
        GridLayoutFactory.swtDefaults().margins(MARGIN, MARGIN).spacing(0, 10).applyTo(area);
        LocalResourceManager fonts = new LocalResourceManager(JFaceResources.getResources(), area);
        Label title = words(area, "From a client's logo to a print that works");
        title.setFont(fonts.create(FontDescriptor.createFrom(JFaceResources.getHeaderFont()).increaseHeight(LARGER)));
        words(area, "Place art on things as small as a thumb, see what will not print and why, and send the client a "
                + "proof to sign.");
        pictures = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(PICTURES).spacing(0, 0).applyTo(pictures);
        GridDataFactory.swtDefaults().hint(SWT.DEFAULT, PICTURE + 12).applyTo(pictures);
        // each has its room from the start, so that nothing is laid out anew when the pictures come
        for (int i = 0; i < PICTURES; i++) {
            GridDataFactory.swtDefaults().hint(PICTURE, PICTURE).applyTo(new Label(pictures, SWT.NONE));
        }
        sample = new Button(area, SWT.PUSH);
        sample.setText("&Open the sample job");
        sample.setFont(fonts.create(FontDescriptor.createFrom(JFaceResources.getDialogFont()).increaseHeight(2)
                .setStyle(SWT.BOLD)));
        GridDataFactory.swtDefaults().hint(SWT.DEFAULT, sample.computeSize(SWT.DEFAULT, SWT.DEFAULT).y + 8)
                .applyTo(sample);
        words(area, "Three designs for an invented ferry line, with findings to look at. It is written into the "
                + "studio's own folder.");
        space(area);
        link(area, "New job\u2026", "for a client of yours", () -> Wizards.newJob(shell()));
        link(area, "Open job folder\u2026", "that is on this disk already", () -> Wizards.openFolder(shell()));
        if (PlatformUI.getWorkbench().getViewRegistry().find(HELP) != null) {
            link(area, "Help", "on each step, from art to proof", this::help);
        }
        sample.addListener(SWT.Selection, event -> openSample());
        scrolled.setMinSize(area.computeSize(SWT.DEFAULT, SWT.DEFAULT));
        draw(area);
    }

    private void help() {
        try {
            getSite().getPage().showView(HELP);
        } catch (PartInitException e) {
            ILog.of(WelcomePage.class).error("The pages of help could not be shown", e);
        }
    }

    private org.eclipse.swt.widgets.Shell shell() {
        return getSite().getShell();
    }

    private void openSample() {
        sample.setEnabled(false);
        Job job = SampleSteps.open();
        job.addJobChangeListener(new org.eclipse.core.runtime.jobs.JobChangeAdapter() {
            @Override
            public void done(org.eclipse.core.runtime.jobs.IJobChangeEvent event) {
                Work.later(() -> {
                    if (!sample.isDisposed()) {
                        sample.setEnabled(true);
                    }
                });
            }
        });
    }

    private static Label words(Composite area, String words) {
        Label label = new Label(area, SWT.WRAP);
        label.setText(words);
        GridDataFactory.swtDefaults().hint(WIDTH, SWT.DEFAULT).applyTo(label);
        return label;
    }

    private static void space(Composite area) {
        Label space = new Label(area, SWT.SEPARATOR | SWT.HORIZONTAL);
        GridDataFactory.swtDefaults().hint(WIDTH, SWT.DEFAULT).indent(0, 6).applyTo(space);
    }

    private static void link(Composite area, String name, String more, Runnable run) {
        Link link = new Link(area, SWT.NONE);
        link.setText("<a>" + name + "</a>  " + more);
        link.addListener(SWT.Selection, event -> run.run());
    }

    /** The designs of the sample job as they print, drawn in the background. */
    private void draw(Composite area) {
        int backdrop = ScreenImages.rgb(area.getBackground());
        Job job = Job.create("Drawing pictures", monitor -> {
            List<ImageData> drawn = new ArrayList<>();
            try {
                Path here = Path.of("").toAbsolutePath();
                new SampleJob(Studio.session(here)).printed(piece -> {
                    if (monitor.isCanceled()) {
                        throw Refusal.wrongUse("Stopped.");
                    }
                }).forEach(each -> drawn.add(ScreenImages.data(Swatches.item(each, false, PICTURE, backdrop))));
            } catch (Refusal e) {
                // the page does without pictures; the button says what is wrong when it is pressed
                ILog.of(WelcomePage.class).info("The sample could not be drawn: " + e.getMessage());
            }
            Work.later(() -> show(drawn));
            return Status.OK_STATUS;
        });
        job.setSystem(true);
        job.schedule();
        area.addDisposeListener(event -> job.cancel());
    }

    private void show(List<ImageData> drawn) {
        if (pictures.isDisposed()) {
            return;
        }
        Control[] places = pictures.getChildren();
        for (int i = 0; i < Math.min(places.length, drawn.size()); i++) {
            Image image = new Image(pictures.getDisplay(), drawn.get(i));
            images.add(image);
            ((Label) places[i]).setImage(image);
        }
    }

    @Override
    public void setFocus() {
        sample.setFocus();
    }

    @Override
    public void dispose() {
        images.forEach(Image::dispose);
        super.dispose();
    }

    @Override
    public boolean isDirty() {
        return false;
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        // there is nothing to save
    }

    @Override
    public void doSaveAs() {
        // there is nothing to save
    }
}
