/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.pictures.output;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import org.eclipse.core.runtime.IProgressMonitor;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.session.Known;
import org.pollex.output.report.FindingsPage;

/** Writes the findings as a page to read and keep. */
public final class ReportHandler extends OutputHandler {

    public ReportHandler() {
        super("report of findings", "html");
    }

    @Override
    protected byte[] make(DesignSession session, Known known, IProgressMonitor monitor) {
        String name = known.printed().design().getName();
        return FindingsPage.of(name == null ? session.file().getFileName().toString() : name, known.printed(),
                known.findings(), session.suite().checks(), LocalDate.now()).getBytes(StandardCharsets.UTF_8);
    }
}
