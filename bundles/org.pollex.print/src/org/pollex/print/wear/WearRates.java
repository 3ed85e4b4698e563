/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.wear;

import org.pollex.model.catalogue.Material;

/**
 * How fast a print wears, by {@link Archard}'s law: the load is how hard the item is used times the wear field of the
 * place, the distance is the hours, the hardness is one over the factor of the material. So depth after h hours where
 * the field is w is {@code rate * material * use * w * h}.
 *
 * @param rate      micrometres an hour where the field is 1, on a plain material, in plain playing
 * @param material  how much sooner than a plain material
 * @param use       how much harder than plain playing
 * @param spread    standard deviation of the thickness of a film as a share of it, above 0
 */
public record WearRates(double rate, double material, double use, double spread) {

    /** Makes a rate in micrometres an hour the coefficient of a law in mm³, m and MPa, over 1 mm². */
    private static final double MICROMETRE = 1e-6;

    public WearRates {
        if (!(rate >= 0 && material > 0 && use >= 0 && spread > 0)) {
            throw new IllegalArgumentException("Rates of wear are not below 0, and the spread is above 0.");
        }
    }

    /** The same on a material. */
    public WearRates on(Material stuff) {
        return new WearRates(rate, stuff.getWearFactor() > 0 ? stuff.getWearFactor() : 1, use, spread);
    }

    /**
     * The same with the rate that one worn sample shows: half of the ink gone where the field is w.
     *
     * @param film   thickness of the film of the sample, micrometres
     * @param hours  how long it was used
     * @param field  the wear field where half of the ink is gone, above 0
     */
    public WearRates calibrated(double film, double hours, double field) {
        if (!(film > 0 && hours > 0 && field > 0)) {
            throw new IllegalArgumentException("A worn sample has a film, hours of use and a place that is worn.");
        }
        return new WearRates(film / (hours * field * material * use), material, use, spread);
    }

    /**
     * The same for another ink than the rate was found with, both tested under the same wheels and load; their dry
     * films are taken to be equally dense.
     *
     * @param tested  the ink that is printed
     * @param known   the ink that the rate stands for
     */
    public WearRates tested(Abrasion tested, Abrasion known) {
        return new WearRates(rate * tested.soonerThan(known), material, use, spread);
    }

    /** Depth worn off in micrometres. */
    public double depth(double field, double hours) {
        return Archard.depth(Archard.volume(rate * MICROMETRE, use * field, hours, 1 / material), 1);
    }

    /**
     * Share of a film that is left, 1 when new: the film is thinner here and thicker there, normally spread, and is
     * gone where it is thinner than the depth.
     */
    public double left(double film, double field, double hours) {
        if (!(film > 0)) {
            return 0;
        }
        double above = (film - depth(field, hours)) / (spread * film);
        return Math.min(1, Normal.below(above) / Normal.below(1 / spread));
    }
}
