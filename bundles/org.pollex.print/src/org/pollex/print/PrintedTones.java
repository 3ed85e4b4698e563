/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.util.HashMap;
import java.util.Map;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.colour.Xyz;
import org.pollex.model.LabColour;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.Material;

/**
 * Which colour a print will show on its material, as CIELAB D50.
 *
 * <p>An ink is known over white and over black; {@link FilmColour} gives what it looks like on the material.
 * Colours mixed from process inks print as the art shows
 * them on white; on bare material their light is multiplied by that of the material, as a transparent film would. A
 * method that lays white below prints every ink as on white.
 */
public final class PrintedTones {

    private static final Lab WHITE = new Lab(100, 0, 0);

    private final Lab ground;
    private final boolean whiteUnder;
    private final Map<String, Ink> inks = new HashMap<>();

    private PrintedTones(Lab ground, boolean whiteUnder) {
        this.ground = ground;
        this.whiteUnder = whiteUnder;
    }

    /** The colours of a design on its material. */
    public static PrintedTones of(Printed printed) {
        PrintedTones tones = new PrintedTones(ground(printed.material()), printed.method().isWhiteUnder());
        printed.inks().forEach(ink -> tones.inks.put(ink.getId(), ink));
        return tones;
    }

    /** Colour of the bare material; white when the catalogue gives none. */
    public Lab ground() {
        return ground;
    }

    /** Colour of a region: of its ink, or of its art colour where process inks mix it or the ink is not known. */
    public Lab of(InkRegion region) {
        Ink ink = inks.get(region.ink());
        return region.ink().equals(ColourMatch.PROCESS) || ink == null ? mixed(region.rgb()) : of(ink);
    }

    /** Colour of an ink on the material of the design. */
    public Lab of(Ink ink) {
        return over(ink, whiteUnder ? WHITE : ground);
    }

    /** Colour of an ink on a ground. */
    public static Lab over(Ink ink, Lab ground) {
        Lab onWhite = lab(ink.getLab(), WHITE);
        return FilmColour.over(onWhite, lab(ink.getLabOverBlack(), onWhite), ground);
    }

    /** Colour of an art colour mixed from process inks. */
    public Lab mixed(int rgb) {
        Lab art = Srgb.lab(rgb);
        if (whiteUnder) {
            return art;
        }
        Xyz film = art.toXyz();
        Xyz below = ground.toXyz();
        return Lab.ofXyz(new Xyz(film.x() * below.x() / Xyz.D50.x(), film.y() * below.y() / Xyz.D50.y(),
                film.z() * below.z() / Xyz.D50.z()));
    }

    /** Colour of a bare material; white when the catalogue gives none. */
    public static Lab ground(Material material) {
        return lab(material.getLab(), WHITE);
    }

    private static Lab lab(LabColour colour, Lab otherwise) {
        return colour == null ? otherwise : FilmColour.lab(colour);
    }
}
