/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.xmi.XMLResource;

/**
 * Starts processes that save. All classes are put into one plain jar with an archive of the loaded classes first, which
 * more than halves the start of a process: the signatures of the EMF jars are not checked over and over.
 */
final class SaverProcess {

    private final List<String> command;

    private SaverProcess(List<String> command) {
        this.command = command;
    }

    /** Prepares in a folder. */
    static SaverProcess prepare(Path folder, Path warmUp) throws IOException, URISyntaxException, InterruptedException {
        Path jar = folder.resolve("all.jar");
        try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar))) {
            out.setLevel(0);
            Set<String> seen = new HashSet<>();
            for (Path place : places()) {
                add(place, out, seen);
            }
        }
        Path archive = folder.resolve("all.jsa");
        List<String> plain = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC", "-Xmx64m", "-Xlog:disable", "-cp", jar.toString()));
        List<String> dump = new ArrayList<>(plain);
        dump.add(1, "-XX:ArchiveClassesAtExit=" + archive);
        dump.addAll(List.of(Saver.class.getName(), warmUp.toString(), "once"));
        Process first = new ProcessBuilder(dump).redirectErrorStream(true).start();
        String said = new String(first.getInputStream().readAllBytes());
        if (first.waitFor() != 0) {
            throw new IOException("The first saver failed: " + said);
        }
        // Where this Java writes no archive the processes start slower and do the same.
        plain.add(1, "-XX:SharedArchiveFile=" + archive);
        plain.add(Saver.class.getName());
        return new SaverProcess(plain);
    }

    /** Starts a process that saves without end and prints a dot after each save. */
    Process start(Path file) throws IOException {
        List<String> words = new ArrayList<>(command);
        words.add(file.toString());
        return new ProcessBuilder(words).redirectErrorStream(true).start();
    }

    private static List<Path> places() throws URISyntaxException {
        Set<Path> places = new LinkedHashSet<>();
        for (Class<?> each : List.of(Saver.class, ModelFiles.class, EObject.class, URI.class, XMLResource.class)) {
            places.add(Path.of(each.getProtectionDomain().getCodeSource().getLocation().toURI()));
        }
        Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator)).map(Path::of)
                .filter(place -> place.toString().contains("org.eclipse.emf.")).forEach(places::add);
        return List.copyOf(places);
    }

    private static void add(Path place, JarOutputStream out, Set<String> seen) throws IOException {
        if (Files.isDirectory(place)) {
            try (Stream<Path> files = Files.walk(place)) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    String name = place.relativize(file).toString().replace(File.separatorChar, '/');
                    if (isWanted(name) && seen.add(name)) {
                        copy(name, Files.newInputStream(file), out);
                    }
                }
            }
            return;
        }
        try (ZipInputStream in = new ZipInputStream(Files.newInputStream(place))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                if (isWanted(entry.getName()) && seen.add(entry.getName())) {
                    copy(entry.getName(), new ByteArrayInputStream(in.readAllBytes()), out);
                }
            }
        }
    }

    private static boolean isWanted(String name) {
        return name.endsWith(".class") || name.endsWith(".properties");
    }

    private static void copy(String name, InputStream from, OutputStream to) throws IOException {
        try (from) {
            ((JarOutputStream) to).putNextEntry(new JarEntry(name));
            from.transferTo(to);
        }
    }
}
