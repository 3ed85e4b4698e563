/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.session;

import java.util.List;
import org.pollex.print.Printed;
import org.pollex.rules.Finding;

/**
 * What is known of a design at one moment.
 *
 * @param printed   the flattened design, made from a copy of the model
 * @param findings  worst first, those that the job waives marked so
 */
public record Known(Printed printed, List<Finding> findings) {

    public Known {
        findings = List.copyOf(findings);
    }
}
