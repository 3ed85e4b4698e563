/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Does every bundle require only what the table of dependencies allows, and does nothing behind the wall name a class
 * of the window system? Both are asked of the manifests and of the compiled classes, since a class can be reached
 * through a bundle that passes others on.
 */
class DependencyTest {

    private static final String CURE = "; use another way, or change allowed.txt in releng/checks and say why in"
            + " DEVELOPERS.md";

    private static final List<String> WINDOW = List.of("org.eclipse.swt", "org.eclipse.jface", "org.eclipse.ui",
            "org.eclipse.e4", "org.eclipse.draw2d", "org.eclipse.gef", "org.eclipse.help");

    private static final List<String> SVG = List.of("org.apache.batik", "org.pollex.batik", "org.w3c.dom.svg",
            "org.w3c.css.sac");

    private static final Set<String> MAY_USE_BATIK = Set.of("artwork.svg");

    private final DependencyTable table = DependencyTable.ofTheProject();

    @TestFactory
    Stream<DynamicTest> manifests() {
        return Project.here().bundles().stream()
                .map(bundle -> DynamicTest.dynamicTest(bundle.id(), () -> none(inManifest(bundle))));
    }

    @TestFactory
    Stream<DynamicTest> classes() {
        List<Bundle> bundles = Project.here().bundles();
        return bundles.stream()
                .map(bundle -> DynamicTest.dynamicTest(bundle.id(), () -> none(inClasses(bundle, bundles))));
    }

    @Test
    void theFolderBearsTheNameOfTheBundle() {
        for (Bundle bundle : Project.here().bundles()) {
            assertEquals(bundle.id(), bundle.symbolicName(), "rename the folder bundles/" + bundle.id());
        }
    }

    @Test
    void aWindowClassBehindTheWallIsFound() {
        assertTrue(refused("geometry", "org.eclipse.swt.graphics").isPresent());
        assertTrue(refused("family.cap", "org.eclipse.gef").isPresent());
        assertTrue(refused("print", "org.apache.batik.bridge").isPresent());
        assertFalse(refused("editor", "org.eclipse.gef").isPresent());
        assertFalse(refused("artwork.svg", "org.apache.batik.bridge").isPresent());
        assertFalse(refused("model", "org.eclipse.emf.ecore").isPresent());
    }

    @Test
    void whatIsRequiredInTurnIsAllowed() {
        assertEquals(Set.of("artwork", "colour", "geometry", "model", "print"), table.allowed("rules"));
        assertFalse(table.allowed("geometry").contains("print"));
        assertTrue(table.knows("family.anything"));
        assertFalse(table.knows("anything"));
    }

    private List<String> inManifest(Bundle bundle) {
        List<String> wrong = new ArrayList<>();
        String manifest = "bundles/" + bundle.id() + "/META-INF/MANIFEST.MF";
        if (!table.knows(bundle.shortId())) {
            return List.of(manifest + ": the bundle has no row in the table of dependencies" + CURE);
        }
        List<String> names = new ArrayList<>(bundle.requiredBundles());
        names.addAll(bundle.importedPackages());
        for (String name : names) {
            refused(bundle.shortId(), name).ifPresent(why -> wrong.add(manifest + " names " + name + ": " + why));
        }
        for (String required : bundle.requiredBundles()) {
            if (required.startsWith(Bundle.PREFIX) && !required.equals("org.pollex.batik")) {
                String other = required.substring(Bundle.PREFIX.length());
                if (!table.allowed(bundle.shortId()).contains(other)) {
                    wrong.add(manifest + " requires " + required + ", which the table does not allow" + CURE);
                }
            }
        }
        return wrong;
    }

    private List<String> inClasses(Bundle bundle, List<Bundle> all) {
        if (!bundle.classes().toFile().isDirectory()) {
            return List.of("bundles/" + bundle.id() + " is not compiled; build the whole project");
        }
        Set<String> wrong = new TreeSet<>();
        for (JavaClass each : new ClassFileImporter().importPath(bundle.classes())) {
            for (Dependency dependency : each.getDirectDependenciesFromSelf()) {
                String used = dependency.getTargetClass().getBaseComponentType().getName();
                refused(bundle.shortId(), used).or(() -> notAllowed(bundle, used, all))
                        .ifPresent(why -> wrong.add(each.getName() + " uses " + used + ": " + why));
            }
        }
        return List.copyOf(wrong);
    }

    private Optional<String> refused(String bundle, String name) {
        if (table.walled(bundle) && starts(name, WINDOW)) {
            return Optional.of("a bundle behind the wall knows no window; move this to edit, editor, ui or app");
        }
        if (!MAY_USE_BATIK.contains(bundle) && starts(name, SVG)) {
            return Optional.of("only artwork.svg knows Batik; go through the reader's own values");
        }
        return Optional.empty();
    }

    private Optional<String> notAllowed(Bundle bundle, String used, List<Bundle> all) {
        if (!used.startsWith(Bundle.PREFIX)) {
            return Optional.empty();
        }
        // The longest bundle id that the class name starts with owns the class: artwork.svg before artwork.
        String owner = all.stream().map(Bundle::id).filter(id -> used.startsWith(id + "."))
                .reduce("", (a, b) -> a.length() >= b.length() ? a : b);
        if (owner.isEmpty() || owner.equals(bundle.id())) {
            return Optional.empty();
        }
        boolean allowed = table.allowed(bundle.shortId()).contains(owner.substring(Bundle.PREFIX.length()));
        return allowed ? Optional.empty() : Optional.of("the table does not allow " + owner + CURE);
    }

    private static boolean starts(String name, List<String> prefixes) {
        return prefixes.stream().anyMatch(prefix -> name.equals(prefix) || name.startsWith(prefix + "."));
    }

    static void none(List<String> wrong) {
        if (!wrong.isEmpty()) {
            fail(String.join("\n", wrong));
        }
    }
}
