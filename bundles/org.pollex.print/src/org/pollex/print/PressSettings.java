/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.util.OptionalDouble;
import org.pollex.model.catalogue.Entry;
import org.pollex.model.catalogue.Method;
import org.pollex.model.store.Catalogues;

/**
 * Numbers of the catalogues that decide how a design prints, beyond what its method says.
 *
 * @param choke    how far the white below stays inside the edge of the colours, mm
 * @param black    L* up to which a colour without hue prints without white below
 * @param grey     chroma up to which a colour counts as one without hue
 * @param white    L* from which full colour is the white alone, with no ink on it
 * @param process  thickness of full colour, whatever it mixes, micrometres
 * @param film     thickness of an ink whose catalogue gives none, micrometres
 */
public record PressSettings(double choke, double black, double grey, double white, double process, double film) {

    private static final String CHOKE = "underbase.choke";
    private static final PressSettings USUAL = new PressSettings(0.1, 25, 15, 99, 16, 8);

    public PressSettings {
        if (!(choke >= 0) || !(process >= 0) || !(film >= 0)) {
            throw new IllegalArgumentException("A choke or a film is not below 0.");
        }
    }

    /** What a method prints with where no catalogue says anything. Common practice, no source. */
    public static PressSettings usual(Method method) {
        return method.getChoke() > 0 ? USUAL.choked(method.getChoke()) : USUAL;
    }

    /**
     * What catalogues say. The choke is that of the nearest entry which gives the setting, else that of the method,
     * else that for everything.
     *
     * @param entries  whose own settings go before those for everything, nearest first; the method among them
     */
    public static PressSettings of(Catalogues catalogues, Method method, Entry... entries) {
        PressSettings usual = usual(method);
        OptionalDouble own = OptionalDouble.empty();
        for (Entry entry : entries) {
            if (own.isEmpty()) {
                own = Catalogues.find(entry.getSettings(), CHOKE);
            }
        }
        double choke = own.isPresent() ? own.getAsDouble() : method.getChoke() > 0 ? method.getChoke()
                : catalogues.setting(CHOKE).orElse(usual.choke);
        return new PressSettings(choke, catalogues.setting("underbase.black", entries).orElse(usual.black),
                catalogues.setting("underbase.grey", entries).orElse(usual.grey),
                catalogues.setting("underbase.white", entries).orElse(usual.white),
                catalogues.setting("film.process", entries).orElse(usual.process),
                catalogues.setting("film.usual", entries).orElse(usual.film));
    }

    /** The same with another choke, mm. */
    public PressSettings choked(double by) {
        return new PressSettings(by, black, grey, white, process, film);
    }
}
