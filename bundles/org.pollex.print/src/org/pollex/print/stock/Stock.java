/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.stock;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;
import org.pollex.colour.Lab;
import org.pollex.colour.Xyz;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.Texture;
import org.pollex.model.catalogue.TextureKind;
import org.pollex.print.PrintedTones;

/**
 * The bare surface of a material, place by place, as numbers of a palette: whatever is laid on it is worked out once
 * for each colour of the palette, and a picture is a look-up. Coordinates are those of a face, in mm; a pattern goes
 * through the body, so a back shows it mirrored. The same seed gives the same surface. Safe for threads.
 *
 * <p>A swatch picture is looked for beside the catalogue of the material; its scale is the width of the whole picture
 * in mm. It can be cropped to what shows the stock, and balanced by a grey that lies in it.
 * When it cannot be read the surface is plain, and {@link #problem()} says why.
 */
public final class Stock {

    private static final double SAMPLE = 0.1;
    private static final int SAMPLES = 400;
    private static final SwatchShelf PHOTOGRAPHS = new SwatchShelf();

    private final Pattern pattern;
    private final Optional<String> problem;

    private Stock(Pattern pattern, Optional<String> problem) {
        this.pattern = pattern;
        this.problem = problem;
    }

    /** The surface of a material. */
    public static Stock of(Material material) {
        try {
            return new Stock(pattern(material), Optional.empty());
        } catch (IOException e) {
            return new Stock(plain(material), Optional.of(e.getMessage()));
        }
    }

    private static Pattern pattern(Material material) throws IOException {
        Texture texture = material.getTexture();
        if (!patterned(material)) {
            return plain(material);
        }
        List<Lab> colours = Palettes.colours(material);
        Noise noise = new Noise(texture.getSeed());
        double scale = texture.getScale();
        return switch (texture.getKind()) {
            case FLECKED -> new Chips(texture.getSeed(), scale, colours);
            case MOTTLED -> new Shades(colours, Shades.mottled(noise, scale));
            case CAMOUFLAGE -> new Patches(texture.getSeed(), scale, colours);
            case TORTOISE -> new Shades(colours, Shades.tortoise(noise, scale));
            case PEARL -> new Shades(colours, Shades.pearl(noise, scale));
            case BRUSHED -> new Shades(colours, Shades.brushed(noise, scale));
            case SWATCH -> PHOTOGRAPHS.read(picture(material), texture);
            case FLAT -> plain(material);
        };
    }

    private static Pattern plain(Material material) {
        return new Plain(PrintedTones.ground(material));
    }

    private record Plain(Lab colour) implements Pattern {

        @Override
        public Lab[] palette() {
            return new Lab[] {colour};
        }

        @Override
        public int at(double x, double y, double step) {
            return 0;
        }
    }

    private static Path picture(Material material) throws IOException {
        Resource resource = material.eResource();
        URI uri = resource == null ? null : resource.getURI();
        String name = material.getTexture().getPicture();
        if (uri == null || !uri.isFile() || name == null) {
            throw new IOException("The material " + material.getId() + " has a swatch picture but lies in no file "
                    + "beside which it could be; give it another texture.");
        }
        Path folder = Path.of(uri.toFileString()).toAbsolutePath().getParent();
        Path file = folder.resolve(name).normalize();
        if (!file.startsWith(folder)) {
            throw new IOException("The swatch picture " + name + " of the material " + material.getId()
                    + " lies outside the folder of its catalogue; copy it there and name it anew.");
        }
        return file;
    }

    /** Whether a material has a pattern at all. */
    public static boolean patterned(Material material) {
        return material.getTexture() != null && material.getTexture().getKind() != TextureKind.FLAT;
    }

    /** Whether the surface has the one colour that the catalogue gives the material. */
    public boolean plain() {
        return pattern instanceof Plain;
    }

    /** Why the surface is shown plain although the material has a pattern. */
    public Optional<String> problem() {
        return problem;
    }

    /** The colours of the surface; a single one when it is plain. */
    public List<Lab> palette() {
        return List.of(pattern.palette());
    }

    /** Number in the palette of the colour at a place; edges are smoothed over the step. */
    public int at(double x, double y, double step) {
        return pattern.at(x, y, step);
    }

    /**
     * The surface sampled row by row.
     *
     * @param x         the left edge, mm
     * @param y         the top edge, mm
     * @param step      distance of samples, mm
     * @param columns   how many in a row
     * @param rows      how many rows
     * @param mirrored  whether it is seen from behind
     */
    public short[] raster(double x, double y, double step, int columns, int rows, boolean mirrored) {
        short[] numbers = new short[columns * rows];
        if (pattern.palette().length == 1) {
            return numbers;
        }
        double[] across = new double[columns];
        for (int column = 0; column < columns; column++) {
            double u = x + (column + 0.5) * step;
            across[column] = mirrored ? -u : u;
        }
        IntStream.range(0, rows).parallel()
                .forEach(row -> pattern.row(across, y + (row + 0.5) * step, step, numbers, row * columns));
        return numbers;
    }

    /**
     * Shades of 40 x 40 mm of the surface as they are seen past things of a size: its means, by light, over squares of
     * that size, from dark to light, and of those the middle ones of equal shares.
     *
     * @param count  how many, 1 at least
     * @param size   of the squares, mm, from 0.1 to 40
     * @return {@code count} colours, rising in lightness; the one colour of a plain surface
     */
    public List<Lab> shades(int count, double size) {
        if (plain()) {
            return palette();
        }
        Xyz[] light = light();
        short[] numbers = raster(-20, -20, SAMPLE, SAMPLES, SAMPLES, false);
        int side = Math.max(1, (int) Math.round(size / SAMPLE));
        int across = SAMPLES / side;
        List<Lab> means = new ArrayList<>();
        for (int square = 0; square < across * across; square++) {
            double[] sum = new double[3];
            for (int i = 0; i < side * side; i++) {
                int row = square / across * side + i / side;
                Xyz each = light[numbers[row * SAMPLES + square % across * side + i % side] & 0xffff];
                sum[0] += each.x();
                sum[1] += each.y();
                sum[2] += each.z();
            }
            double n = (double) side * side;
            means.add(Lab.ofXyz(new Xyz(sum[0] / n, sum[1] / n, sum[2] / n)));
        }
        means.sort(Comparator.comparingDouble(Lab::l));
        return IntStream.range(0, count).mapToObj(i -> means.get((int) ((i + 0.5) / count * means.size()))).toList();
    }

    private Xyz[] light() {
        Xyz[] light = new Xyz[pattern.palette().length];
        for (int i = 0; i < light.length; i++) {
            light[i] = pattern.palette()[i].toXyz();
        }
        return light;
    }

    /** The mean colour, by light, of 40 x 40 mm of the surface. */
    public Lab mean() {
        Xyz[] light = light();
        double[] sum = new double[3];
        for (short number : raster(-20, -20, SAMPLE, SAMPLES, SAMPLES, false)) {
            Xyz each = light[number & 0xffff];
            sum[0] += each.x();
            sum[1] += each.y();
            sum[2] += each.z();
        }
        double n = (double) SAMPLES * SAMPLES;
        return Lab.ofXyz(new Xyz(sum[0] / n, sum[1] / n, sum[2] / n));
    }
}
