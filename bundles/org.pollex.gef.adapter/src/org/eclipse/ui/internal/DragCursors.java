/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.eclipse.ui.internal;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Cursor;
import org.eclipse.swt.widgets.Display;

/**
 * Which cursor is shown while the edge of GEF's flyout palette is dragged to a side?
 *
 * <p>The platform dropped this class; GEF's palette calls it with the side under the pointer. The system's own cursors
 * are given, so nobody has to dispose of them. To be called on the display's thread.
 */
public final class DragCursors {

    /** The pointer is where nothing can be dropped. */
    public static final int INVALID = 0;
    /** The palette would go to the left side. */
    public static final int LEFT = 1;
    /** The palette would go to the right side. */
    public static final int RIGHT = 2;

    private DragCursors() {
    }

    /**
     * Gives the cursor for a side.
     *
     * @param side {@link #LEFT}, {@link #RIGHT}; any other number counts as {@link #INVALID}
     * @return a cursor that belongs to the system
     */
    public static Cursor getCursor(int side) {
        int style = switch (side) {
            case LEFT -> SWT.CURSOR_SIZEW;
            case RIGHT -> SWT.CURSOR_SIZEE;
            default -> SWT.CURSOR_NO;
        };
        return Display.getCurrent().getSystemCursor(style);
    }
}
