/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.checks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Where in the project's tree is what?
 *
 * <p>The root is given by the system property {@value #ROOT}. Folders that a build writes are never looked into.
 */
final class Project {

    static final String ROOT = "org.pollex.checks.root";

    private static final Set<String> BUILT = Set.of("target", "bin", "build", ".git", "node_modules", ".metadata");

    private final Path root;

    Project(Path root) {
        this.root = root.toAbsolutePath().normalize();
    }

    static Project here() {
        return new Project(Path.of(System.getProperty(ROOT, "../..")));
    }

    Path root() {
        return root;
    }

    /** The bundles of the suite, by folder; one without a manifest is not a bundle yet. */
    List<Bundle> bundles() {
        try (Stream<Path> folders = Files.list(root.resolve("bundles"))) {
            return folders.filter(folder -> Files.isRegularFile(folder.resolve("META-INF/MANIFEST.MF"))).sorted()
                    .map(Bundle::new).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** All files of the tree that people write and whose path below the root passes the test, in order of path. */
    List<Path> files(Predicate<String> test) {
        try (Stream<Path> paths = Files.walk(root)) {
            return paths.filter(this::written).filter(Files::isRegularFile).filter(path -> test.test(name(path)))
                    .sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** All Java files that people write: not the generated ones. */
    List<Path> javaFiles() {
        return files(name -> name.endsWith(".java") && !name.contains("/src-gen/"));
    }

    /** The path of a file below the root, with slashes. */
    String name(Path file) {
        return root.relativize(file).toString().replace('\\', '/');
    }

    static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file);
        } catch (IOException e) {
            throw new UncheckedIOException(file + " cannot be read as UTF-8 text", e);
        }
    }

    private boolean written(Path path) {
        for (Path part : root.relativize(path)) {
            if (BUILT.contains(part.toString())) {
                return false;
            }
        }
        return true;
    }
}
