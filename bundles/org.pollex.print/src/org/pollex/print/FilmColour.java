/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.util.List;
import org.pollex.colour.Lab;
import org.pollex.colour.film.FilmModel;
import org.pollex.model.LabColour;

/**
 * What a drawdown tells about an ink on another ground: its colours over a white and a black card make a film by the
 * two-backing method of Kubelka and Munk, and the film is laid on the ground.
 */
public final class FilmColour {

    private FilmColour() {
    }

    /** A colour of the catalogue. */
    public static Lab lab(LabColour colour) {
        return new Lab(colour.l(), colour.a(), colour.b());
    }

    /**
     * Colour of a film over a ground from its colours over the two cards of a drawdown
     * ({@link FilmModel#WHITE_CARD}, {@link FilmModel#BLACK_CARD}).
     */
    public static Lab over(Lab onWhite, Lab onBlack, Lab ground) {
        FilmModel model = FilmModel.spectral();
        return model.over(ground, List.of(model.measured(onWhite, onBlack).film()));
    }
}
