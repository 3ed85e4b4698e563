/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.core.runtime.RegistryFactory;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtReaders;
import org.pollex.artwork.ArtSource;
import org.pollex.artwork.ReadLimits;
import org.pollex.model.catalogue.Catalogue;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.InkKind;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.Method;
import org.pollex.model.design.Design;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.ArtState;
import org.pollex.model.store.Catalogues;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.StoreException;
import org.pollex.print.ArtSupply;
import org.pollex.print.DesignPrinter;
import org.pollex.print.Lettering;
import org.pollex.print.PrintException;
import org.pollex.print.PressSettings;
import org.pollex.print.Printed;
import org.pollex.print.item.Item;
import org.pollex.print.item.ItemException;

/**
 * What is installed, and the way in to all of it: catalogues, items, printing, checks. Made once by whoever starts the
 * program and passed on. Immutable but for caches; safe for threads; model objects it hands out are shared and must
 * not be
 * changed.
 */
public final class Suite {

    /** Longest time for one check on one design, unless said otherwise. */
    public static final long CHECK_MILLIS = 30_000;

    private final Contributions contributions;
    private final Catalogues catalogues;
    private final List<String> problems;
    private final Items items;
    private final CheckRunner runner;
    private final Map<String, Suite> studios = new ConcurrentHashMap<>();

    private Suite(Contributions contributions, Catalogues catalogues, List<String> problems, CheckRunner runner) {
        this.contributions = contributions;
        this.catalogues = catalogues;
        this.problems = List.copyOf(problems);
        this.items = new Items(contributions, catalogues);
        this.runner = runner;
    }

    /** Everything that is installed: from the registry of the running platform, else from the class path. */
    public static Suite installed() {
        return of(registry().map(Contributions::fromRegistry)
                .orElseGet(() -> Contributions.fromClassPath(Suite.class.getClassLoader())));
    }

    private static Optional<IExtensionRegistry> registry() {
        try {
            return Optional.ofNullable(RegistryFactory.getRegistry());
        } catch (LinkageError | SecurityException e) {
            // Plain jars of the platform lie on a class path; their signers need not agree, and nothing runs them.
            return Optional.empty();
        }
    }

    /** A suite of these contributions. A catalogue that cannot be read is left out and told by {@link #problems()}. */
    public static Suite of(Contributions contributions) {
        return of(contributions, CHECK_MILLIS);
    }

    /**
     * A suite of these contributions.
     *
     * @param checkMillis  longest time for one check on one design, ms
     */
    public static Suite of(Contributions contributions, long checkMillis) {
        List<String> problems = new ArrayList<>(contributions.problems());
        Catalogues catalogues = Catalogues.of(List.of());
        for (CatalogueEntry entry : contributions.catalogues()) {
            try (InputStream in = entry.content().open()) {
                catalogues = catalogues.with(ModelFiles.CATALOGUES.read(in, entry.name()));
            } catch (IOException e) {
                problems.add("The catalogue " + entry.name() + " is left out: it cannot be opened (" + e.getMessage()
                        + "); mend the bundle " + entry.contributor() + ".");
            } catch (StoreException | RuntimeException e) {
                problems.add("The catalogue of " + entry.contributor() + " is left out: " + e.getMessage());
            }
        }
        return new Suite(contributions, catalogues, problems, new CheckRunner(contributions.checks(), checkMillis));
    }

    /**
     * The same suite with catalogues of the studio over those that are installed.
     *
     * @param files  catalogue files, a later one over an earlier one
     * @throws StoreException when one cannot be read
     */
    public Suite withCatalogues(List<Path> files) throws StoreException {
        Catalogues all = catalogues;
        for (Path file : files) {
            all = all.with(ModelFiles.CATALOGUES.load(file));
        }
        return new Suite(contributions, all, problems, runner);
    }

    /** The same suite with a catalogue over those it has. */
    public Suite with(Catalogue over) {
        return new Suite(contributions, catalogues.with(over), problems, runner);
    }

    /**
     * The suite as a design in that folder sees it: with every {@code *.catalogue} of the folder and of those above it,
     * the nearest over the farther ones. Asked again, it looks again, but reads only what has changed.
     *
     * @throws StoreException when a catalogue there cannot be read
     */
    public Suite near(Path folder) throws StoreException {
        List<Path> files = StudioCatalogues.above(folder);
        if (files.isEmpty()) {
            return this;
        }
        String stamp = StudioCatalogues.stamp(files);
        Suite known = studios.get(stamp);
        if (known == null) {
            // whoever asks at the same time gets the same suite, so that no change means no other suite
            Suite read = withCatalogues(files);
            Suite first = studios.putIfAbsent(stamp, read);
            known = first == null ? read : first;
        }
        return known;
    }

