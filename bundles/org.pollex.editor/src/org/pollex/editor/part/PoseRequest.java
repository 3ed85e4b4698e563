/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.part;

import org.eclipse.gef.Request;

/** A gesture at a grip: scale or turn a mark about a fixed point. */
final class PoseRequest extends Request {

    static final String TYPE = "org.pollex.pose";

    /** Factor on the scale. */
    double factor = 1;
    /** Degrees, clockwise on screen. */
    double degrees;
    /** Fixed point in mm. */
    double aboutX;
    double aboutY;
    /** Whether the gesture turns; else it scales. */
    final boolean turning;

    PoseRequest(boolean turning) {
        super(TYPE);
        this.turning = turning;
    }
}
