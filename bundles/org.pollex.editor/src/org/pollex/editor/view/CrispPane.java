/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.view;

import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.ScalableFreeformLayeredPane;

/**
 * A layered pane that scales by the transform of the graphics context. The stock pane draws through a class that rounds
 * to whole pixels and knows neither paths nor patterns.
 */
final class CrispPane extends ScalableFreeformLayeredPane {

    @Override
    protected void paintClientArea(Graphics graphics) {
        graphics.pushState();
        graphics.scale(getScale());
        graphics.pushState();
        paintChildren(graphics);
        graphics.popState();
        graphics.popState();
    }
}
