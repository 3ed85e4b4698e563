/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.fixes;

import org.eclipse.gef.commands.Command;

/** What a remedy for a finding comes to. */
public sealed interface Remedy {

    /**
     * It can be done, as one step of undo.
     *
     * @param command  to be executed on the design the remedy was asked for
     * @param said     what it does, in one sentence
     */
    record Done(Command command, String said) implements Remedy {
    }

    /**
     * It cannot be done here.
     *
     * @param why  one sentence that says what to do instead
     */
    record Refused(String why) implements Remedy {
    }
}
