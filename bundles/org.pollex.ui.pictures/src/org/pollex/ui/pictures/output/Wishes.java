/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.pictures.output;

import org.pollex.output.picture.PictureOptions;

/**
 * How outputs are made; each looks only at what concerns it.
 *
 * @param picture  how fine a picture is, and whether it shows the zones
 * @param report   what a report of findings is written as
 */
public record Wishes(PictureOptions picture, ReportFormat report) {

    /** What is made when nobody was asked. */
    public static Wishes usual() {
        return new Wishes(PictureDialog.usual(), ReportFormat.PAGE);
    }

    /** The same with another kind of picture. */
    public Wishes with(PictureOptions other) {
        return new Wishes(other, report);
    }

    /** The same with another kind of report. */
    public Wishes with(ReportFormat other) {
        return new Wishes(picture, other);
    }
}
