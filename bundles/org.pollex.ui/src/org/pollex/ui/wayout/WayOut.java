/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.wayout;

import java.nio.file.Path;
import org.eclipse.ui.IWorkbenchPage;

/** Leads out of a finding, for instance through a wizard. */
public interface WayOut {

    /**
     * Goes the way. Called in the window's thread; may return before the person is through.
     *
     * @param page    the page of the window in which it was asked for
     * @param design  the file of the design with the finding, which an editor of the page may have open and changed
     */
    void take(IWorkbenchPage page, Path design);
}
