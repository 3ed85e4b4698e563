/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.wear;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.pollex.model.catalogue.Catalogue;
import org.pollex.model.catalogue.CatalogueFactory;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.Setting;
import org.pollex.model.store.Catalogues;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.Opened;
import org.pollex.model.store.StoreException;
import org.pollex.print.wear.WearRates;
import org.pollex.print.wear.WornSample;
import org.pollex.rules.CheckContext;
import org.pollex.rules.Measures;
import org.pollex.rules.Suite;

/**
 * The rate of wear on a material that one worn sample showed, kept as a setting in a catalogue of the studio. That
 * catalogue holds nothing else, so that one which people write by hand is never written over.
 */
public final class Calibration {

    /** Name of the catalogue. */
    public static final String FILE = "wear.catalogue";

    private static final String KEY = "wear.rate.";

    private Calibration() {
    }

    /** The rate on a material, micrometres an hour as {@link WearRates#rate()}; empty when no sample was measured. */
    public static OptionalDouble rate(Catalogues catalogues, Material material) {
        return catalogues.setting(KEY + material.getId());
    }

    /** Whether the rate for a design comes from a worn sample. */
    public static boolean of(CheckContext context) {
        return rate(context.catalogues(), context.printed().material()).isPresent();
    }

    /** What a forecast says about its rate. */
    public static String words(boolean calibrated) {
        return calibrated ? "a model, calibrated from one sample" : "a model, not calibrated";
    }

    /** How far a rate may be off, as a sentence. */
    public static String uncertainty(double nearer, double farther) {
        return "Half a millimetre nearer to the tip would make it " + Measures.number(100 * (1 - nearer), 0)
                + " % less, half a millimetre farther " + Measures.number(100 * (farther - 1), 0) + " % more.";
    }

    /** What is kept beside a rate. */
    public static String note(WornSample sample, String use, double film, String product) {
        return "from one worn " + product + ": half of the ink gone " + Measures.number(sample.away(), 1)
                + " mm from the tip after " + Measures.number(sample.hours(), 1) + " h of " + use + ", film "
                + Measures.number(film, 1) + " um";
    }

    /** The catalogue for a design in a folder: the nearest there or above, else a new one in {@code otherwise}. */
    public static Path file(Path folder, Path otherwise) {
        List<Path> studio = Suite.cataloguesAbove(folder);
        for (int i = studio.size() - 1; i >= 0; i--) {
            if (studio.get(i).getFileName().toString().equals(FILE)) {
                return studio.get(i);
            }
        }
        return otherwise.resolve(FILE);
    }

    /** The same, a new one being made beside the nearest catalogue of the studio, or in the folder itself. */
    public static Path file(Path folder) {
        List<Path> studio = Suite.cataloguesAbove(folder);
        return file(folder, studio.isEmpty() ? folder : studio.get(studio.size() - 1).getParent());
    }

    /**
     * Keeps a rate, in place of one kept before.
     *
     * @param file  its catalogue, which is made when it is not there
     * @param rate  micrometres an hour, as {@link WearRates#rate()}
     * @param note  where it comes from
     * @throws StoreException when the file cannot be read or written; it is then as it was
     */
    public static void keep(Path file, Material material, double rate, String note) throws StoreException {
        if (!Files.exists(file)) {
            Catalogue made = CatalogueFactory.eINSTANCE.createCatalogue();
            made.setName("Worn samples");
            set(made, material, rate, note);
            ModelFiles.CATALOGUES.create(made, file);
            return;
        }
        Opened<Catalogue> opened = ModelFiles.CATALOGUES.open(file);
        set(opened.model(), material, rate, note);
        ModelFiles.CATALOGUES.save(opened);
    }

    private static void set(Catalogue catalogue, Material material, double rate, String note) {
        catalogue.getSettings().removeIf(each -> (KEY + material.getId()).equals(each.getKey()));
        Setting setting = CatalogueFactory.eINSTANCE.createSetting();
        setting.setKey(KEY + material.getId());
        setting.setValue(rate);
        setting.setUnit("um/h");
        setting.setNote(note);
        catalogue.getSettings().add(setting);
    }
}
