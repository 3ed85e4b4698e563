/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.app.problem;

import org.eclipse.ui.views.markers.MarkerSupportView;

/**
 * Lists what is found on the saved designs of all jobs: where, what was measured, against which limit, by which check.
 */
public final class ProblemsView extends MarkerSupportView {

    /** Id of the view. */
    public static final String ID = "org.pollex.app.problem.list";

    /** Made by the platform. */
    public ProblemsView() {
        super("org.pollex.app.problem.findings");
    }
}
