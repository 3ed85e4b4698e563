/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.pictures.output;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.eclipse.core.resources.IContainer;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.ui.PlatformUI;

/** Makes an output of one design or many in the background, with progress; one that fails does not stop the rest. */
public final class OutputWork extends Job {

    /**
     * What came of it.
     *
     * @param written  files that are there now
     * @param failed   a sentence for each design that could not be made
     */
    public record Result(List<Path> written, List<String> failed) {

        public Result {
            written = List.copyOf(written);
            failed = List.copyOf(failed);
        }
    }

    private final Output output;
    private final Wishes wishes;
    private final Map<Source, Path> files;
    private final Consumer<Result> then;

    /** The same as it usually is. */
    public OutputWork(Output output, Map<Source, Path> files, Consumer<Result> then) {
        this(output, Wishes.usual(), files, then);
    }

    /**
     * Work that starts when it is scheduled.
     *
     * @param wishes  how it is made
     * @param files   where each output goes; what is there is replaced
     * @param then    is run in the window's thread afterwards, also after a cancel
     */
    public OutputWork(Output output, Wishes wishes, Map<Source, Path> files, Consumer<Result> then) {
        super("Writing " + (files.size() == 1 ? "the " + output.words() : files.size() + " files"));
        this.output = output;
        this.wishes = wishes;
        this.files = Map.copyOf(files);
        this.then = then;
        setUser(true);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        SubMonitor progress = SubMonitor.convert(monitor, getName(), files.size());
        List<Path> written = new ArrayList<>();
        List<String> failed = new ArrayList<>();
        IStatus status = Status.OK_STATUS;
        try {
            for (Map.Entry<Source, Path> each : files.entrySet()) {
                progress.subTask(each.getValue().getFileName().toString());
                one(each.getKey(), each.getValue(), written, failed);
                progress.split(1);
            }
        } catch (OperationCanceledException | InterruptedException e) {
            status = Status.CANCEL_STATUS;
        }
        Result result = new Result(written, failed);
        if (PlatformUI.isWorkbenchRunning()) {
            PlatformUI.getWorkbench().getDisplay().asyncExec(() -> then.accept(result));
        }
        return status;
    }

    private void one(Source source, Path file, List<Path> written, List<String> failed) throws InterruptedException {
        try {
            byte[] bytes = source.make(output, wishes);
            Files.createDirectories(file.getParent());
            save(file, bytes);
            written.add(file);
            refresh(file);
        } catch (InterruptedException e) {
            throw e;
        } catch (IOException e) {
            failed.add(file + " cannot be written (" + e.getMessage() + "); choose another folder.");
        } catch (CoreException e) {
            ILog.of(OutputWork.class).warn(file + " is written but the list of jobs was not told", e);
        } catch (RuntimeException e) {
            ILog.of(OutputWork.class).error(getName(), e);
            failed.add(source.design().getFileName() + " could not be made; what went wrong is in the log.");
        } catch (Exception e) {
            failed.add(source.design().getFileName() + ": " + e.getMessage());
        }
    }

    /** Writes beside the file and renames, so that the file is whole or not there. */
    private static void save(Path file, byte[] bytes) throws IOException {
        Path fresh = Files.createTempFile(file.getParent(), "." + file.getFileName(), ".new");
        try {
            Files.write(fresh, bytes);
            Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(fresh);
        }
    }

    private static void refresh(Path file) throws CoreException {
        for (Path folder : new Path[] {file.getParent(), file.getParent().getParent()}) {
            for (IContainer each : folder == null ? new IContainer[0]
                    : ResourcesPlugin.getWorkspace().getRoot().findContainersForLocationURI(folder.toUri())) {
                if (each.isAccessible()) {
                    each.refreshLocal(IResource.DEPTH_ONE, null);
                }
            }
        }
    }
}
