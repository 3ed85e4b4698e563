/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.action;

/** One thing a person can do in the editor. */
interface Act {

    /** Whether it can be done now. */
    boolean possible(Workplace at);

    /** Does it; called only when it is possible. */
    void run(Workplace at);
}
