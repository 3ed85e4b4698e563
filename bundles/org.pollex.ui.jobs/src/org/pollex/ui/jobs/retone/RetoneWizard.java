/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.retone;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.concurrent.CancellationException;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.widgets.Shell;
import org.pollex.making.job.JobMaker;
import org.pollex.making.retone.RetoneOrder;
import org.pollex.making.retone.Retoner;
import org.pollex.markers.StudioSuite;
import org.pollex.model.design.Design;
import org.pollex.model.store.ModelFiles;
import org.pollex.rules.Suite;
import org.pollex.ui.jobs.work.Studio;
import org.pollex.ui.jobs.work.Work;

/** Makes the sibling of a design for another material and opens it. */
public final class RetoneWizard extends Wizard {

    private static final int WIDTH = 900;
    private static final int HEIGHT = 520;

    private final Path source;
    private final RetoneChoice choice;

    private RetoneWizard(Path source, RetoneChoice choice) {
        this.source = source;
        this.choice = choice;
        setWindowTitle("Re-tone for another material");
        setNeedsProgressMonitor(true);
    }

    /** Reads a design in the background, then opens the wizard for it with a material of the other lightness. */
    public static void open(Shell shell, Path source) {
        open(shell, source, false);
    }

    /** The same for a design that was given a material for which its art was not drawn. */
    public static void openForOwnMaterial(Shell shell, Path source) {
        open(shell, source, true);
    }

    private static void open(Shell shell, Path source, boolean ownMaterial) {
        RetoneWizard[] wizard = new RetoneWizard[1];
        Work.start("Reading " + source.getFileName(), monitor -> {
            Design design = ModelFiles.DESIGNS.load(source);
            Suite near = StudioSuite.get().near(source.toAbsolutePath().getParent());
            wizard[0] = new RetoneWizard(source, new RetoneChoice(source, design, near.catalogues(), ownMaterial));
        }, () -> {
            if (!shell.isDisposed()) {
                WizardDialog dialog = new WizardDialog(shell, wizard[0]);
                dialog.setPageSize(WIDTH, HEIGHT);
                dialog.open();
            }
        });
    }

    @Override
    public void addPages() {
        addPage(new RetonePage(choice, source.toAbsolutePath().getParent()));
    }

    @Override
    public boolean performFinish() {
        RetoneOrder order = choice.order();
        Path file = choice.file();
        IFile[] made = new IFile[1];
        try {
            getContainer().run(true, true, Work.inWizard(monitor -> {
                monitor.beginTask("Making the sibling", 2);
                try {
                    new Retoner(Studio.session(file.getParent())).retone(order, monitor::isCanceled);
                } catch (CancellationException e) {
                    throw new OperationCanceledException();
                }
                monitor.worked(1);
                JobMaker.enlist(file);
                made[0] = Studio.file(file, monitor);
            }));
            Studio.edit(made[0]);
            return true;
        } catch (InvocationTargetException e) {
            ((WizardPage) getContainer().getCurrentPage()).setErrorMessage(Work.sentence(e));
            return false;
        } catch (InterruptedException e) {
            return false;
        }
    }
}
