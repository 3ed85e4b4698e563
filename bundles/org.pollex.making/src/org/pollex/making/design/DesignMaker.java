/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.design;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.SafeOutput;
import org.pollex.making.session.Session;
import org.pollex.model.store.FileKind;
import org.pollex.print.Printed;

/** Makes one design, or one for each piece of art in a folder. */
public final class DesignMaker {

    private static final String ART_ENDING = ".svg";

    private final Session session;

    /** Makes designs for a call. */
    public DesignMaker(Session session) {
        this.session = session;
    }

    /**
     * Makes what is ordered.
     *
     * @param out  file of the design; the folder of the designs when the front is a folder
     * @return how it went: art of a folder that cannot be read is told and passed over
     */
    public ExitCode make(String out, Order order) throws Refusal {
        Path to = session.file(out);
        Optional<Path> front = file(order.front());
        Optional<Path> back = file(order.back());
        if (back.isPresent() && Files.isDirectory(back.get())) {
            throw Refusal.wrongUse(order.back().get() + ": the art of the back must be one file, not a folder.");
        }
        if (front.isPresent() && Files.isDirectory(front.get())) {
            return folder(to, front.get(), back, order);
        }
        one(to, front, back, order);
        return ExitCode.CLEAN;
    }

    /**
     * What a design would print if it were made; nothing is written.
     *
     * @param out  where the design would be
     */
    public Printed preview(Path out, Order order) throws Refusal {
        Stock stock = Stock.of(session.suiteNear(out.getParent()), order);
        return new Draft(session, stock, order).print(out, file(order.front()), file(order.back()));
    }

    private Optional<Path> file(Optional<String> text) throws Refusal {
        return text.isPresent() ? Optional.of(session.file(text.get())) : Optional.empty();
    }

    private void one(Path to, Optional<Path> front, Optional<Path> back, Order order) throws Refusal {
        if (!FileKind.of(to).equals(Optional.of(FileKind.DESIGN))) {
            throw Refusal.wrongUse(session.shown(to) + ": a design's name must end in " + "." + FileKind.DESIGN.ending()
                    + "; write it so.");
        }
        Stock stock = Stock.of(session.suiteNear(to.getParent()), order);
        Draft draft = new Draft(session, stock, order);
        session.say("Wrote " + session.shown(to) + ": " + draft.write(to, front, back) + ".");
    }

    private ExitCode folder(Path to, Path front, Optional<Path> back, Order order) throws Refusal {
        if (FileKind.of(to).isPresent() || Files.isRegularFile(to)) {
            throw Refusal.wrongUse(session.shown(to) + ": with a folder of art the first name must be a folder for "
                    + "the designs.");
        }
        List<Path> art = art(front);
        if (art.isEmpty()) {
            throw new Refusal(ExitCode.UNREADABLE, session.shown(front)
                    + ": the folder holds no file that ends in .svg; name one that does.");
        }
        Stock.of(session.suiteNear(to), order);
        int written = 0;
        Optional<Refusal> first = Optional.empty();
        for (Path each : art) {
            String name = each.getFileName().toString();
            String stem = name.substring(0, name.length() - ART_ENDING.length());
            try {
                one(to.resolve(stem + "." + FileKind.DESIGN.ending()), Optional.of(each), back, order);
                written++;
            } catch (Refusal e) {
                session.complain(e.getMessage());
                if (first.isEmpty() || e.code() == ExitCode.NOT_WRITTEN) {
                    first = Optional.of(e);
                }
            }
        }
        session.say(written + " of " + art.size() + " designs written.");
        return first.map(Refusal::code).orElse(ExitCode.CLEAN);
    }

    private List<Path> art(Path folder) throws Refusal {
        try (Stream<Path> files = Files.list(folder)) {
            return new ArrayList<>(files.filter(Files::isRegularFile)
                    .filter(file -> file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(ART_ENDING)
                            && !file.getFileName().toString().startsWith("."))
                    .sorted().toList());
        } catch (IOException e) {
            throw new Refusal(ExitCode.UNREADABLE, session.shown(folder) + ": the folder cannot be read ("
                    + SafeOutput.reason(e) + "); check its permissions.", e);
        }
    }
}
