/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.inks.command;

import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.handlers.HandlerUtil;
import org.pollex.markers.StudioProject;
import org.pollex.markers.StudioSuite;
import org.pollex.model.catalogue.Catalogue;
import org.pollex.model.catalogue.CatalogueFactory;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.StoreException;
import org.pollex.rules.Suite;
import org.pollex.ui.inks.swatch.SwatchDialog;

/** Takes a swatch picture for a material of the studio, whose catalogue is made when something is kept first. */
public final class TakeSwatch extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        Shell shell = HandlerUtil.getActiveShell(event);
        if (shell == null) {
            return null;
        }
        Display display = shell.getDisplay();
        Job reading = Job.create("Reading the studio's materials", monitor -> {
            try {
                IFile file = StudioFile.in(StudioProject.open(monitor).project(), monitor);
                Path path = file.getLocation().toPath();
                Catalogue own = Files.exists(path) ? ModelFiles.CATALOGUES.load(path)
                        : CatalogueFactory.eINSTANCE.createCatalogue();
                Suite around = StudioSuite.get().nearWithout(path);
                display.asyncExec(() -> open(shell, file, own, around));
                return Status.OK_STATUS;
            } catch (StoreException e) {
                return Status.error(e.getMessage());
            } catch (CoreException e) {
                return e.getStatus();
            }
        });
        reading.setUser(true);
        reading.schedule();
        return null;
    }

    private static void open(Shell shell, IFile file, Catalogue own, Suite around) {
        if (shell.isDisposed() || new SwatchDialog(shell, file.getLocation().toPath(), own, around).open()
                != SwatchDialog.OK) {
            return;
        }
        // the workspace learns of the catalogue and of the picture, and checks the designs that see them
        Job refreshing = Job.createSystem("Looking at the studio's folder", monitor -> {
            try {
                file.getParent().refreshLocal(IResource.DEPTH_ONE, monitor);
                return Status.OK_STATUS;
            } catch (CoreException e) {
                return e.getStatus();
            }
        });
        refreshing.schedule();
    }
}
