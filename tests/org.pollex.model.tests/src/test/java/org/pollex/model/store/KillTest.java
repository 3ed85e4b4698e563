/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A process that saves without pause is killed at random moments, two hundred times. No file is ever lost or torn. */
@Timeout(300)
class KillTest {

    private static final int KILLS = 200;
    private static final int WORKERS = 2;
    private static final int DELAY_MAX_MICROS = 25_000;

    @TempDir
    Path folder;

    @Test
    void everyKillLeavesASavedState() throws Exception {
        Path warmUp = folder.resolve("first.design");
        ModelFiles.DESIGNS.create(Saver.state(0), warmUp);
        SaverProcess savers = SaverProcess.prepare(folder, warmUp);
        AtomicInteger left = new AtomicInteger(KILLS);
        AtomicInteger torn = new AtomicInteger();
        ExecutorService workers = Executors.newFixedThreadPool(WORKERS);
        try {
            List<Future<?>> running = new ArrayList<>();
            for (int worker = 0; worker < WORKERS; worker++) {
                Path file = Files.createDirectory(folder.resolve("worker" + worker)).resolve("a.design");
                ModelFiles.DESIGNS.create(Saver.state(0), file);
                Random random = new Random(worker);
                running.add(workers.submit(() -> {
                    while (left.getAndDecrement() > 0) {
                        torn.addAndGet(killOnce(savers, file, random));
                    }
                    return null;
                }));
            }
            for (Future<?> each : running) {
                each.get();
            }
        } finally {
            workers.shutdownNow();
        }
        assertTrue(torn.get() > KILLS / 20, "only " + torn + " kills fell into a save");
        for (int worker = 0; worker < WORKERS; worker++) {
            Path file = folder.resolve("worker" + worker).resolve("a.design");
            ModelFiles.DESIGNS.save(ModelFiles.DESIGNS.open(file));
            assertEquals(List.of(".a.design.last", "a.design"), names(file.getParent()));
        }
    }

    /** Starts, kills, checks; 1 when the kill fell into the writing of a file, which then lies half-written beside. */
    private static int killOnce(SaverProcess savers, Path file, Random random) throws Exception {
        int before = Saver.number(ModelFiles.DESIGNS.load(file));
        Process saver = savers.start(file);
        int said;
        try {
            said = saver.getInputStream().read();
            TimeUnit.MICROSECONDS.sleep(random.nextInt(DELAY_MAX_MICROS));
        } finally {
            saver.destroyForcibly().waitFor();
        }
        assertEquals('.', said, () -> "the saver failed: " + rest(saver));
        byte[] bytes = Files.readAllBytes(file);
        int number = Saver.number(ModelFiles.DESIGNS.load(file));
        assertTrue(number > before, number + " after " + before);
        assertArrayEquals(ModelFiles.DESIGNS.write(Saver.state(number)), bytes);
        Optional<Path> last = ModelFiles.DESIGNS.lastGood(file);
        int kept = Saver.number(ModelFiles.DESIGNS.load(last.orElseThrow()));
        assertTrue(kept == number - 1 || kept == number, kept + " kept beside " + number);
        List<String> rubbish = names(file.getParent()).stream().filter(name -> name.endsWith(".saving")).toList();
        assertTrue(rubbish.size() <= 2, rubbish::toString);
        return rubbish.isEmpty() ? 0 : 1;
    }

    private static String rest(Process process) {
        try {
            return new String(process.getInputStream().readAllBytes());
        } catch (IOException e) {
            return e.toString();
        }
    }

    private static List<String> names(Path place) throws IOException {
        try (Stream<Path> files = Files.list(place)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
