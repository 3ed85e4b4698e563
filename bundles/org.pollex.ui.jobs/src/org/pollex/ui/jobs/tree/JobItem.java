/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.tree;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.IAdaptable;

/**
 * One line of the list of jobs, as it was when the folder was last read. Two lines are equal when they stand for the
 * same thing in the same job, whatever they say of it.
 */
public final class JobItem implements IAdaptable {

    /** What a line stands for. */
    public enum Kind {
        /** A job folder. */
        JOB,
        /** A design of a job. */
        DESIGN,
        /** The client's files. */
        ART,
        /** What was made for the job. */
        OUTPUTS,
        /** The revisions of the job. */
        REVISIONS,
        /** One of the client's files, or one that was made. */
        FILE,
        /** One revision. */
        REVISION
    }

    private final Kind kind;
    private final JobItem parent;
    private final Path path;
    private final String name;
    private final String detail;
    private final Badge badge;
    private final IResource resource;
    private final List<JobItem> children = new ArrayList<>();

    JobItem(Kind kind, JobItem parent, Path path, String name, String detail, Badge badge, IResource resource) {
        this.kind = kind;
        this.parent = parent;
        this.path = path;
        this.name = name;
        this.detail = detail;
        this.badge = badge;
        this.resource = resource;
    }

    JobItem add(JobItem child) {
        children.add(child);
        return child;
    }

    /** The same line with only those below it that fit a text; empty when neither it nor one below fits. */
    Optional<JobItem> fitting(String text, JobItem under) {
        JobItem copy = new JobItem(kind, under, path, name, detail, badge, resource);
        boolean fits = (name + " " + detail).toLowerCase(java.util.Locale.ROOT).contains(text);
        for (JobItem child : children) {
            if (fits) {
                child.fitting("", copy).ifPresent(copy::add);
            } else {
                child.fitting(text, copy).ifPresent(copy::add);
            }
        }
        return fits || !copy.children.isEmpty() ? Optional.of(copy) : Optional.empty();
    }

    /** What it stands for. */
    public Kind kind() {
        return kind;
    }

    /** The line above; empty for a job. */
    public Optional<JobItem> parent() {
        return Optional.ofNullable(parent);
    }

    /** The job it belongs to. */
    public JobItem job() {
        return parent == null ? this : parent.job();
    }

    /** File or folder on disk. */
    public Path path() {
        return path;
    }

    /** What it is called. */
    public String name() {
        return name;
    }

    /** State in words; may be empty. */
    public String detail() {
        return detail;
    }

    /** State as a small picture. */
    public Badge badge() {
        return badge;
    }

    /** Lines below it. */
    public List<JobItem> children() {
        return Collections.unmodifiableList(children);
    }

    /** The folder or file of the workspace; empty when the workspace does not know it. */
    public Optional<IResource> resource() {
        return Optional.ofNullable(resource);
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return adapter.isInstance(resource) ? adapter.cast(resource) : null;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof JobItem item && kind == item.kind && path.equals(item.path)
                && name(kind).equals(item.name(kind)) && job().path.equals(item.job().path);
    }

    /** Revisions share the path of their job and are told apart by name. */
    private String name(Kind of) {
        return of == Kind.REVISION ? name : "";
    }

    /** Whether the other line and all below it say the same. */
    boolean says(JobItem other) {
        if (!equals(other) || !name.equals(other.name) || !detail.equals(other.detail) || badge != other.badge
                || children.size() != other.children.size()) {
            return false;
        }
        for (int i = 0; i < children.size(); i++) {
            if (!children.get(i).says(other.children.get(i))) {
                return false;
            }
        }
        return true;
    }

    @Override
    public int hashCode() {
        return kind.hashCode() * 31 + path.hashCode();
    }

    @Override
    public String toString() {
        return detail.isEmpty() ? name : name + ", " + detail;
    }
}
