/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.word;

import org.pollex.commandline.session.About;
import picocli.CommandLine.IVersionProvider;

/** What {@code --version} says. */
public final class VersionText implements IVersionProvider {

    @Override
    public String[] getVersion() {
        return new String[] {"Pollex " + About.VERSION};
    }
}
