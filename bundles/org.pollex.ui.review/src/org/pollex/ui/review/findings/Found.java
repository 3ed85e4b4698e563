/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.findings;

import java.nio.file.Path;
import org.pollex.rules.Finding;

/**
 * A finding and the design it is on.
 *
 * @param design   file of the design
 * @param finding  on it
 */
record Found(Path design, Finding finding) {
}
