/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.markers;

import java.util.Arrays;
import org.eclipse.core.resources.ICommand;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IProjectDescription;
import org.eclipse.core.resources.IProjectNature;
import org.eclipse.core.runtime.CoreException;

/** Has the designs of a project checked whenever they are saved. */
public final class StudioNature implements IProjectNature {

    /** Id of the nature. */
    public static final String ID = "org.pollex.markers.nature";

    private IProject project;

    @Override
    public void configure() throws CoreException {
        IProjectDescription description = project.getDescription();
        if (Arrays.stream(description.getBuildSpec()).noneMatch(each -> FindingsBuilder.ID.equals(
                each.getBuilderName()))) {
            ICommand command = description.newCommand();
            command.setBuilderName(FindingsBuilder.ID);
            ICommand[] spec = Arrays.copyOf(description.getBuildSpec(), description.getBuildSpec().length + 1);
            spec[spec.length - 1] = command;
            description.setBuildSpec(spec);
            project.setDescription(description, null);
        }
    }

    @Override
    public void deconfigure() throws CoreException {
        IProjectDescription description = project.getDescription();
        description.setBuildSpec(Arrays.stream(description.getBuildSpec())
                .filter(each -> !FindingsBuilder.ID.equals(each.getBuilderName())).toArray(ICommand[]::new));
        project.setDescription(description, null);
    }

    @Override
    public IProject getProject() {
        return project;
    }

    @Override
    public void setProject(IProject project) {
        this.project = project;
    }
}
