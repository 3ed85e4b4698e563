/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.design;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.pollex.geometry.placement.Contact;
import org.pollex.geometry.placement.Fit;
import org.pollex.making.desk.Desk;
import org.pollex.making.desk.OpenDesign;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.Session;
import org.pollex.model.catalogue.Product;
import org.pollex.model.design.Design;
import org.pollex.model.design.Side;
import org.pollex.model.store.EntryNames;
import org.pollex.model.store.FileKind;
import org.pollex.output.report.Decimal;
import org.pollex.print.item.ItemException;
import org.pollex.print.item.ItemFace;
import org.pollex.rules.Measures;
import org.pollex.rules.Suite;

/** Places the art of a side as large as the safe zone allows and tells what that takes and what else would gain. */
public final class Placer {

    /** A contact this near to the wear-risk zone touches it, mm. */
    private static final double NEAR = 0.02;

    private final Session session;
    private final Desk desk;

    /** Places for a call. */
    public Placer(Session session) {
        this.session = session;
        this.desk = new Desk(session);
    }

    /** Does what is ordered. */
    public ExitCode place(PlaceOrder order) throws Refusal {
        Path from = session.file(order.design());
        Optional<Path> out = order.out().isPresent() ? Optional.of(session.file(order.out().get())) : Optional.empty();
        double turn = turn(order.turn());
        OpenDesign open = desk.open(from);
        Design design = open.design();
        Side side = design.getSides().stream().filter(each -> order.side().equals(each.getName())).findFirst()
                .orElseThrow(() -> Refusal.wrongUse(session.shown(from) + ": there is no art on the side "
                        + order.side() + "; name a side that has some."));
        Geometry area = area(open, order.side(), from);
        ItemFace face = open.printed().item().face(order.side()).orElseThrow();
        double first = firstTurn(side);
        double by = order.turn().isEmpty() ? 0 : turn - first;
        Fit fit = Largest.find(area, face.safe(), by, session.shown(from));
        List<String> told = tell(session.shown(from), open, face, area, fit, side);
        Largest.apply(side, fit);
        save(open, from, out);
        told.forEach(session::say);
        session.say("Wrote " + session.shown(out.orElse(from)) + ".");
        return ExitCode.CLEAN;
    }

    private static double turn(Optional<String> text) throws Refusal {
        if (text.isEmpty() || text.get().equals("best")) {
            return Double.NaN;
        }
        try {
            double turn = Double.parseDouble(text.get());
            if (Math.abs(turn) <= 360) {
                return turn;
            }
        } catch (NumberFormatException e) {
            throw Refusal.wrongUse("The turn " + text.get() + " is neither a number of degrees nor best.");
        }
        throw Refusal.wrongUse("The turn " + text.get() + " is not between -360 and 360 degrees.");
    }

    private Geometry area(OpenDesign open, String side, Path from) throws Refusal {
        Geometry area = PrintedArea.of(open.printed(), side);
        if (area.isEmpty()) {
            throw new Refusal(ExitCode.UNREADABLE, session.shown(from) + ": the side " + side
                    + " prints nothing; put art on it first.");
        }
        return area;
    }

    private static double firstTurn(Side side) {
        return side.getLayers().stream().flatMap(layer -> layer.getMarks().stream()).findFirst()
                .map(mark -> mark.getTurn()).orElse(0.0);
    }

    private List<String> tell(String shown, OpenDesign open, ItemFace face, Geometry area, Fit fit, Side side)
            throws Refusal {
        double before = side.getLayers().get(0).getMarks().get(0).getScale();
        List<String> lines = new ArrayList<>();
        lines.add(shown + ", " + face.name() + ": scale " + Decimal.of(before * fit.scale()) + " ("
                + Decimal.of(before) + " before), turned by " + Decimal.of(fit.turn()) + " degrees");
        AffineTransformation place = AffineTransformation.rotationInstance(Math.toRadians(fit.turn()))
                .scale(fit.scale(), fit.scale()).translate(fit.dx(), fit.dy());
        Geometry placed = place.transform(area);
        lines.add("share of the safe zone: its hull takes " + percent(placed.convexHull(), face) + ", its ink "
                + percent(placed, face));
        lines.add("touches " + contacts(fit.contacts(), face));
        lines.add("a half turn: " + gain(Largest.find(area, face.safe(), fit.turn() + 180, shown), fit));
        String others = others(open, face, area, fit, shown);
        if (!others.isEmpty()) {
            lines.add("another product at this turn: " + others);
        }
        return lines;
    }

    private static String percent(Geometry area, ItemFace face) {
        return Measures.percent(area.getArea() / face.safe().getArea());
    }

    private static String contacts(List<Contact> contacts, ItemFace face) {
        GeometryFactory factory = new GeometryFactory();
        List<String> rim = new ArrayList<>();
        List<String> wear = new ArrayList<>();
        for (Contact contact : contacts) {
            Geometry point = factory.createPoint(new Coordinate(contact.x(), contact.y()));
            (point.distance(face.wearRisk()) < NEAR && !face.wearRisk().isEmpty()
                    && point.distance(face.wearRisk()) <= point.distance(face.unprintable()) ? wear : rim)
                    .add("(" + Measures.number(contact.x(), 2) + ", " + Measures.number(contact.y(), 2) + ")");
        }
        List<String> parts = new ArrayList<>();
        if (!rim.isEmpty()) {
            parts.add("the unprintable rim at " + String.join(" ", rim));
        }
        if (!wear.isEmpty()) {
            parts.add("the wear zone at " + String.join(" ", wear));
        }
        return parts.isEmpty() ? "nothing" : String.join(" and ", parts);
    }

    private static String gain(Fit other, Fit fit) {
        double gain = other.scale() / fit.scale() - 1;
        if (Math.abs(gain) < 0.0005) {
            return "the same size";
        }
        return Measures.percent(Math.abs(gain)) + (gain > 0 ? " larger" : " smaller");
    }

    private String others(OpenDesign open, ItemFace face, Geometry area, Fit fit, String shown) throws Refusal {
        Suite suite = session.suiteNear(open.opened().path().toAbsolutePath().getParent());
        List<String> parts = new ArrayList<>();
        for (Product product : suite.catalogues().products()) {
            if (!product.getId().equals(open.design().getProduct())) {
                try {
                    Optional<ItemFace> other = suite.item(product.getId()).face(face.name());
                    if (other.isPresent()) {
                        parts.add(EntryNames.of(product) + " "
                                + gain(Largest.find(area, other.get().safe(), fit.turn(), shown), fit));
                    }
                } catch (ItemException e) {
                    // A product whose dimensions make no item gains nothing; listing the products tells what is wrong.
                    continue;
                }
            }
        }
        return String.join(", ", parts);
    }

    private void save(OpenDesign open, Path from, Optional<Path> out) throws Refusal {
        if (out.isEmpty() || out.get().toAbsolutePath().normalize().equals(from.toAbsolutePath().normalize())) {
            desk.save(open.opened());
            return;
        }
        if (!FileKind.of(out.get()).equals(Optional.of(FileKind.DESIGN))) {
            throw Refusal.wrongUse(session.shown(out.get()) + ": a design's name must end in "
                    + "." + FileKind.DESIGN.ending() + "; write it so.");
        }
        if (Files.isDirectory(out.get())) {
            throw new Refusal(ExitCode.NOT_WRITTEN, session.shown(out.get()) + ": this is a folder; choose another "
                    + "name.");
        }
        desk.saveAs(open.opened(), out.get());
    }
}
