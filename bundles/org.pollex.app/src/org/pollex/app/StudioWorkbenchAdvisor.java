/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.app;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.resource.ResourceLocator;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import org.eclipse.ui.ide.IDE;
import org.pollex.markers.StudioProject;

/**
 * What does the workbench show first, what does it work on, and what does it keep?
 *
 * <p>It opens with the making perspective, over the folders of the workspace, restores windows and views as they were
 * left, and saves the workspace when it closes.
 */
class StudioWorkbenchAdvisor extends WorkbenchAdvisor {

    private static final Map<String, String> PROBLEM_IMAGES = Map.of(
            "IMG_OBJS_ERROR_PATH", "icons/full/obj16/error_tsk.svg",
            "IMG_OBJS_WARNING_PATH", "icons/full/obj16/warn_tsk.svg",
            "IMG_OBJS_INFO_PATH", "icons/full/obj16/info_tsk.svg",
            "IMG_OBJS_FIXABLE_ERROR", "icons/full/obj16/quickfix_error_obj.svg",
            "IMG_OBJS_FIXABLE_WARNING", "icons/full/obj16/quickfix_warning_obj.svg",
            "IMG_OBJS_FIXABLE_INFO", "icons/full/obj16/quickfix_info_obj.svg",
            "IMG_DLGBAN_QUICKFIX_DLG", "icons/full/wizban/quick_fix.svg");

    private final List<String> words;
    private final StartClock clock = new StartClock();

    /** @param words of the command line; designs among them are opened */
    StudioWorkbenchAdvisor(List<String> words) {
        this.words = List.copyOf(words);
    }

    @Override
    public void postStartup() {
        super.postStartup();
        IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
        if (window != null && window.getActivePage() != null) {
            OpenFiles.open(window.getActivePage(), words);
        }
        Job waiting = Job.create("Checking designs", (ICoreRunnable) monitor -> {
            Optional<StudioProject> studio = StudioProject.existing();
            if (studio.isPresent()) {
                studio.get().checkWaiting(monitor);
            }
        });
        waiting.setPriority(Job.DECORATE);
        waiting.schedule();
    }

    @Override
    public void eventLoopIdle(Display display) {
        clock.idle();
        super.eventLoopIdle(display);
    }

    @Override
    public void initialize(IWorkbenchConfigurer configurer) {
        super.initialize(configurer);
        configurer.setSaveAndRestore(true);
        // Without these adapters, views over files show nothing.
        IDE.registerAdapters();
        // The platform's list of problems and its dialog of remedies look these up and leave it to us to bring them.
        PROBLEM_IMAGES.forEach((name, path) -> ResourceLocator.imageDescriptorFromBundle("org.eclipse.ui.ide", path)
                .ifPresent(each -> configurer.declareImage(name, each, true)));
    }

    @Override
    public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        return new StudioWindowAdvisor(configurer);
    }

    @Override
    public String getInitialWindowPerspectiveId() {
        return MakingPerspective.ID;
    }

    @Override
    public IAdaptable getDefaultPageInput() {
        return ResourcesPlugin.getWorkspace().getRoot();
    }

    @Override
    public void postShutdown() {
        try {
            ResourcesPlugin.getWorkspace().save(true, null);
        } catch (CoreException e) {
            ILog.of(StudioWorkbenchAdvisor.class).error("The workspace could not be saved", e);
        }
        super.postShutdown();
    }
}
