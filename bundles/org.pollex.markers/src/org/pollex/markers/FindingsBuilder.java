/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.markers;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
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
 * Checks designs that were saved, in the background, and puts what it finds on them. A changed job, catalogue or art
 * file has the designs of its folder checked again. Holds no part of the workspace while it works, so that nothing
 * waits for it; when it is cancelled, what was not reached is checked next time.
 */
public final class FindingsBuilder extends IncrementalProjectBuilder {

    /** Id of the builder. */
    public static final String ID = "org.pollex.markers.builder";

    private static final String DESIGN = "design";
    private static final Set<String> SHARED = Set.of("job", "catalogue", "svg");

    private final Set<IFile> left = new LinkedHashSet<>();

    @Override
    public ISchedulingRule getRule(int kind, Map<String, String> args) {
        return null;
    }

    @Override
    protected IProject[] build(int kind, Map<String, String> args, IProgressMonitor monitor) throws CoreException {
        IResourceDelta delta = kind == FULL_BUILD ? null : getDelta(getProject());
        Set<IFile> designs = new LinkedHashSet<>(left);
        if (delta == null) {
            designs(getProject(), designs);
        } else {
            delta.accept(each -> {
                changed(each, designs);
                return true;
            });
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

    private static void changed(IResourceDelta delta, Set<IFile> designs) throws CoreException {
        if (!(delta.getResource() instanceof IFile file) || delta.getKind() == IResourceDelta.CHANGED
                && (delta.getFlags() & (IResourceDelta.CONTENT | IResourceDelta.REPLACED)) == 0) {
            return;
        }
        String extension = String.valueOf(file.getFileExtension());
        if (DESIGN.equals(extension)) {
            // numbered folders below "revisions" hold copies that are kept, not checked
            if (delta.getKind() != IResourceDelta.REMOVED
                    && !Arrays.asList(file.getProjectRelativePath().segments()).contains("revisions")) {
                designs.add(file);
            }
        } else if (SHARED.contains(extension) && file.getParent() != null) {
            IContainer folder = file.getParent();
            boolean art = "art".equals(folder.getName()) && folder.getParent() != null;
            designs(art ? folder.getParent() : folder, designs);
        }
    }

    private static void designs(IContainer container, Set<IFile> designs) throws CoreException {
        if (container.isAccessible()) {
            container.accept(proxy -> {
                if (proxy.getType() == IResource.FILE && proxy.getName().endsWith("." + DESIGN)) {
                    designs.add((IFile) proxy.requestResource());
                }
                return !"revisions".equals(proxy.getName());
            }, IResource.NONE);
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
                if (path != null) {
                    files.add(file);
                    answers.add(lanes.submit(() -> DesignCheck.of(path, suite)));
                }
            }
            for (int i = 0; i < files.size(); i++) {
                if (progress.isCanceled() || isInterrupted()) {
                    throw new OperationCanceledException();
                }
                progress.subTask(files.get(i).getName() + ", " + (i + 1) + " of " + files.size());
                FindingMarkers.replace(files.get(i), answer(files.get(i), answers.get(i)));
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
        }
    }

    private static DesignCheck answer(IFile file, Future<DesignCheck> answer) throws InterruptedException {
        try {
            return answer.get();
        } catch (ExecutionException e) {
            ILog.of(FindingsBuilder.class).error(file.getName() + " could not be checked", e.getCause());
            return new DesignCheck(List.of(), java.util.Optional.of(
                    file.getName() + " could not be checked; what went wrong is in the log."));
        }
    }
}
