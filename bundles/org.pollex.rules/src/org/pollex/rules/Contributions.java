/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.core.runtime.IExtensionRegistry;
import org.pollex.artwork.ArtReaders;

/**
 * Everything that bundles contribute: readers of art, checks, families, catalogues. Immutable. Contributions are taken
 * one by one; one that is broken is left out and told by {@link #problems()}, the rest stays.
 */
public final class Contributions {

    private final ArtReaders readers;
    private final List<CheckEntry> checks;
    private final List<FamilyEntry> families;
    private final List<CatalogueEntry> catalogues;
    private final List<String> problems;

    private Contributions(Collector collector) {
        readers = ArtReaders.of(collector.readers);
        checks = List.copyOf(collector.checks.values());
        families = List.copyOf(collector.families.values());
        catalogues = List.copyOf(collector.catalogues);
        problems = List.copyOf(collector.problems);
    }

    /** What the extensions of a running platform contribute. */
    public static Contributions fromRegistry(IExtensionRegistry registry) {
        Collector collector = new Collector();
        List<Declaration> found = new ArrayList<>();
        for (String point : DeclarationReader.POINTS) {
            found.addAll(PlatformDeclarations.of(registry, point));
        }
        new DeclarationReader(found, collector).read();
        return collector.finish();
    }

    /**
     * What the {@code plugin.xml} files on a class path contribute, where no platform runs: tests, and programs that
     * embed the suite as plain jars.
     *
     * @param loader  finds the files and the classes they name
     */
    public static Contributions fromClassPath(ClassLoader loader) {
        Collector collector = new Collector();
        new DeclarationReader(ClassPathDeclarations.read(loader, collector), collector).read();
        return collector.finish();
    }

    /** Begins a set of plain objects. */
    public static Collector collect() {
        return new Collector();
    }

    /** Readers of art. */
    public ArtReaders readers() {
        return readers;
    }

    /** Checks in the order of their contribution. */
    public List<CheckEntry> checks() {
        return checks;
    }

    /** Families in the order of their contribution. */
    public List<FamilyEntry> families() {
        return families;
    }

    /** Catalogue files; a later one overrides entries of an earlier one. */
    public List<CatalogueEntry> catalogues() {
        return catalogues;
    }

    /** One sentence for each contribution that was left out: its bundle, what is wrong, the cure. */
    public List<String> problems() {
        return problems;
    }

    /** Gathers contributions; refuses what is incomplete or doubled, with a sentence in {@link #problems()}. */
    public static final class Collector {

        private final List<ArtReaders.Entry> readers = new ArrayList<>();
        private final Map<String, CheckEntry> checks = new LinkedHashMap<>();
        private final Map<String, FamilyEntry> families = new LinkedHashMap<>();
        private final List<CatalogueEntry> catalogues = new ArrayList<>();
        private final List<String> problems = new ArrayList<>();

        private Collector() {
        }

        /** Adds everything of another set. */
        public Collector with(Contributions others) {
            others.readers.entries().forEach(this::with);
            others.checks.forEach(this::with);
            others.families.forEach(this::with);
            others.catalogues.forEach(this::with);
            problems.addAll(others.problems);
            return this;
        }

        /** Adds a reader of art. */
        public Collector with(ArtReaders.Entry entry) {
            readers.add(entry);
            return this;
        }

        /** Adds a check. */
        public Collector with(CheckEntry entry) {
            if (!entry.id().matches("[a-z0-9]+(-[a-z0-9]+)*")) {
                problem(entry.contributor(), "check id \"" + entry.id()
                        + "\" is not made of lower-case words joined by hyphens; rename it");
            } else if (entry.name().isBlank() || entry.description().isBlank()) {
                problem(entry.contributor(), "check " + entry.id() + " lacks a name or a description; add it");
            } else if (checks.containsKey(entry.id())) {
                problem(entry.contributor(), "check id " + entry.id() + " is taken by "
                        + checks.get(entry.id()).contributor() + "; choose another");
            } else {
                checks.put(entry.id(), entry);
            }
            return this;
        }

        /** Adds a family. */
        public Collector with(FamilyEntry entry) {
            if (entry.id().isBlank()) {
                problem(entry.contributor(), "a family has no id; give it the id of its catalogue entry");
            } else if (families.containsKey(entry.id())) {
                problem(entry.contributor(), "family id " + entry.id() + " is taken by "
                        + families.get(entry.id()).contributor() + "; choose another");
            } else {
                families.put(entry.id(), entry);
            }
            return this;
        }

        /** Adds a catalogue. */
        public Collector with(CatalogueEntry entry) {
            catalogues.add(entry);
            return this;
        }

        /** Notes a contribution that is left out; the text says what is wrong and what to do, without a full stop. */
        void problem(String contributor, String text) {
            problems.add("The contribution of " + contributor + " is left out: " + text + ".");
        }

        /** The finished set. */
        public Contributions finish() {
            return new Contributions(this);
        }
    }
}
