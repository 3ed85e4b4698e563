/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

/** Answers one question about a printed design. Stateless; may be called by several threads at once. */
public interface Check {

    /**
     * Looks at the design and hands over what it finds.
     *
     * @param context  the design with shared measures and the catalogue's settings
     * @param sink     takes findings
     */
    void check(CheckContext context, FindingSink sink);
}
