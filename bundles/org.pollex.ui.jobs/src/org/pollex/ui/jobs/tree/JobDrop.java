/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.tree;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.ViewerDropAdapter;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.dnd.TransferData;
import org.pollex.ui.jobs.wizard.SvgFiles;
import org.pollex.ui.jobs.wizard.Wizards;
import org.pollex.ui.jobs.work.JobSteps;

/** Files dropped from outside: SVG files on a job become its art, folders become jobs of the list. */
final class JobDrop extends ViewerDropAdapter {

    private JobDrop(TreeViewer viewer) {
        super(viewer);
        setFeedbackEnabled(false);
    }

    static void onto(TreeViewer viewer) {
        viewer.addDropSupport(DND.DROP_COPY | DND.DROP_DEFAULT, new Transfer[] {FileTransfer.getInstance()},
                new JobDrop(viewer));
    }

    @Override
    public boolean validateDrop(Object target, int operation, TransferData type) {
        overrideOperation(DND.DROP_COPY);
        return FileTransfer.getInstance().isSupportedType(type);
    }

    @Override
    public boolean performDrop(Object data) {
        if (!(data instanceof String[] names)) {
            return false;
        }
        List<Path> files = Arrays.stream(names).map(Path::of).toList();
        List<Path> folders = files.stream().filter(Files::isDirectory).toList();
        if (!folders.isEmpty()) {
            JobSteps.add(folders);
        }
        List<Path> art = files.stream().filter(SvgFiles::is).toList();
        Optional<Path> job = getCurrentTarget() instanceof JobItem item ? Optional.of(item.job().path())
                : Optional.empty();
        if (!art.isEmpty() && job.isEmpty()) {
            Wizards.bringIn(getViewer().getControl().getShell(), job);
        } else if (!art.isEmpty()) {
            bring(job.get(), art);
        }
        return !folders.isEmpty() || !art.isEmpty();
    }

    private void bring(Path job, List<Path> art) {
        JobSteps.bringIn(job, art, copies -> {
            if (getViewer().getControl().isDisposed()) {
                return;
            }
            String what = copies.size() == 1 ? copies.get(0).getFileName().toString() : copies.size() + " files";
            MessageDialog dialog = new MessageDialog(getViewer().getControl().getShell(), "Art copied", null,
                    "Copied " + what + " into the job, unchanged. Make a design with "
                    + copies.get(0).getFileName() + " now?", MessageDialog.QUESTION, 0, "New design\u2026", "Later");
            if (dialog.open() == 0) {
                Wizards.newDesign(getViewer().getControl().getShell(), Optional.of(job), copies);
            }
        });
    }
}
