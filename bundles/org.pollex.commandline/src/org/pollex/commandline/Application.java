/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.pollex.making.session.Session;
import org.pollex.rules.Suite;

/**
 * The command line as an application of the platform; its arguments are the words of the call. A launcher that changes
 * the folder tells the user's one in the system property {@value #FOLDER}. Text goes out as UTF-8.
 */
public final class Application implements IApplication {

    /** System property with the folder of the call. */
    public static final String FOLDER = "pollex.cwd";

    @Override
    public Object start(IApplicationContext context) {
        String[] args = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        PrintStream out = utf8(FileDescriptor.out);
        PrintStream err = utf8(FileDescriptor.err);
        Suite suite = Suite.installed();
        Session session = new Session(out, err, folder(), suite, LocalDate.now(), Terminal.takesErrors());
        return Main.run(args, session);
    }

    private static PrintStream utf8(FileDescriptor descriptor) {
        return new PrintStream(new FileOutputStream(descriptor), true, StandardCharsets.UTF_8);
    }

    private static Path folder() {
        String told = System.getProperty(FOLDER);
        return Path.of(told == null || told.isBlank() ? "" : told).toAbsolutePath();
    }

    @Override
    public void stop() {
        // A call ends by itself; the platform ends the process when it is told to.
    }
}
