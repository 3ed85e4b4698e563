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
import java.util.Optional;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.handlers.HandlerUtil;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.session.Known;
import org.pollex.markers.StudioProject;

/** Asks where, writes in the background, and offers to open what was written. */
abstract class OutputHandler extends AbstractHandler {

    private final String what;
    private final String extension;

    /**
     * @param what       as the user calls it, such as proof
     * @param extension  of the file, without a dot
     */
    OutputHandler(String what, String extension) {
        this.what = what;
        this.extension = extension;
    }

    /** The bytes of the file. */
    protected abstract byte[] make(DesignSession session, Known known, IProgressMonitor monitor) throws Exception;

    @Override
    public Object execute(ExecutionEvent event) {
        Shell shell = HandlerUtil.getActiveShell(event);
        IEditorPart editor = HandlerUtil.getActiveEditor(event);
        DesignSession session = editor == null ? null : editor.getAdapter(DesignSession.class);
        Optional<Known> known = session == null ? Optional.empty() : session.known();
        if (known.isEmpty()) {
            MessageDialog.openInformation(shell, "No " + what, session == null
                    ? "Open the design first that the " + what + " is to show."
                    : session.trouble().orElse("The design is still being checked; try again in a moment."));
            return null;
        }
        ask(shell, session).ifPresent(file -> write(shell, session, known.get(), file));
        return null;
    }

    private Optional<Path> ask(Shell shell, DesignSession session) {
        String name = session.file().getFileName().toString().replaceFirst("\\.design$", "") + "." + extension;
        Path out = session.file().resolveSibling("out");
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText("Write the " + what);
        dialog.setOverwrite(true);
        dialog.setFilterPath((Files.isDirectory(out) ? out : session.file().getParent()).toString());
        dialog.setFileName(name);
        dialog.setFilterExtensions(new String[] {"*." + extension});
        return Optional.ofNullable(dialog.open()).map(Path::of);
    }

    private void write(Shell shell, DesignSession session, Known known, Path file) {
        Job job = new Job("Writing the " + what + " " + file.getFileName()) {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                monitor.beginTask(getName(), IProgressMonitor.UNKNOWN);
                try {
                    byte[] bytes = make(session, known, monitor);
                    if (monitor.isCanceled()) {
                        return Status.CANCEL_STATUS;
                    }
                    save(file, bytes);
                    refresh(file, monitor);
                    later(shell, () -> offer(shell, file));
                } catch (IOException e) {
                    later(shell, () -> MessageDialog.openError(shell, "Not written", file + " cannot be written ("
                            + e.getMessage() + "); choose another folder."));
                } catch (Exception e) {
                    ILog.of(OutputHandler.class).error(getName(), e);
                    later(shell, () -> MessageDialog.openError(shell, "Not written", String.valueOf(e.getMessage())));
                }
                return Status.OK_STATUS;
            }
        };
        job.setUser(true);
        job.schedule();
    }

    /** Writes beside the file and renames, so that the file is whole or not there. */
    static void save(Path file, byte[] bytes) throws IOException {
        Path fresh = file.resolveSibling(file.getFileName() + ".new");
        Files.write(fresh, bytes);
        Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    }

    private static void refresh(Path file, IProgressMonitor monitor) throws CoreException {
        if (StudioProject.existing().isPresent()) {
            for (org.eclipse.core.resources.IContainer each : org.eclipse.core.resources.ResourcesPlugin.getWorkspace()
                    .getRoot().findContainersForLocationURI(file.getParent().toUri())) {
                each.refreshLocal(IResource.DEPTH_ONE, monitor);
            }
        }
    }

    private static void later(Shell shell, Runnable run) {
        if (!shell.isDisposed()) {
            shell.getDisplay().asyncExec(() -> {
                if (!shell.isDisposed()) {
                    run.run();
                }
            });
        }
    }

    private static void offer(Shell shell, Path file) {
        int answer = MessageDialog.open(MessageDialog.INFORMATION, shell, "Written", file + " is written.", SWT.NONE,
                "Open", "Show in folder", "Close");
        if (answer == 0) {
            Program.launch(file.toString());
        } else if (answer == 1) {
            Program.launch(file.getParent().toString());
        }
    }
}
