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
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.pollex.artwork.Art;
import org.pollex.making.desk.Desk;
import org.pollex.making.desk.SavingAs;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.Session;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Placement;
import org.pollex.model.design.Side;
import org.pollex.model.store.EntryNames;
import org.pollex.output.report.Decimal;
import org.pollex.print.Printed;
import org.pollex.print.item.ItemFace;

/** One new design: its art read, placed, copied beside it, and saved; nothing is left when a step fails. */
final class Draft {

    /** Art that states a size this many times larger than the item was drawn for something else. */
    private static final double FAR_TOO_LARGE = 10;
    /** Art that states a size below this, mm, has its unit wrong. */
    private static final double FAR_TOO_SMALL = 0.1;

    private final Session session;
    private final Stock stock;
    private final Order order;
    private final Desk desk;
    private final Map<Placement, Art> arts = new HashMap<>();
    private final Map<Placement, Path> files = new LinkedHashMap<>();

    Draft(Session session, Stock stock, Order order) {
        this.session = session;
        this.stock = stock;
        this.order = order;
        this.desk = new Desk(session);
    }

    /** Writes the design; returns what it is in a few words. */
    String write(Path to, Optional<Path> front, Optional<Path> back) throws Refusal {
        if (Files.isDirectory(to)) {
            throw new Refusal(ExitCode.NOT_WRITTEN, session.shown(to) + ": this is a folder; choose another name.");
        }
        if (Files.exists(to) && !order.force()) {
            throw new Refusal(ExitCode.NOT_WRITTEN, session.shown(to)
                    + ": is there already; choose another name, or replace it with --force.");
        }
        List<Ink> inks = new ArrayList<>();
        Design design = lay(to, front, back, inks);
        new SavingAs(design, to).save(placement -> Optional.of(files.get(placement)), order.force());
        return words(design, inks);
    }

    /** What the design would print; nothing is written. */
    Printed print(Path to, Optional<Path> front, Optional<Path> back) throws Refusal {
        return desk.print(lay(to, front, back, new ArrayList<>()), to, arts);
    }

    private Design lay(Path to, Optional<Path> front, Optional<Path> back, List<Ink> inks) throws Refusal {
        Design design = design(to);
        side(design, "front", front);
        side(design, "back", back);
        inks.addAll(stock.inks());
        if (inks.isEmpty()) {
            inks.addAll(new InkChoice(session.suiteNear(to.getParent()).catalogues().inks(), stock.material(),
                    stock.method()).forArt(files.keySet().stream().map(arts::get).toList()));
        }
        inks.forEach(ink -> design.getInks().add(ink.getId()));
        Printed printed = desk.print(design, to, arts);
        for (Side side : design.getSides()) {
            place(side, printed);
        }
        return design;
    }

    private Design design(Path to) {
        Design design = DesignFactory.eINSTANCE.createDesign();
        String name = to.getFileName().toString();
        design.setName(name.substring(0, name.lastIndexOf('.')));
        design.setProduct(order.product());
        design.setMaterial(order.material());
        design.setMethod(order.method());
        return design;
    }

    private void side(Design design, String face, Optional<Path> file) throws Refusal {
        if (file.isEmpty()) {
            return;
        }
        if (stock.item().face(face).isEmpty()) {
            throw Refusal.wrongUse("The product " + order.product() + " has no " + face + "; leave --" + face
                    + " out.");
        }
        Placement placement = DesignFactory.eINSTANCE.createPlacement();
        arts.put(placement, desk.art(file.get()));
        files.put(placement, file.get());
        Layer layer = DesignFactory.eINSTANCE.createLayer();
        layer.setName("Art");
        layer.getMarks().add(placement);
        Side side = DesignFactory.eINSTANCE.createSide();
        side.setName(face);
        side.getLayers().add(layer);
        design.getSides().add(side);
    }

    private void place(Side side, Printed printed) throws Refusal {
        Placement placement = (Placement) side.getLayers().get(0).getMarks().get(0);
        String shown = session.shown(files.get(placement));
        Geometry area = PrintedArea.of(printed, side.getName());
        if (area.isEmpty()) {
            throw new Refusal(ExitCode.UNREADABLE, shown + ": nothing in it prints, all of it is white or empty; draw "
                    + "what prints in a colour.");
        }
        ItemFace face = stock.item().face(side.getName()).orElseThrow();
        if (order.largest() || !arts.get(placement).sized()) {
            Largest.apply(side, Largest.find(area, face.safe(), 0, shown));
            return;
        }
        Envelope box = area.getEnvelopeInternal();
        double size = Math.max(box.getWidth(), box.getHeight());
        if (size > FAR_TOO_LARGE * Math.max(stock.item().width(), stock.item().height()) || size < FAR_TOO_SMALL) {
            throw new Refusal(ExitCode.UNREADABLE, shown + ": what it prints measures " + Decimal.of(box.getWidth())
                    + " x " + Decimal.of(box.getHeight()) + " mm, which no " + EntryNames.of(stock.item().product())
                    + " can be meant for; mend its size, or add --largest to fit it to the safe zone.");
        }
        Envelope safe = face.safe().getEnvelopeInternal();
        placement.setX(Largest.round(safe.centre().x - box.centre().x));
        placement.setY(Largest.round(safe.centre().y - box.centre().y));
    }

    private String words(Design design, List<Ink> inks) {
        String ink = inks.isEmpty() ? stock.method().isFullColour() ? "process inks" : "no ink"
                : inks.stream().map(EntryNames::of).collect(Collectors.joining(", "));
        return EntryNames.of(stock.item().product()) + ", " + EntryNames.of(stock.material()) + ", "
                + EntryNames.of(stock.method()) + ", " + ink + design.getSides().stream().map(side -> {
                    double scale = side.getLayers().get(0).getMarks().get(0).getScale();
                    return "; " + side.getName() + " at scale " + Decimal.of(scale);
                }).collect(Collectors.joining());
    }
}
