/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.markers;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.core.resources.IContainer;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IProjectDescription;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IResourceProxyVisitor;
import org.eclipse.core.resources.IWorkspace;
import org.eclipse.core.resources.IncrementalProjectBuilder;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.pollex.model.store.JobFolder;

/**
 * The one project of the workspace that holds the studio's job folders: folders of its own, and links to folders
 * elsewhere on disk. Nothing is ever written into a linked folder by it.
 */
public final class StudioProject {

    /** Name of the project. */
    public static final String NAME = "Jobs";

    /** Folders whose files are made by the suite: copies that are kept and outputs, which are not checked. */
    static final Set<String> MADE = Set.of("revisions", JobFolder.OUTPUT);

    private final IProject project;

    private StudioProject(IProject project) {
        this.project = project;
    }

    /** The project, made and opened when it is not there yet. */
    public static StudioProject open(IProgressMonitor monitor) throws CoreException {
        IProject project = ResourcesPlugin.getWorkspace().getRoot().getProject(NAME);
        if (!project.exists()) {
            project.create(monitor);
        }
        if (!project.isOpen()) {
            project.open(monitor);
        }
        if (!project.hasNature(StudioNature.ID)) {
            IProjectDescription description = project.getDescription();
            String[] natures = Arrays.copyOf(description.getNatureIds(), description.getNatureIds().length + 1);
            natures[natures.length - 1] = StudioNature.ID;
            description.setNatureIds(natures);
            project.setDescription(description, monitor);
        }
        return new StudioProject(project);
    }

    /** The project of the workspace; empty before it was first opened. */
    public static Optional<StudioProject> existing() {
        IProject project = ResourcesPlugin.getWorkspace().getRoot().getProject(NAME);
        return project.isAccessible() ? Optional.of(new StudioProject(project)) : Optional.empty();
    }

    /** The resource. */
    public IProject project() {
        return project;
    }

    /** Where job folders of the studio's own are made. */
    public Path home() {
        return project.getLocation().toPath();
    }

    /**
     * Shows a folder of the disk among the jobs; one that is there already is found again.
     *
     * @throws CoreException when the folder is missing or cannot be linked
     */
    public IFolder add(Path folder, IProgressMonitor monitor) throws CoreException {
        Path real = folder.toAbsolutePath().normalize();
        Optional<IFolder> known = folder(real);
        if (known.isPresent()) {
            known.get().refreshLocal(IResource.DEPTH_INFINITE, monitor);
            return known.get();
        }
        if (real.startsWith(home())) {
            project.refreshLocal(IResource.DEPTH_INFINITE, monitor);
            return folder(real).orElseThrow(() -> new CoreException(org.eclipse.core.runtime.Status.error(
                    real + " is no folder.")));
        }
        IFolder link = project.getFolder(free(real.getFileName().toString()));
        IStatus fits = ResourcesPlugin.getWorkspace().validateLinkLocationURI(link, real.toUri());
        if (fits.getSeverity() == IStatus.ERROR) {
            throw new CoreException(fits);
        }
        link.createLink(real.toUri(), IResource.NONE, monitor);
        return link;
    }

    private String free(String name) {
        String free = name;
        for (int i = 2; project.getFolder(free).exists(); i++) {
            free = name + " " + i;
        }
        return free;
    }

    private static Optional<IFolder> folder(Path real) {
        for (IContainer each : ResourcesPlugin.getWorkspace().getRoot().findContainersForLocationURI(real.toUri())) {
            if (each instanceof IFolder folder && folder.exists() && folder.getProject().getName().equals(NAME)) {
                return Optional.of(folder);
            }
        }
        return Optional.empty();
    }

    /** Takes a linked folder off the list; its files stay where they are. */
    public void remove(IFolder folder, IProgressMonitor monitor) throws CoreException {
        if (!folder.isLinked()) {
            throw new CoreException(org.eclipse.core.runtime.Status.error(folder.getName()
                    + " is kept in the studio's own folder; move it elsewhere on disk to take it off the list."));
        }
        folder.delete(false, monitor);
    }

    /**
     * Checks the designs that wait because a check was stopped, also one of an earlier run of the program. Takes as
     * long as that check would have.
     */
    public void checkWaiting(IProgressMonitor monitor) throws CoreException {
        if (!FindingMarkers.uncheckedBelow(project).isEmpty()) {
            project.build(IncrementalProjectBuilder.INCREMENTAL_BUILD, monitor);
        }
    }

    /** The designs in and below a folder that is there, in the order of their paths, kept copies left out. */
    public static List<IFile> designs(IContainer folder) throws CoreException {
        Set<IFile> designs = new HashSet<>();
        if (folder.isAccessible()) {
            designs(folder, IResource.DEPTH_INFINITE, designs);
        }
        return designs.stream().sorted(Comparator.comparing(each -> each.getFullPath().toString())).toList();
    }

    static void designs(IContainer folder, int depth, Set<IFile> designs) throws CoreException {
        folder.accept((IResourceProxyVisitor) proxy -> {
            if (proxy.getType() == IResource.FILE && proxy.getName().endsWith(".design")) {
                designs.add((IFile) proxy.requestResource());
            }
            return !MADE.contains(proxy.getName());
        }, depth, IResource.NONE);
    }

    /** The resource of a file of the disk, if one of the job folders holds it. */
    public static Optional<IFile> file(Path file) {
        IWorkspace workspace = ResourcesPlugin.getWorkspace();
        for (IFile each : workspace.getRoot().findFilesForLocationURI(file.toAbsolutePath().normalize().toUri())) {
            if (each.exists()) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }
}
