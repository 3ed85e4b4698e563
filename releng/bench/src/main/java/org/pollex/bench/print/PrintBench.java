/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.bench.print;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.pollex.bench.geometry.IconSheet;
import org.pollex.geometry.shape.Polygons;
import org.pollex.model.catalogue.Catalogue;
import org.pollex.model.catalogue.CatalogueFactory;
import org.pollex.model.catalogue.Material;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.job.Use;
import org.pollex.model.store.Catalogues;
import org.pollex.output.picture.MaterialPicture;
import org.pollex.output.picture.PictureOptions;
import org.pollex.output.picture.WearPicture;
import org.pollex.print.ColourArea;
import org.pollex.print.InkRegion;
import org.pollex.print.Printed;
import org.pollex.print.PrintedSide;
import org.pollex.print.item.Item;
import org.pollex.print.retone.OneLightInk;
import org.pollex.print.retone.RetoneLimits;
import org.pollex.print.retone.Retoned;
import org.pollex.print.stock.Stock;
import org.pollex.print.wear.WearForecast;
import org.pollex.print.wear.WearRates;
import org.pollex.rules.CheckContext;
import org.pollex.rules.Contributions;
import org.pollex.rules.Suite;
import org.pollex.rules.crowd.Crowding;
import org.pollex.rules.rank.Ranked;
import org.pollex.rules.rank.Ranking;
import org.pollex.rules.rank.StockNoise;
import org.pollex.rules.wear.Uses;

/**
 * What a designer waits for beside the checks, on one face of a standard pick of a patterned material with a sheet of
 * icons in two inks: its predicted picture at 600 dpi, the ranking of all inks over 18 materials with their patterns,
 * art re-toned for a dark ground, a forecast of wear with its picture at 300 dpi, and how crowded the side is.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class PrintBench {

    private static final int MATERIALS = 18;
    /** Art is set this wide, so that all of it lies on the pick. */
    private static final double WIDTH = 16;

    /** Icons along each side of the sheet; 6 are about 10,000 corners. */
    @Param({"2", "6"})
    public int icons;

    private Printed printed;
    private Catalogues ranked;
    private CheckContext context;
    private List<ColourArea> areas;
    private RetoneLimits limits;
    private WearRates rates;
    private double coat;

    /** Makes the print and what it is asked for. */
    @Setup
    public void setUp() throws Exception {
        Suite suite = Suite.of(Contributions.fromClassPath(PrintBench.class.getClassLoader()));
        if (!suite.problems().isEmpty()) {
            throw new IllegalStateException(suite.problems().toString());
        }
        Catalogues all = suite.catalogues();
        List<Material> materials = new ArrayList<>(all.materials());
        materials.sort(Comparator.comparing((Material each) -> !Stock.patterned(each)));
        Geometry sheet = sheet();
        List<Polygon> dark = new ArrayList<>();
        List<Polygon> light = new ArrayList<>();
        Polygons.parts(sheet).forEach(part -> (dark.size() > light.size() ? light : dark).add(part));
        Item whole = suite.item("standard-pick");
        Item item = new Item(whole.product(), whole.width(), whole.height(), List.of(whole.faces().get(0)));
        PrintedSide front = new PrintedSide(item.faces().get(0), List.of(
                new InkRegion("navy", 0x203060, Polygons.of(dark)), new InkRegion("yellow", 0xf0d040,
                        Polygons.of(light))), List.of(), List.of(), List.of(), List.of(), List.of());
        printed = new Printed(DesignFactory.eINSTANCE.createDesign(), item, materials.get(0),
                all.method("pad-spot").orElseThrow(), List.of(all.ink("navy").orElseThrow(),
                        all.ink("yellow").orElseThrow()), List.of(front));
        context = CheckContext.of(printed, all);
        ranked = some(all, materials.subList(0, MATERIALS));
        areas = List.of(new ColourArea(0x203060, Polygons.of(dark)), new ColourArea(0xf0d040, Polygons.of(light)));
        limits = new RetoneLimits(printed.method().getLineMin(), printed.method().getGapMin());
        rates = Uses.rates(context, Use.PRACTICE);
        coat = Uses.coat(context);
        System.out.println("\n# " + sheet.getNumPoints() + " corners, " + ranked.inks().size() + " inks, "
                + ranked.materials().size() + " materials, patterned "
                + ranked.materials().stream().filter(Stock::patterned).count());
    }

    private Geometry sheet() {
        Geometry sheet = IconSheet.sheet(icons);
        Envelope box = sheet.getEnvelopeInternal();
        AffineTransformation place = AffineTransformation.translationInstance(-box.centre().x, -box.centre().y);
        place.scale(WIDTH / box.getWidth(), WIDTH / box.getWidth());
        place.translate(0, -4);
        return place.transform(sheet);
    }

    /** The catalogues with these materials only. */
    private static Catalogues some(Catalogues all, List<Material> materials) {
        List<Catalogue> layers = new ArrayList<>();
        for (Catalogue layer : all.layers()) {
            Catalogue copy = EcoreUtil.copy(layer);
            copy.getMaterials().clear();
            layers.add(copy);
        }
        Catalogue chosen = CatalogueFactory.eINSTANCE.createCatalogue();
        materials.forEach(each -> chosen.getMaterials().add(EcoreUtil.copy(each)));
        layers.add(chosen);
        return Catalogues.of(layers);
    }

    /** Aimed at: 60 ms. */
    @Benchmark
    public BufferedImage pictureOfASideAt600() {
        return MaterialPicture.of(printed, PictureOptions.of(600));
    }

    /** Aimed at: 300 ms. */
    @Benchmark
    public List<Ranked> inksOverMaterials() {
        return Ranking.of(printed, ranked, new StockNoise(printed, ranked));
    }

    /** Aimed at: 200 ms at 10,000 corners. */
    @Benchmark
    public Retoned oneLightInk() {
        return OneLightInk.of(areas, 0xffffff, limits);
    }

    /** Aimed at: 100 ms. */
    @Benchmark
    public BufferedImage wearWithItsPicture() {
        if (!(WearForecast.of(printed, rates).lost(20) >= 0)) {
            throw new IllegalStateException("no forecast");
        }
        return WearPicture.of(printed, PictureOptions.of(300), rates, coat, 20);
    }

    /** What crowding adds to a check. */
    @Benchmark
    public double crowding() {
        Crowding crowding = Crowding.of(context, context.sides().get(0));
        return crowding.of(crowding.worst());
    }
}
