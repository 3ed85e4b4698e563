/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.Rectangle;

/** Lays two parts of a view beside each other, or one above the other where that leaves more room for both. */
public final class Narrow {

    private static final int NARROW = 480;
    /** Below this no part beside another is wide enough for a button. */
    private static final int NARROWEST = 320;

    private Narrow() {
    }

    /** Follows the size of what holds both parts: narrow, it has them above each other. */
    public static void follow(SashForm sash) {
        sash.addListener(SWT.Resize, event -> {
            Rectangle area = sash.getClientArea();
            int way = area.width < NARROWEST || area.width < NARROW && area.height > area.width
                    ? SWT.VERTICAL : SWT.HORIZONTAL;
            if (sash.getOrientation() != way) {
                sash.setOrientation(way);
            }
        });
    }
}
