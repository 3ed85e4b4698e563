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

import java.io.File;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Side;
import org.pollex.model.design.TextLine;

/** A process that saves without pause is killed at random moments, two hundred times. No file is ever lost or torn. */
@Timeout(300)
class KillTest {

    private static final int KILLS = 200;
    private static final int WORKERS = 2;
    private static final int DELAY_MAX_MICROS = 25_000;

    @TempDir
    Path folder;

    /** The process that is killed: saves state after state, having said so after the first. */
    public static final class Saver {

        private Saver() {
        }

        public static void main(String[] words) throws Exception {
            Path file = Path.of(words[0]);
            Opened<Design> opened = ModelFiles.DESIGNS.open(file);
            for (int number = number(opened.model()) + 1;; number++) {
                opened = ModelFiles.DESIGNS.save(
                        new Opened<>(file, state(number), opened.stamp(), opened.format()));
                System.out.write('.');
                System.out.flush();
            }
        }
    }

    @Test
    void everyKillLeavesASavedState() throws Exception {
        AtomicInteger left = new AtomicInteger(KILLS);
        AtomicInteger torn = new AtomicInteger();
        ExecutorService workers = Executors.newFixedThreadPool(WORKERS);
        try {
            List<Future<?>> running = new ArrayList<>();
            for (int worker = 0; worker < WORKERS; worker++) {
                Path file = Files.createDirectory(folder.resolve("worker" + worker)).resolve("a.design");
                ModelFiles.DESIGNS.create(state(0), file);
                Random random = new Random(worker);
                running.add(workers.submit(() -> {
                    while (left.getAndDecrement() > 0) {
                        torn.addAndGet(killOnce(file, random));
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
    private static int killOnce(Path file, Random random) throws Exception {
        int before = number(ModelFiles.DESIGNS.load(file));
        Process saver = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto", "-Xmx64m", "-cp", classPath(),
                Saver.class.getName(), file.toString()).redirectErrorStream(true).start();
        int said;
        try {
            said = saver.getInputStream().read();
            TimeUnit.MICROSECONDS.sleep(random.nextInt(DELAY_MAX_MICROS));
        } finally {
            saver.destroyForcibly().waitFor();
        }
        assertEquals('.', said, () -> "the saver failed: " + rest(saver));
        byte[] bytes = Files.readAllBytes(file);
        int number = number(ModelFiles.DESIGNS.load(file));
        assertTrue(number > before, number + " after " + before);
        assertArrayEquals(ModelFiles.DESIGNS.write(state(number)), bytes);
        Optional<Path> last = ModelFiles.DESIGNS.lastGood(file);
        int kept = number(ModelFiles.DESIGNS.load(last.orElseThrow()));
        assertTrue(kept == number - 1 || kept == number, kept + " kept beside " + number);
        List<String> rubbish = names(file.getParent()).stream().filter(name -> name.endsWith(".saving")).toList();
        assertTrue(rubbish.size() <= 2, rubbish::toString);
        return rubbish.isEmpty() ? 0 : 1;
    }

    /** A design of some kilobytes whose every part depends on the number. */
    static Design state(int number) {
        Design design = DesignFactory.eINSTANCE.createDesign();
        design.setName("state " + number);
        Side side = DesignFactory.eINSTANCE.createSide();
        side.setName("front");
        design.getSides().add(side);
        Layer layer = DesignFactory.eINSTANCE.createLayer();
        side.getLayers().add(layer);
        for (int i = 0; i < 20 + number % 30; i++) {
            TextLine line = DesignFactory.eINSTANCE.createTextLine();
            line.setText("line " + i + " of state " + number + " " + "~".repeat(number % 97));
            line.setX(number + i / 8.0);
            layer.getMarks().add(line);
        }
        return design;
    }

    private static int number(Design design) {
        return Integer.parseInt(design.getName().substring("state ".length()));
    }

    private static String rest(Process process) {
        try {
            return new String(process.getInputStream().readAllBytes());
        } catch (IOException e) {
            return e.toString();
        }
    }

    private static String classPath() throws URISyntaxException {
        Set<String> places = new LinkedHashSet<>();
        for (Class<?> each : List.of(KillTest.class, ModelFiles.class, EObject.class, URI.class, XMLResource.class)) {
            places.add(Path.of(each.getProtectionDomain().getCodeSource().getLocation().toURI()).toString());
        }
        places.add(System.getProperty("java.class.path"));
        return String.join(File.pathSeparator, places);
    }

    private static List<String> names(Path place) throws IOException {
        try (Stream<Path> files = Files.list(place)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
