/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.pictures.output;

import java.time.LocalDate;
import org.eclipse.core.runtime.IProgressMonitor;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.session.Known;
import org.pollex.output.page.PageSize;
import org.pollex.output.proof.ProofPdf;

/** Writes the proof for the client. */
public final class ProofHandler extends OutputHandler {

    public ProofHandler() {
        super("proof", "pdf");
    }

    @Override
    protected byte[] make(DesignSession session, Known known, IProgressMonitor monitor) throws Exception {
        return ProofPdf.of(known.printed(), known.findings(), JobFacts.of(session.file(), known, LocalDate.now()),
                PageSize.A4);
    }
}
