/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import org.pollex.model.catalogue.Catalogue;
import org.pollex.model.design.Design;
import org.pollex.model.job.Job;

/** The way in: one store for each kind of file. */
public final class ModelFiles {

    /** Stores {@code *.design}. */
    public static final ModelStore<Design> DESIGNS = new ModelStore<>(FileKind.DESIGN, Design.class, new Disk());
    /** Stores {@code *.job}. */
    public static final ModelStore<Job> JOBS = new ModelStore<>(FileKind.JOB, Job.class, new Disk());
    /** Stores {@code *.catalogue}. */
    public static final ModelStore<Catalogue> CATALOGUES =
            new ModelStore<>(FileKind.CATALOGUE, Catalogue.class, new Disk());

    private ModelFiles() {
    }
}
