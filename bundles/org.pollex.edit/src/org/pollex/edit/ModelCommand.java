/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import java.util.Objects;
import org.eclipse.gef.commands.Command;

/**
 * A change of the model that can be taken back. Subclasses check their arguments in the constructor, keep the old state
 * in {@link #keep()}, change the model in {@link #redo()} and put the old state back in {@link #undo()}; after undo the
 * model is the same to the byte as before.
 */
public abstract class ModelCommand extends Command {

    /** @param label what the change does, verb first, as the undo menu shows it */
    protected ModelCommand(String label) {
        super(Objects.requireNonNull(label));
    }

    /** Keeps what {@link #undo()} needs; called once, before the first change. */
    protected abstract void keep();

    @Override
    public final void execute() {
        keep();
        redo();
    }

    @Override
    public abstract void redo();

    @Override
    public abstract void undo();
}
