/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.view;

import org.eclipse.draw2d.LightweightSystem;
import org.eclipse.gef.ui.parts.ScrollingGraphicalViewer;

/** A viewer that draws in memory of our own and shows the pixels. */
public final class CrispViewer extends ScrollingGraphicalViewer {

    @Override
    protected LightweightSystem createLightweightSystem() {
        return new NearSystem();
    }
}
