/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.handlers.HandlerUtil;
import org.pollex.ui.jobs.tree.JobItem;
import org.pollex.ui.jobs.welcome.WelcomePage;
import org.pollex.ui.jobs.wizard.Wizards;
import org.pollex.ui.jobs.work.SampleSteps;

/** Opens what a menu entry names; which one stands after the colon in {@code plugin.xml}. */
public final class Begin extends AbstractHandler implements IExecutableExtension {

    private String what = "";

    @Override
    public void setInitializationData(IConfigurationElement element, String property, Object data) {
        what = String.valueOf(data);
    }

    @Override
    public Object execute(ExecutionEvent event) {
        Shell shell = HandlerUtil.getActiveShell(event);
        switch (what) {
            case "job" -> Wizards.newJob(shell);
            case "design" -> Wizards.newDesign(shell, job(event), List.of());
            case "folder" -> Wizards.openFolder(shell);
            case "import" -> Wizards.bringIn(shell, job(event));
            case "sample" -> SampleSteps.open();
            case "welcome" -> WelcomePage.show(HandlerUtil.getActiveWorkbenchWindow(event).getActivePage());
            default -> throw new IllegalStateException("There is nothing called " + what + " to begin with.");
        }
        return null;
    }

    /** The job that is selected, or that the design in front belongs to. */
    private static Optional<Path> job(ExecutionEvent event) {
        ISelection selection = HandlerUtil.getCurrentSelection(event);
        if (selection instanceof IStructuredSelection lines && lines.getFirstElement() instanceof JobItem item) {
            return Optional.of(item.job().path());
        }
        IEditorPart editor = HandlerUtil.getActiveEditor(event);
        IResource file = editor == null ? null : Adapters.adapt(editor.getEditorInput(), IResource.class);
        return file == null || file.getParent() == null || file.getParent().getLocation() == null ? Optional.empty()
                : Optional.of(file.getParent().getLocation().toPath());
    }
}
