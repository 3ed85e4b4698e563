/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.pictures.output;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.resources.IContainer;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.handlers.HandlerUtil;
import org.pollex.editor.session.DesignSession;
import org.pollex.model.store.JobFolder;
import org.pollex.model.store.StoreException;

/**
 * Makes an output from the design in front; when designs or jobs are selected in a view that is active, from those.
 */
abstract class OutputHandler extends AbstractHandler {

    private final Output output;

    OutputHandler(Output output) {
        this.output = output;
    }

    @Override
    public Object execute(ExecutionEvent event) {
        Shell shell = HandlerUtil.getActiveWorkbenchWindow(event).getShell();
        IWorkbenchPage page = HandlerUtil.getActiveWorkbenchWindow(event).getActivePage();
        List<IResource> selected = HandlerUtil.getActivePart(event) instanceof IEditorPart ? List.of()
                : resources(HandlerUtil.getCurrentSelection(event));
        List<DesignSession> open = sessions(page);
        if (!selected.isEmpty()) {
            look(shell, selected, open);
            return null;
        }
        IEditorPart editor = page.getActiveEditor();
        DesignSession session = editor == null ? null : editor.getAdapter(DesignSession.class);
        if (session == null) {
            MessageDialog.openInformation(shell, "No design", "Open a design, or select designs or jobs in the list of "
                    + "jobs, to make a " + output.words() + ".");
            return null;
        }
        source(session.file(), open, shell).ifPresent(each -> OutputDialogs.one(shell, output, each));
        return null;
    }

    private static List<IResource> resources(Object selection) {
        List<IResource> found = new ArrayList<>();
        if (selection instanceof IStructuredSelection lines) {
            for (Object each : lines.toList()) {
                IResource resource = Adapters.adapt(each, IResource.class);
                if (resource instanceof IContainer
                        || resource instanceof IFile file && "design".equals(file.getFileExtension())) {
                    found.add(resource);
                }
            }
        }
        return found;
    }

    /** Lists the designs of what is selected, off the window's thread, and goes on from there. */
    private void look(Shell shell, List<IResource> selected, List<DesignSession> open) {
        Job job = Job.createSystem("Looking for designs", monitor -> {
            Set<Path> designs = new LinkedHashSet<>();
            Optional<String> trouble = Optional.empty();
            try {
                for (IResource each : selected) {
                    Path path = each.getLocation().toPath();
                    if (each instanceof IContainer) {
                        designs.addAll(new JobFolder(path).designs());
                    } else {
                        designs.add(path);
                    }
                }
            } catch (StoreException e) {
                trouble = Optional.of(e.getMessage());
            }
            String said = trouble.orElse(designs.isEmpty() ? "There is no design in what is selected." : "");
            shell.getDisplay().asyncExec(() -> {
                if (!shell.isDisposed()) {
                    found(shell, said, List.copyOf(designs), open);
                }
            });
        });
        job.schedule();
    }

    private void found(Shell shell, String trouble, List<Path> designs, List<DesignSession> open) {
        if (!trouble.isEmpty()) {
            MessageDialog.openInformation(shell, "No " + output.words(), trouble);
            return;
        }
        List<Source> sources = new ArrayList<>();
        for (Path each : designs) {
            Optional<Source> source = source(each, open, shell);
            if (source.isEmpty()) {
                return;
            }
            sources.add(source.get());
        }
        if (sources.size() == 1) {
            OutputDialogs.one(shell, output, sources.get(0));
        } else {
            OutputDialogs.many(shell, output, sources);
        }
    }

    /** The design as its editor has it, or as it is on disk; tells and gives nothing when it cannot be printed. */
    private Optional<Source> source(Path design, List<DesignSession> open, Shell shell) {
        for (DesignSession each : open) {
            if (each.file().toAbsolutePath().normalize().equals(design.toAbsolutePath().normalize())) {
                if (each.trouble().isEmpty() && each.fresh() && each.known().isPresent()) {
                    return Optional.of(new Source(design, each.known()));
                }
                MessageDialog.openInformation(shell, "No " + output.words(), each.trouble().orElse(
                        design.getFileName() + " is still being checked; try again in a moment."));
                return Optional.empty();
            }
        }
        return Optional.of(Source.saved(design));
    }

    private static List<DesignSession> sessions(IWorkbenchPage page) {
        List<DesignSession> open = new ArrayList<>();
        for (IEditorReference each : page.getEditorReferences()) {
            IEditorPart editor = each.getEditor(false);
            DesignSession session = editor == null ? null : editor.getAdapter(DesignSession.class);
            if (session != null) {
                open.add(session);
            }
        }
        return open;
    }
}
