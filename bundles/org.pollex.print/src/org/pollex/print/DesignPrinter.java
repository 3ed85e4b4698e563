/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.locationtech.jts.geom.Geometry;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtException;
import org.pollex.geometry.shape.Hull;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.InkKind;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.Method;
import org.pollex.model.design.Design;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.model.design.PlainShape;
import org.pollex.model.design.Side;
import org.pollex.model.design.TextLine;
import org.pollex.model.design.UnknownMark;
import org.pollex.print.arrange.ArrangeLimits;
import org.pollex.print.arrange.TooIntricateException;
import org.pollex.print.item.Item;
import org.pollex.print.item.ItemFace;

/**
 * Turns a design into what will be printed: per side, areas of ink that do not overlap. Answers "which ink lies where"
 * for one product, material, method and set of inks; the same printer may print many designs that share them, from
 * several threads when its supply and lettering allow that.
 *
 * <p>Curves are flattened within 0.002 mm at their final size. Hidden layers and marks are left out. The topmost paint
 * wins and knocks out what is below; the ground of art knocks out and prints nothing; a mark that overprints leaves
 * the inks of other marks below it, and only there do areas of different inks overlap. Which ink a colour becomes is
 * told by the {@link ColourMatch}es: what the designer assigned holds; with a full-colour method every other colour
 * prints by process inks; with several inks it prints in the nearest by CIEDE2000 among them and bare stock; with one
 * ink, colours whose lightness is nearer to the art's ground than to its figure stay bare and the others print.
 * Translucent paint is mixed with the colours of the art below it. Gradients and pictures of pixels stand as their mean
 * colour, with a notice. Slivers below 0.005 mm between different neighbours are given to one of them; nothing printed
 * is lost.
 */
public final class DesignPrinter {

    private static final double WORKING_SIZE = 30;

    private final Item item;
    private final Material material;
    private final Method method;
    private final List<Ink> inks;
    private final ArtSupply supply;
    private final Lettering lettering;
    private final ArrangeLimits limits;
    private final BooleanSupplier cancelled;
    private final Optional<Ink> white;
    private final PressSettings settings;

    /** A printer with the usual limits that is never cancelled. */
    public DesignPrinter(Item item, Material material, Method method, List<Ink> inks, ArtSupply supply,
            Lettering lettering) {
        this(item, material, method, inks, supply, lettering, ArrangeLimits.usual(), () -> false);
    }

    /**
     * @param inks       inks of the design in printing order
     * @param limits     how intricate art may be
     * @param cancelled  asked now and then from the calling thread; true ends the work with a
     *                   {@link java.util.concurrent.CancellationException}
     */
    public DesignPrinter(Item item, Material material, Method method, List<Ink> inks, ArtSupply supply,
            Lettering lettering, ArrangeLimits limits, BooleanSupplier cancelled) {
        this(item, material, method, inks, supply, lettering, limits, cancelled,
                inks.stream().filter(ink -> ink.getKind() == InkKind.WHITE).findFirst(), PressSettings.usual(method));
    }

    private DesignPrinter(Item item, Material material, Method method, List<Ink> inks, ArtSupply supply,
            Lettering lettering, ArrangeLimits limits, BooleanSupplier cancelled, Optional<Ink> white,
            PressSettings settings) {
        this.item = item;
        this.material = material;
        this.method = method;
        this.inks = List.copyOf(inks);
        this.supply = supply;
        this.lettering = lettering;
        this.limits = limits;
        this.cancelled = cancelled;
        this.white = white;
        this.settings = settings;
    }

    /**
     * The same printer as catalogues have it.
     *
     * @param ink      the white that a method with white below lays, when the design names none itself
     * @param numbers  what decides how a design prints beyond its method
     */
    public DesignPrinter with(Optional<Ink> ink, PressSettings numbers) {
        return new DesignPrinter(item, material, method, inks, supply, lettering, limits, cancelled,
                white.or(() -> ink), numbers);
    }

