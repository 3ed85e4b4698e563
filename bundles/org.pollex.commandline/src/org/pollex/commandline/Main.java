/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.Session;
import org.pollex.commandline.word.CheckWord;
import org.pollex.commandline.word.CompletionWord;
import org.pollex.commandline.word.DemoWord;
import org.pollex.commandline.word.ListWord;
import org.pollex.commandline.word.NewWord;
import org.pollex.commandline.word.PictureWord;
import org.pollex.commandline.word.PlaceWord;
import org.pollex.commandline.word.ProofWord;
import org.pollex.commandline.word.RankWord;
import org.pollex.commandline.word.RetoneWord;
import org.pollex.commandline.word.StudioWord;
import org.pollex.commandline.word.WearWord;
import org.pollex.rules.Contributions;
import org.pollex.rules.Suite;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/**
 * Runs one call of the command line in this process. Every failure ends as one line on the error stream and a number
 * of {@link ExitCode}; no stack trace is ever shown.
 */
public final class Main {

    private Main() {
    }

    /** Runs a call on the plain JVM, with what the class path contributes. */
    public static void main(String[] args) {
        Suite suite = Suite.of(Contributions.fromClassPath(Main.class.getClassLoader()));
        System.exit(run(args, new Session(System.out, System.err, Path.of("").toAbsolutePath(), suite,
                LocalDate.now(), Terminal.takesErrors())));
    }

    /**
     * Runs a call.
     *
     * @param args   words and options
     * @param out    takes results
     * @param err    takes one-line errors
     * @param cwd    folder against which relative paths are taken
     * @param suite  families, catalogue and checks
     * @return the number that the call ends with
     */
    public static int run(String[] args, PrintStream out, PrintStream err, Path cwd, Suite suite) {
        return run(args, new Session(out, err, cwd, suite, LocalDate.now(), false));
    }

    /** Runs a call with everything from the outside given. */
    public static int run(String[] args, Session session) {
        session.suite().problems().forEach(session::complain);
        int code;
        try {
            code = commands(session).execute(args);
        } catch (OutOfMemoryError | StackOverflowError e) {
            session.complain("This call needs more memory than it may have; check fewer or simpler designs at once.");
            code = ExitCode.UNREADABLE.number();
        }
        session.out().flush();
        session.err().flush();
        return code;
    }

    private static CommandLine commands(Session session) {
        CommandLine line = new CommandLine(new StudioWord(session));
        line.addSubcommand(new ListWord(session));
        line.addSubcommand(new NewWord(session));
        line.addSubcommand(new CheckWord(session));
        line.addSubcommand(new PlaceWord(session));
        line.addSubcommand(new RetoneWord(session));
        line.addSubcommand(new RankWord(session));
        line.addSubcommand(new WearWord(session));
        line.addSubcommand(new PictureWord(session));
        line.addSubcommand(new ProofWord(session));
        line.addSubcommand(new DemoWord(session));
        line.addSubcommand(new CompletionWord(session));
        line.setOut(new PrintWriter(session.out(), true, StandardCharsets.UTF_8));
        line.setErr(new PrintWriter(session.err(), true, StandardCharsets.UTF_8));
        line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setAbbreviatedOptionsAllowed(false);
        line.setExpandAtFiles(false);
        line.setParameterExceptionHandler((e, args) -> {
            String word = e.getCommandLine().getCommandSpec().qualifiedName();
            session.complain(sentence(e.getMessage()) + " See \"" + word + " --help\".");
            return ExitCode.WRONG_USE.number();
        });
        line.setExecutionExceptionHandler((e, command, parsed) -> failure(e, session));
        return line;
    }

    private static String sentence(String message) {
        return message.endsWith(".") ? message : message + ".";
    }

    private static int failure(Exception e, Session session) {
        if (e instanceof Refusal refusal) {
            session.complain(refusal.getMessage());
            return refusal.code().number();
        }
        session.complain("This call met a fault of the program (" + Faults.told(e)
                + "); please report it with the files of the call. Details: " + Faults.log(e) + ".");
        return ExitCode.UNREADABLE.number();
    }
}
