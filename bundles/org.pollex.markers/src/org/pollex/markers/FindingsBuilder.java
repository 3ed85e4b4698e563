/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.markers;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.eclipse.core.resources.IContainer;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IResourceDelta;
import org.eclipse.core.resources.IncrementalProjectBuilder;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.ISchedulingRule;
import org.pollex.rules.Suite;

/**
 * Checks designs that were saved, in the background, and puts what it finds on them. A changed catalogue has the
 * designs in and below its folder checked again, a job those beside it, and art, wherever it lies, those that place
 * it. Holds no part of the workspace while it works, so that nothing waits for it. When it is cancelled, what was not
 * reached is marked as not checked, and checked the next time, also after a new start.
 */
public final class FindingsBuilder extends IncrementalProjectBuilder {

    /** Id of the builder. */
    public static final String ID = "org.pollex.markers.builder";

    private static final String DESIGN = "design";
    private static final String JOB = "job";
    private static final String CATALOGUE = "catalogue";
    private static final long LOOK_MILLIS = 100;

    private final Set<IFile> left = new LinkedHashSet<>();

    @Override
    public ISchedulingRule getRule(int kind, Map<String, String> args) {
        return null;
    }

    @Override
    protected IProject[] build(int kind, Map<String, String> args, IProgressMonitor monitor) throws CoreException {
        IResourceDelta delta = kind == FULL_BUILD ? null : getDelta(getProject());
        Set<IFile> designs = new LinkedHashSet<>(left);
        designs.addAll(FindingMarkers.uncheckedBelow(getProject()));
        if (delta == null) {
            designs(getProject(), IResource.DEPTH_INFINITE, designs);
        } else {
            Set<IFile> art = new LinkedHashSet<>();
            delta.accept(each -> {
                changed(each, designs, art);
                return !StudioProject.MADE.contains(each.getResource().getName());
            });
            placing(art, designs);
        }
        designs.removeIf(each -> !each.exists());
        check(designs, SubMonitor.convert(monitor, "Checking designs", Math.max(1, designs.size())));
        return new IProject[0];
    }

    @Override
    protected void clean(IProgressMonitor monitor) throws CoreException {
        left.clear();
        getProject().deleteMarkers(FindingMarkers.TYPE, true, IResource.DEPTH_INFINITE);
    }

    private static void changed(IResourceDelta delta, Set<IFile> designs, Set<IFile> art) throws CoreException {
        if (!(delta.getResource() instanceof IFile file) || delta.getKind() == IResourceDelta.CHANGED
                && (delta.getFlags() & (IResourceDelta.CONTENT | IResourceDelta.REPLACED)) == 0) {
            return;
        }
        switch (String.valueOf(file.getFileExtension())) {
            case DESIGN -> {
                if (delta.getKind() != IResourceDelta.REMOVED) {
                    designs.add(file);
                }
            }
            case JOB -> designs(file.getParent(), IResource.DEPTH_ONE, designs);
            case CATALOGUE -> designs(file.getParent(), IResource.DEPTH_INFINITE, designs);
            default -> art.add(file);
        }
    }

    private static void designs(IContainer container, int depth, Set<IFile> designs) throws CoreException {
        if (container.isAccessible()) {
            StudioProject.designs(container, depth, designs);
        }
    }

    /** Adds the designs that place changed files. Art lies in the folder of its design or in folders below. */
    private static void placing(Set<IFile> art, Set<IFile> designs) throws CoreException {
        Set<Path> files = new HashSet<>();
        Set<IFile> near = new LinkedHashSet<>();
        Set<IContainer> seen = new HashSet<>();
        for (IFile file : art) {
            if (file.getLocation() != null) {
                files.add(file.getLocation().toPath().normalize());
                for (IContainer each = file.getParent(); each != null && each.getType() == IResource.FOLDER
                        && seen.add(each); each = each.getParent()) {
                    designs(each, IResource.DEPTH_ONE, near);
                }
            }
        }
        near.removeAll(designs);
        for (IFile each : near) {
            if (each.getLocation() != null && ArtUse.uses(each.getLocation().toPath(), files)) {
                designs.add(each);
            }
        }
    }

    private void check(Set<IFile> designs, SubMonitor progress) throws CoreException {
        if (designs.isEmpty()) {
            return;
        }
        Suite suite = StudioSuite.get();
        // one core is left to the window
        ExecutorService lanes = Executors.newFixedThreadPool(Math.max(1, Runtime.getRuntime().availableProcessors() -
                1));
        Set<IFile> open = new LinkedHashSet<>(designs);
        try {
            List<IFile> files = new ArrayList<>();
            List<Future<DesignCheck>> answers = new ArrayList<>();
            for (IFile file : designs) {
                Path path = file.getLocation() == null ? null : file.getLocation().toPath();
                if (path == null) {
                    open.remove(file);
                } else {
                    files.add(file);
                    answers.add(lanes.submit(() -> DesignCheck.of(path, suite)));
                }
            }
            for (int i = 0; i < files.size(); i++) {
                progress.subTask(files.get(i).getName() + ", " + (i + 1) + " of " + files.size());
                FindingMarkers.replace(files.get(i), answer(files.get(i), answers.get(i), progress), suite);
                open.remove(files.get(i));
                progress.worked(1);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new OperationCanceledException();
        } finally {
            lanes.shutdownNow();
            left.clear();
            left.addAll(open);
            if (progress.isCanceled()) {
                for (IFile each : open) {
                    FindingMarkers.unchecked(each);
                }
            }
        }
    }

    /** Waits for an answer, as long as nobody cancels or needs what this build keeps from him. */
    private DesignCheck answer(IFile file, Future<DesignCheck> answer, SubMonitor progress)
            throws InterruptedException {
        while (true) {
            if (progress.isCanceled() || isInterrupted()) {
                throw new OperationCanceledException();
            }
            try {
                return answer.get(LOOK_MILLIS, TimeUnit.MILLISECONDS);
            } catch (TimeoutException e) {
                // look whether it is cancelled, and wait on
                continue;
            } catch (ExecutionException e) {
                ILog.of(FindingsBuilder.class).error(file.getName() + " could not be checked", e.getCause());
                return new DesignCheck(List.of(), java.util.Optional.of(
                        file.getName() + " could not be checked; what went wrong is in the log."));
            }
        }
    }
}
