/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.pollex.making.desk.Desk;
import org.pollex.making.desk.OpenDesign;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.Session;
import org.pollex.output.report.CheckedDesign;

/**
 * Checks many designs with all cores. A design that cannot be read, or that breaks the program, becomes an entry with
 * its error; the others are checked all the same. Progress is shown on a terminal only.
 */
public final class CheckRun {

    private final Session session;
    private final Desk desk;

    /** Checks for a call. */
    public CheckRun(Session session) {
        this.session = session;
        this.desk = new Desk(session);
    }

    /** Checks all designs that were found; the answers are in their order. */
    public List<CheckedDesign> check(DesignFinder finder) throws Refusal {
        return check(finder.designs());
    }

    /** Checks designs, each with what to call it; the answers are in their order. */
    public List<CheckedDesign> check(Map<Path, String> designs) throws Refusal {
        int threads = Math.max(1, Math.min(Runtime.getRuntime().availableProcessors(), designs.size()));
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        AtomicInteger done = new AtomicInteger();
        List<CheckedDesign> checked = new ArrayList<>();
        try {
            List<Future<CheckedDesign>> answers = new ArrayList<>();
            designs.forEach((path, shown) -> answers.add(pool.submit(() -> {
                CheckedDesign answer = one(path, shown);
                progress(done.incrementAndGet(), designs.size());
                return answer;
            })));
            for (Future<CheckedDesign> answer : answers) {
                checked.add(answer.get());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Refusal(ExitCode.UNREADABLE, "The call was told to stop before all designs were checked.", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        } finally {
            pool.shutdownNow();
        }
        for (CheckedDesign design : checked) {
            if (!design.readable()) {
                session.complain(design.error());
            }
        }
        return checked;
    }

    private CheckedDesign one(Path path, String shown) {
        long start = System.nanoTime();
        try {
            OpenDesign open = desk.open(path);
            return new CheckedDesign(shown, open.design().getProduct(), open.design().getMaterial(),
                    open.design().getMethod(), desk.findings(open), "", millis(start));
        } catch (Refusal e) {
            return CheckedDesign.unreadable(shown, e.getMessage(), millis(start));
        } catch (OutOfMemoryError | StackOverflowError e) {
            return CheckedDesign.unreadable(shown, shown + ": the design needs more memory than there is; simplify its "
                    + "art.", millis(start));
        } catch (RuntimeException e) {
            return CheckedDesign.unreadable(shown, Refusal.oneLine(shown + ": the design met a fault of the program ("
                    + e.getClass().getSimpleName() + (e.getMessage() == null ? "" : ": " + e.getMessage())
                    + "); please report it with the file."), millis(start));
        }
    }

    private void progress(int done, int all) {
        if (session.terminal() && all > 1) {
            synchronized (this) {
                session.err().print("\r" + done + " of " + all + (done == all ? "\r" + " ".repeat(24) + "\r" : ""));
                session.err().flush();
            }
        }
    }

    private static long millis(long start) {
        return (System.nanoTime() - start) / 1_000_000;
    }
}
