/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import org.pollex.artwork.ArtNotice;
import org.pollex.print.PrintedNotice;
import org.pollex.rules.Check;
import org.pollex.rules.CheckContext;
import org.pollex.rules.FindingSink;
import org.pollex.rules.Severity;
import org.pollex.rules.SideMeasures;

/** What of the art does not print as its file means it? Passes on what readers said, so that nothing is silent. */
public final class ArtUnsupported implements Check {

    @Override
    public void check(CheckContext context, FindingSink sink) {
        for (SideMeasures side : context.sides()) {
            for (PrintedNotice notice : side.side().notices()) {
                ArtNotice.Kind kind = notice.notice().kind();
                Severity severity = switch (kind) {
                    case UNSUPPORTED -> Severity.ERROR;
                    case FONT_REPLACED, REFUSED -> Severity.WARNING;
                    case IGNORED -> Severity.INFO;
                };
                String said = notice.notice().message().strip();
                String message = said.contains(notice.file()) ? said : notice.file() + ": " + said;
                sink.found(severity, kind.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-')).on(side.name())
                        .of(notice.mark()).at(notice.where()).say(message);
            }
        }
    }
}
