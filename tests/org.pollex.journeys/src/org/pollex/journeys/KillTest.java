/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.model.catalogue.Catalogue;
import org.pollex.model.catalogue.CatalogueFactory;
import org.pollex.model.store.ModelFiles;

/** The program is killed while a design is being changed; started again, it offers the work that was not saved. */
class KillTest {

    @TempDir
    Path folder;

    /** Long enough for the work to be kept, which happens a second after a change. */
    private static final long KEPT = 30_000;

    @Test
    void nothingSavedIsLostAndUnsavedWorkIsOfferedBack() throws Exception {
        Path file = Samples.ferry(folder.resolve("designs"), "storm");
        byte[] before = Files.readAllBytes(file);
        Process first = start("change", file);
        try {
            assertEquals("SECOND changed 2.5", answer(first));
            Path kept = kept();
            long end = System.currentTimeMillis() + KEPT;
            while (!holdsWork(kept) && System.currentTimeMillis() < end) {
                Thread.sleep(100);
            }
            assertTrue(holdsWork(kept), "the unsaved work was not kept");
        } finally {
            first.destroyForcibly().waitFor();
        }
        assertArrayEquals(before, Files.readAllBytes(file), "the saved design was touched");
        Process second = start("reopen", file);
        try {
            assertEquals("SECOND had 0.0 brought back 2.5 dirty true", answer(second));
        } finally {
            second.destroyForcibly().waitFor();
        }
        assertArrayEquals(before, Files.readAllBytes(file), "bringing work back saved it");
    }

    /** The same for inks, by the same program. */
    @Test
    void unsavedInksAreOfferedBack() throws Exception {
        Path file = Files.createDirectories(folder.resolve("studio")).resolve("studio.catalogue");
        Catalogue own = CatalogueFactory.eINSTANCE.createCatalogue();
        own.setName("Lamp Rock Print");
        ModelFiles.CATALOGUES.create(own, file);
        byte[] before = Files.readAllBytes(file);
        Process first = start("add-ink", file);
        try {
            assertEquals("SECOND added 1", answer(first));
            long end = System.currentTimeMillis() + KEPT;
            while (!holdsWork(kept()) && System.currentTimeMillis() < end) {
                Thread.sleep(100);
            }
            assertTrue(holdsWork(kept()), "the unsaved inks were not kept");
        } finally {
            first.destroyForcibly().waitFor();
        }
        assertArrayEquals(before, Files.readAllBytes(file), "the saved catalogue was touched");
        Process second = start("reopen-inks", file);
        try {
            assertEquals("SECOND had 0 brought back Fog dirty true undone 0", answer(second));
        } finally {
            second.destroyForcibly().waitFor();
        }
        assertArrayEquals(before, Files.readAllBytes(file), "bringing inks back saved them");
    }

    private Path kept() {
        return folder.resolve("workspace/.metadata/.plugins/org.pollex.editor/unsaved");
    }

    private static boolean holdsWork(Path kept) throws IOException {
        if (!Files.isDirectory(kept)) {
            return false;
        }
        try (Stream<Path> files = Files.list(kept)) {
            return files.anyMatch(each -> each.toString().endsWith(".unsaved"));
        }
    }

    /** The same program once more, with a configuration and a workspace of its own. */
    private Process start(String word, Path file) throws Exception {
        Path configuration = folder.resolve("configuration");
        if (!Files.exists(configuration)) {
            copy(Path.of(URI.create(System.getProperty("osgi.configuration.area").replace(" ", "%20"))), configuration);
        }
        ProcessBuilder builder = new ProcessBuilder(List.of(Path.of(System.getProperty("java.home"), "bin", "java")
                .toString(), "-Xmx512m", "-D" + SecondProgram.WORD + "=" + word, "-D" + SecondProgram.FILE + "=" + file,
                "-cp", System.getProperty("java.class.path"), "org.eclipse.equinox.launcher.Main", "-nosplash",
                "-install", System.getProperty("osgi.install.area"), "-configuration", configuration.toString(),
                "-data", folder.resolve("workspace").toString(), "-application", "org.pollex.app.application"));
        builder.redirectErrorStream(true);
        return builder.start();
    }

    /** Files of the configuration that say which bundles there are; not what the framework keeps. */
    private static void copy(Path from, Path to) throws IOException {
        Files.createDirectories(to);
        for (String name : List.of("config.ini", "org.eclipse.equinox.simpleconfigurator/bundles.info")) {
            if (Files.exists(from.resolve(name))) {
                Files.createDirectories(to.resolve(name).getParent());
                Files.copy(from.resolve(name), to.resolve(name));
            }
        }
    }

    private static String answer(Process process) throws IOException {
        StringBuilder said = new StringBuilder();
        BufferedReader out = new BufferedReader(new InputStreamReader(process.getInputStream(),
                StandardCharsets.UTF_8));
        for (String line = out.readLine(); line != null; line = out.readLine()) {
            if (line.startsWith("SECOND")) {
                return line;
            }
            said.append(line).append('\n');
        }
        throw new AssertionError("the second program said nothing but: " + said);
    }
}
