/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.live.show;

import org.eclipse.swt.graphics.RGB;
import org.pollex.editor.look.Look;

/** Colours of marks over the drawing. Each is drawn with a white flank, so that it stands out from any material. */
final class Tone {

    /** What does not print. */
    static final RGB ERROR = rgb(Look.ERROR);
    /** What wears or is at risk. */
    static final RGB WARNING = rgb(Look.WARNING);

    private Tone() {
    }

    private static RGB rgb(int colour) {
        return new RGB(colour >> 16 & 255, colour >> 8 & 255, colour & 255);
    }
}
