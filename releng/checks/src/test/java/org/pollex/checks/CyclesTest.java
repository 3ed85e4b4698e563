/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.checks;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import org.junit.jupiter.api.Test;

/**
 * Do packages use one another in a circle? The generated {@code impl} and {@code util} packages of the model are left
 * out: EMF lets those of one model file register each other by design. Their interfaces are not.
 */
class CyclesTest {

    private static final Pattern GENERATED = Pattern.compile("org\\.pollex\\.model\\.[a-z]+\\.(impl|util|provider)");

    @Test
    void packagesFormNoCircle() {
        List<Path> folders = Project.here().bundles().stream().map(Bundle::classes).filter(Files::isDirectory).toList();
        JavaClasses classes = new ClassFileImporter().importPaths(folders);
        assertTrue(classes.size() > 0, "no bundle is compiled; build the whole project, not this module alone");
        SlicesRuleDefinition.slices().assignedFrom(new ByPackage()).should().beFreeOfCycles()
                .because("a circle of packages cannot be understood or moved piece by piece; move the shared part to a "
                        + "package of its own")
                .check(classes);
    }

    @Test
    void onlyGeneratedPackagesAreLeftOut() {
        assertTrue(GENERATED.matcher("org.pollex.model.design.impl").matches());
        assertFalse(GENERATED.matcher("org.pollex.model.design").matches());
        assertFalse(GENERATED.matcher("org.pollex.print.impl").matches());
    }

    private static final class ByPackage implements SliceAssignment {

        @Override
        public SliceIdentifier getIdentifierOf(JavaClass each) {
            String name = each.getPackageName();
            boolean ours = name.startsWith("org.pollex.") && !GENERATED.matcher(name).matches();
            return ours ? SliceIdentifier.of(name) : SliceIdentifier.ignore();
        }

        @Override
        public String getDescription() {
            return "packages of the suite";
        }
    }
}
