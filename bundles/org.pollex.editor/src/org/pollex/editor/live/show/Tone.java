/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.live.show;

import org.eclipse.swt.graphics.RGB;

/** Colours of marks over the drawing. Each is drawn with a white flank, so that it stands out from any material. */
final class Tone {

    /** What does not print. */
    static final RGB ERROR = new RGB(200, 0, 90);
    /** What wears or is at risk. */
    static final RGB WARNING = new RGB(150, 80, 0);

    private Tone() {
    }
}