    /**
     * The suite as a design beside a catalogue file sees it, without that file.
     *
     * @throws StoreException when one of the other catalogues cannot be read
     */
    public Suite nearWithout(Path catalogue) throws StoreException {
        Path left = catalogue.toAbsolutePath().normalize();
        return withCatalogues(StudioCatalogues.above(left.getParent()).stream().filter(each -> !each.equals(left))
                .toList());
    }

    /** Files of the studio's catalogues that a design in that folder sees, the nearest last. */
    public static List<Path> cataloguesAbove(Path folder) {
        return StudioCatalogues.above(folder);
    }

    /** Entries of all catalogues. */
    public Catalogues catalogues() {
        return catalogues;
    }

    /** The readers of art that are installed. */
    public ArtReaders readers() {
        return contributions.readers();
    }

    /** The checks that are installed. */
    public List<CheckEntry> checks() {
        return contributions.checks();
    }

    /** The families that are installed. */
    public List<FamilyEntry> families() {
        return contributions.families();
    }

    /** One sentence for each contribution that could not be used. */
    public List<String> problems() {
        return problems;
    }

    /**
     * A product with its geometry. Built once and kept.
     *
     * @param product  id of the product
     * @throws ItemException when no catalogue has it, no family builds it, or its dimensions are impossible
     */
    public Item item(String product) throws ItemException {
        return items.item(product);
    }

    /**
     * A printer for a design: product, material, method and inks are looked up in the catalogues.
     *
     * @param supply     art of its placements, see {@link #artBeside(Path)}
     * @param lettering  sets its lines of text
     * @throws PrintException when no catalogue has what the design names
     * @throws ItemException  when the product cannot be built
     */
    public DesignPrinter printer(Design design, ArtSupply supply, Lettering lettering)
            throws PrintException, ItemException {
        List<String> missing = catalogues.missing(design, Set.of());
        if (!missing.isEmpty()) {
            throw new PrintException("The design names " + String.join(", ", missing)
                    + ", which no catalogue has; add it to one or choose another.");
        }
        List<Ink> inks = design.getInks().stream().map(id -> catalogues.ink(id).orElseThrow()).toList();
        Item item = item(design.getProduct());
        Material material = catalogues.material(design.getMaterial()).orElseThrow();
        Method method = catalogues.method(design.getMethod()).orElseThrow();
        return new DesignPrinter(item, material, method, inks, supply, lettering)
                .with(white(), settings(item, material, method));
    }

    /** Numbers of the catalogues that decide how an item prints beyond what its method says. */
    public PressSettings settings(Item item, Material material, Method method) {
        return PressSettings.of(catalogues, method, Settings.entries(item, material, method, catalogues));
    }

    /** The white ink of the catalogues, the studio's own before the built-in one. */
    public Optional<Ink> white() {
        return catalogues.inks().stream().filter(ink -> ink.getKind() == InkKind.WHITE).findFirst();
    }

    /**
     * Reads the art of a design from the files that it names; every call reads again.
     *
     * @param design  path of the design, beside or above its art
     */
    public ArtSupply artBeside(Path design) {
        return placement -> {
            String name = placement.getArt() == null ? "" : placement.getArt();
            ArtState state = ArtFiles.state(design, placement);
            if (state instanceof ArtState.Present present) {
                ReadLimits limits = ReadLimits.usual();
                return readers().read(ArtSource.of(present.file(), limits), limits);
            }
            if (state instanceof ArtState.Changed) {
                throw new ArtException(name, "the file is not the one that was placed; put that one back or place it "
                        + "anew");
            }
            if (state instanceof ArtState.Refused) {
                throw new ArtException(name, "this is no path inside the folder of the design; copy the file there "
                        + "and place it anew");
            }
            throw new ArtException(name, "the file is missing beside " + design.getFileName()
                    + "; put it back or place it anew");
        };
    }

    /**
     * Holds a design against every check. A check that fails is reported as not run, and the others go on.
     *
     * @return findings, worst first, then by face, check and place
     * @throws InterruptedException when the calling thread is told to stop
     */
    public List<Finding> check(Printed printed) throws InterruptedException {
        return runner.run(CheckContext.of(printed, catalogues));
    }

    /**
     * How large everything printed on a side could be in its safe zone.
     *
     * @param side  name of the face
     * @param turn  degrees clockwise on screen to add to the present turn; empty for the turn that allows most
     * @return empty when nothing is printed on that side
     */
    public Optional<SideFit> fit(Printed printed, String side, OptionalDouble turn) {
        return printed.side(side).map(SideMeasures::new).filter(measures -> measures.printed().getArea() > 0)
                .map(measures -> SideFit.of(measures, turn.isPresent() ? measures.largest(turn.getAsDouble())
                        : measures.largest()));
    }
}
