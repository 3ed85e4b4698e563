/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.live.show;

import java.util.Optional;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.pollex.editor.side.SidePage;
import org.pollex.editor.view.Scale;

/** Says what was found where the pointer rests on a marked place. */
final class PinTips {

    /** How near the pointer must be, pixels. */
    private static final double NEAR = 6;

    private final SidePage page;
    private final FoundFigure found;
    private final Control canvas;

    private PinTips(SidePage page, FoundFigure found) {
        this.page = page;
        this.found = found;
        this.canvas = page.viewer().getControl();
    }

    static void install(SidePage page, FoundFigure found) {
        PinTips tips = new PinTips(page, found);
        tips.canvas.addListener(SWT.MouseMove, tips::pointed);
        tips.canvas.addListener(SWT.MouseExit, event -> tips.say(Optional.empty()));
    }

    private void pointed(Event event) {
        if (!found.isVisible() || (event.stateMask & SWT.BUTTON_MASK) != 0) {
            say(Optional.empty());
            return;
        }
        Point view = page.root().getZoomManager().getViewport().getViewLocation();
        double pixels = page.root().getZoomManager().getZoom() * Scale.UM;
        say(found.at((view.x + event.x) / pixels, (view.y + event.y) / pixels, NEAR / pixels));
    }

    private void say(Optional<String> text) {
        String now = text.orElse(null);
        if (!java.util.Objects.equals(now, canvas.getToolTipText())) {
            canvas.setToolTipText(now);
        }
    }
}
