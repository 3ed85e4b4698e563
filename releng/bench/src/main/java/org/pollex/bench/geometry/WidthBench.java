/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.bench.geometry;

import java.util.concurrent.TimeUnit;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.pollex.geometry.shape.Polygons;
import org.pollex.geometry.width.WidthField;

/**
 * Lines and gaps, grouped into places, against morphological opening and closing with JTS buffers of eight segments
 * per quarter circle, which give regions but neither widths nor places. One thread.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class WidthBench {

    /** Icons along each side of the sheet, and the limit in mm. */
    @Param({"2x0.2", "3x0.2", "6x0.15", "9x0.1", "9x0.2", "14x0.067", "20x0.05", "20x0.2"})
    public String art;

    private Geometry sheet;
    private double limit;
    private WidthField field;

    /** Makes the sheet. */
    @Setup
    public void setUp() {
        String[] words = art.split("x");
        sheet = IconSheet.sheet(Integer.parseInt(words[0]));
        limit = Double.parseDouble(words[1]);
        field = WidthField.of(sheet, limit);
        System.out.println("\n# " + art + ": " + sheet.getNumPoints() + " vertices, "
                + Polygons.parts(sheet).size() + " parts, " + field.size() + " thin samples, "
                + field.places(limit).size() + " thin places, "
                + WidthField.gapsOf(sheet, limit).places(limit).size() + " narrow gaps");
    }

    /** The full check. */
    @Benchmark
    public int linesAndGaps() {
        WidthField.Both both = WidthField.both(sheet, limit, limit);
        return both.lines().places(limit).size() + both.gaps().places(limit).size();
    }

    /** Lines alone. */
    @Benchmark
    public int lines() {
        return WidthField.of(sheet, limit).places(limit).size();
    }

    /** What a change of scale costs once the field is there. */
    @Benchmark
    public int scaleOnly() {
        return field.scaled(1.1).places(limit).size();
    }

    /** The area that an opening takes away. */
    @Benchmark
    public double opening() {
        Geometry opened = buffer(buffer(sheet, -limit / 2), limit / 2);
        return Polygons.difference(sheet, opened).getArea();
    }

    private static Geometry buffer(Geometry area, double distance) {
        return BufferOp.bufferOp(area, distance, new BufferParameters(8));
    }
}
