/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.fixes;

import java.util.function.Supplier;
import org.eclipse.gef.commands.Command;

/** A command that is made when it is first done, so that in the background nothing of the design is read for it. */
final class Later extends Command {

    private final Supplier<Command> made;
    private Command command;

    Later(String label, Supplier<Command> made) {
        super(label);
        this.made = made;
    }

    @Override
    public void execute() {
        command = made.get();
        command.execute();
    }

    @Override
    public boolean canUndo() {
        return command != null && command.canUndo();
    }

    @Override
    public void undo() {
        command.undo();
    }

    @Override
    public void redo() {
        command.redo();
    }
}
