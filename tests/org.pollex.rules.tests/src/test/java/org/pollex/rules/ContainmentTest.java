/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.pollex.geometry.shape.Polygons;
import org.pollex.print.Printed;

/** What a check does wrong stays with that check. */
class ContainmentTest {

    private static final Check GOOD = (context, sink) -> sink.info("").say("All is well with 1 thing.");

    private record Bad(String name, Supplier<Check> check, String says) {
    }

    private static Finding finding(String check, double measured, String message) {
        return new Finding(check, "", Severity.ERROR, "front", "", OptionalDouble.of(measured),
                OptionalDouble.empty(), "mm", Polygons.empty(), message, List.of(), false);
    }

    private static void overflow(int depth) {
        overflow(depth + 1);
    }

    private static final List<Bad> BADS = List.of(
            new Bad("cannot be made", () -> {
                throw new IllegalStateException("class org.example.Gone cannot be made");
            }, "class org.example.Gone cannot be made"),
            new Bad("is nothing", () -> null, "it could not be made"),
            new Bad("throws", () -> (context, sink) -> {
                throw new UnsupportedOperationException("no luck\nat all");
            }, "UnsupportedOperationException (no luck)"),
            new Bad("lacks a class", () -> (context, sink) -> {
                throw new NoClassDefFoundError("org/example/Gone");
            }, "NoClassDefFoundError (org/example/Gone)"),
            new Bad("overflows the stack", () -> (context, sink) -> overflow(0), "StackOverflowError"),
            new Bad("reports nothing", () -> (context, sink) -> sink.add(null), "it reported nothing as a finding"),
            new Bad("reports for another", () -> (context, sink) -> sink.add(finding("other", 1, "A sentence.")),
                    "in the name of \"other\""),
            new Bad("measures no number", () -> (context, sink) -> sink.add(finding("bad", Double.NaN, "A sentence.")),
                    "something that is no number"),
            new Bad("has no words", () -> (context, sink) -> sink.error("").say(" "), "without a message"),
            new Bad("has no place", () -> (context, sink) -> sink.error("").at(null).say("A sentence."),
                    "a place that is no place"),
            new Bad("never ends reporting", () -> (context, sink) -> {
                while (true) {
                    sink.info("").say("Again 1.");
                }
            }, "more than 20000 findings"),
            new Bad("misses a setting", () -> (context, sink) -> context.setting("no-such-setting"),
                    "setting \"no-such-setting\" is missing; add it to the settings of a catalogue (read: \"Tiles\")"),
            new Bad("sleeps", () -> (context, sink) -> {
                try {
                    Thread.sleep(60_000);
                } catch (InterruptedException e) {
                    throw new IllegalStateException(e);
                }
            }, "it gave no answer within 300 ms"));

    @TestFactory
    Stream<DynamicTest> oneFindingAndTheRestGoesOn() {
        return BADS.stream().map(bad -> DynamicTest.dynamicTest(bad.name, () -> {
            Suite suite = Suite.of(Contributions.collect().with(Tiles.entry(Tiles::catalogue))
                    .with(Tiles.check("before", "org.example.a", GOOD))
                    .with(Tiles.entry("bad", "org.example.a", bad.check))
                    .with(Tiles.check("after", "org.example.a", GOOD))
                    .with(Tiles.check("other-bundle", "org.example.b", GOOD)).finish(), 300);
            for (int time = 0; time < 2; time++) {
                List<Finding> found = suite.check(Tiles.printed());
                assertEquals(List.of("bad", "after", "before", "other-bundle"),
                        found.stream().map(Finding::check).toList());
                Finding failed = found.get(0);
                assertEquals("not-run", failed.kind());
                assertEquals(Severity.WARNING, failed.severity());
                assertTrue(failed.message().contains(bad.says)
                        || time == 1 && failed.message().contains("has not come back"), failed.message());
                assertTrue(failed.message().contains("\"bad by name\" of org.example.a could not be run"),
                        failed.message());
                assertEquals(1, failed.message().lines().count());
            }
        }));
    }

    /** A thread cannot be ended from outside: the check is left alone while it spins, and is back when it has ended. */
    @Test
    void hangingCheckIsLeftAloneUntilItComesBack() throws Exception {
        AtomicBoolean spin = new AtomicBoolean(true);
        CountDownLatch ended = new CountDownLatch(1);
        AtomicBoolean first = new AtomicBoolean(true);
        Check spinner = (context, sink) -> {
            if (first.getAndSet(false)) {
                while (spin.get()) {
                    Thread.onSpinWait();
                }
                sink.error("").say("Too late by 1 turn.");
                ended.countDown();
            } else {
                sink.info("").say("Back again, turn 2.");
            }
        };
        Suite suite = Suite.of(Contributions.collect().with(Tiles.check("spins", "org.example.a", spinner))
                .with(Tiles.check("after", "org.example.a", GOOD)).finish(), 200);
        Printed printed = Tiles.printed();
        assertTrue(suite.check(printed).get(0).message().contains("no answer within 200 ms"));
        assertTrue(suite.check(printed).get(0).message().contains("has not come back"));
        spin.set(false);
        ended.await();
        List<Finding> found = suite.check(printed);
        for (int i = 0; i < 100 && !found.get(0).kind().isEmpty(); i++) {
            Thread.sleep(10);
            found = suite.check(printed);
        }
        assertEquals(List.of("All is well with 1 thing.", "Back again, turn 2."),
                found.stream().map(Finding::message).sorted().toList());
    }

    /** One design on which a check throws says nothing about the next. */
    @Test
    void throwingOnOneDesignDoesNotConcernTheNext() throws Exception {
        Check picky = (context, sink) -> {
            if (context.sides().get(0).printed().isEmpty()) {
                throw new IllegalArgumentException("nothing there");
            }
            sink.info("").say("There is 1 thing.");
        };
        Suite suite = Suite.of(Contributions.collect().with(Tiles.check("picky", "org.example.a", picky)).finish());
        assertEquals("not-run", suite.check(Tiles.printed()).get(0).kind());
        assertEquals("There is 1 thing.",
                suite.check(Tiles.printed(Tiles.box(0, 0, 1, 1))).get(0).message());
    }

    @Test
    void severalThreadsCheckAtOnce() throws Exception {
        CountDownLatch bothInside = new CountDownLatch(2);
        Check meets = (context, sink) -> {
            bothInside.countDown();
            try {
                bothInside.await();
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
            sink.info("").say("Met 1 other.");
        };
        Suite suite = Suite.of(Contributions.collect().with(Tiles.check("meets", "org.example.a", meets)).finish());
        Printed printed = Tiles.printed();
        Thread other = new Thread(() -> {
            try {
                suite.check(printed);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        });
        other.start();
        assertEquals("Met 1 other.", suite.check(printed).get(0).message());
        other.join();
    }

    @Test
    void callerMayBeToldToStop() {
        Suite suite = Suite.of(Contributions.collect().with(Tiles.check("sleeps", "org.example.a",
                (context, sink) -> {
                    try {
                        Thread.sleep(60_000);
                    } catch (InterruptedException e) {
                        throw new IllegalStateException(e);
                    }
                })).finish());
        Thread.currentThread().interrupt();
        assertThrows(InterruptedException.class, () -> suite.check(Tiles.printed()));
        assertTrue(!Thread.currentThread().isInterrupted());
    }
}
