/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.resources.IContainer;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Combo;
import org.pollex.model.store.JobFolder;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.StoreException;

/** What jobs are called where one of them is chosen: by their name, with the folder behind it. */
public final class JobNames {

    private JobNames() {
    }

    /** The name of a job; that of its folder when it has none. */
    public static String of(org.pollex.model.job.Job job, String folder) {
        return job.getName() == null || job.getName().isBlank() ? folder : job.getName();
    }

    /**
     * Name and folder: {@code Harbour days (harbour)}; the folder alone when it holds no job that can be read, or the
     * job is called like it. Reads a file, so not for the window's thread.
     */
    public static String withFolder(Path folder, String shown) {
        try {
            Optional<Path> file = new JobFolder(folder).job();
            String name = file.isEmpty() ? shown : of(ModelFiles.JOBS.load(file.get()), shown);
            return name.equalsIgnoreCase(shown) ? shown : name + " (" + shown + ")";
        } catch (StoreException e) {
            // the list of jobs tells what is wrong with it; here it can still be chosen by its folder
            return shown;
        }
    }

    /**
     * Adds folders to a list to choose from, at first by the names of the folders; the names of the jobs follow as soon
     * as they are read. In the window's thread.
     */
    public static void fill(Combo combo, List<? extends IContainer> folders) {
        int first = combo.getItemCount();
        folders.forEach(each -> combo.add(each.getName()));
        List<String> plain = List.of(combo.getItems());
        Job reader = Job.createSystem("Reading names of jobs", (ICoreRunnable) monitor -> {
            List<String> names = new ArrayList<>(plain.subList(0, first));
            for (IContainer each : folders) {
                names.add(each.getLocation() == null ? each.getName()
                        : withFolder(each.getLocation().toPath(), each.getName()));
            }
            if (!combo.isDisposed()) {
                combo.getDisplay().asyncExec(() -> rename(combo, plain, names));
            }
        });
        reader.schedule();
    }

    private static void rename(Combo combo, List<String> plain, List<String> names) {
        // filled anew meanwhile, it has another reader
        if (!combo.isDisposed() && List.of(combo.getItems()).equals(plain)) {
            int chosen = combo.getSelectionIndex();
            combo.setItems(names.toArray(String[]::new));
            combo.select(chosen);
        }
    }
}
