/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.wizard;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.wizard.IWizard;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Shell;
import org.pollex.ui.jobs.work.JobSteps;

/** Opens the windows in which jobs and designs are made; all in the window's thread. */
public final class Wizards {

    private static final int WIDTH = 760;
    private static final int HEIGHT = 470;

    private Wizards() {
    }

    /** Makes a job. */
    public static void newJob(Shell shell) {
        open(shell, new NewJobWizard());
    }

    /**
     * Makes a design.
     *
     * @param job  folder of its job; empty when the user is to choose
     * @param art  the front's art, then the back's; more are left aside
     */
    public static void newDesign(Shell shell, Optional<Path> job, List<Path> art) {
        NewDesignWizard wizard = new NewDesignWizard();
        wizard.start(job, art);
        open(shell, wizard);
    }

    /** Brings SVG files or job folders in. */
    public static void bringIn(Shell shell, Optional<Path> job) {
        BringInWizard wizard = new BringInWizard();
        wizard.start(job);
        open(shell, wizard);
    }

    /** Asks for a folder and shows it among the jobs. */
    public static void openFolder(Shell shell) {
        DirectoryDialog dialog = new DirectoryDialog(shell);
        dialog.setText("Open job folder");
        dialog.setMessage("Choose a folder with a job or designs. It stays where it is.");
        String chosen = dialog.open();
        if (chosen != null) {
            JobSteps.add(List.of(Path.of(chosen)));
        }
    }

    private static void open(Shell shell, IWizard wizard) {
        WizardDialog dialog = new WizardDialog(shell, wizard);
        dialog.setPageSize(WIDTH, HEIGHT);
        dialog.open();
    }
}