    /**
     * Prints a design.
     *
     * @throws ArtException   when art is missing, unreadable or too intricate
     * @throws PrintException when the design asks for something impossible: a face that the product has not, a scale
     *                        of 0, a colour that is none
     */
    public Printed print(Design design) throws ArtException, PrintException {
        Press press = new Press(material, method, inks);
        List<PrintedSide> sides = new ArrayList<>();
        for (ItemFace face : item.faces()) {
            for (Side side : design.getSides()) {
                if (face.name().equals(side.getName())) {
                    List<MarkShapes> marks = marks(side, press);
                    if (!marks.isEmpty()) {
                        sides.add(new SidePrinter(press, limits, cancelled).print(face, marks));
                    }
                }
            }
        }
        for (Side side : design.getSides()) {
            if (item.face(MarkPlace.text(side.getName())).isEmpty()) {
                throw new PrintException("The product " + item.product().getId() + " has no face \"" + side.getName()
                        + "\"; its faces are " + String.join(", ", item.faces().stream().map(ItemFace::name).toList())
                        + ".");
            }
        }
        return new Printed(design, item, material, method, inks, white, settings, sides);
    }

    /**
     * The hull of what a mark prints, in its own coordinates: its middle at the origin, scale 1, not turned, but
     * mirrored when the mark is. Ground and bare areas are left out. This is what has to fit into a zone.
     *
     * @return nothing when the mark prints nothing
     */
    public Optional<Hull> hull(Mark mark) throws ArtException, PrintException {
        Press press = new Press(material, method, inks);
        Mark own = EcoreUtil.copy(mark);
        own.setX(0);
        own.setY(0);
        own.setTurn(0);
        own.setScale(1);
        Art art = null;
        if (mark instanceof Placement placement) {
            art = supply.art(placement);
            own.setScale(WORKING_SIZE / Math.max(art.width(), art.height()));
        }
        MarkShapes shapes = read(own, art, press);
        if (shapes.items.isEmpty()) {
            return Optional.empty();
        }
        Geometry area = new SidePrinter(press, limits, cancelled).area(shapes);
        return area.isEmpty() ? Optional.empty() : Optional.of(Hull.of(area).placed(1 / own.getScale(), 0, 0, 0));
    }

    /**
     * The colours of a piece of art as it means them, its ground among them: at its scale, its middle at the origin,
     * neither turned nor mirrored. No inks are chosen and nothing that lies over it on the side is cut out.
     */
    public List<ColourArea> colours(Placement placement) throws ArtException, PrintException {
        Placement own = EcoreUtil.copy(placement);
        own.setX(0);
        own.setY(0);
        own.setTurn(0);
        own.setMirror(false);
        own.setOverprint(false);
        own.setGround("none");
        MarkShapes shapes = read(own, supply.art(placement), new Press(material, method, inks));
        return shapes.items.isEmpty() ? List.of()
                : new SidePrinter(new Press(material, method, inks), limits, cancelled).colours(shapes);
    }

    private List<MarkShapes> marks(Side side, Press press) throws ArtException, PrintException {
        List<MarkShapes> marks = new ArrayList<>();
        for (Layer layer : side.getLayers()) {
            for (Mark mark : layer.getMarks()) {
                if (!layer.isHidden() && !mark.isHidden()) {
                    marks.add(read(mark, mark instanceof Placement p ? supply.art(p) : null, press));
                }
            }
        }
        return marks;
    }

    private MarkShapes read(Mark mark, Art art, Press press) throws ArtException, PrintException {
        PathRings rings = new PathRings(limits);
        try {
            if (mark instanceof Placement placement) {
                return new PlacementReader(placement, art, rings, press).read();
            }
            if (mark instanceof TextLine line) {
                return new PlainMarks(rings, press).line(line, lettering);
            }
            if (mark instanceof PlainShape shape) {
                return new PlainMarks(rings, press).shape(shape);
            }
        } catch (TooIntricateException e) {
            throw SidePrinter.refusal(art == null ? MarkPlace.label(mark) : art.name(), e);
        }
        throw new PrintException(MarkPlace.label(mark) + " is of the unknown kind "
                + (mark instanceof UnknownMark unknown ? unknown.getKind() : mark.eClass().getName())
                + "; it is kept, but cannot be printed or checked.");
    }
}
