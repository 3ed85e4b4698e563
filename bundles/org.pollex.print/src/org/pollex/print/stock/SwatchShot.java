/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.stock;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.impl.ResourceImpl;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.pollex.model.catalogue.Catalogue;
import org.pollex.model.catalogue.CatalogueFactory;
import org.pollex.model.catalogue.GreyPatch;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.PhotoArea;
import org.pollex.model.catalogue.PhotoUnit;
import org.pollex.model.catalogue.Texture;
import org.pollex.model.catalogue.TextureKind;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.Opened;
import org.pollex.model.store.StoreException;

/**
 * A photograph of a stock and what of it is the stock, before it is kept in a catalogue. Places count in pixels of the
 * photograph, so they stay where they are when its scale is corrected.
 *
 * @param photo      the file, which is never written to
 * @param width      what the width of the whole photograph is on the material, mm, above 0
 * @param crop       the part that shows the stock; empty for all of it
 * @param grey       the patch of grey in it; empty to leave its colours alone
 * @param lightness  L* of that grey, 0 to 100
 */
public record SwatchShot(Path photo, double width, Optional<Box> crop, Optional<Box> grey, double lightness) {

    /** A part of a photograph from its top left corner, pixels; width and height are above 0. */
    public record Box(int x, int y, int width, int height) {
    }

    public SwatchShot {
        if (!(width > 0 && Double.isFinite(width))) {
            throw new IllegalArgumentException("The width of the photograph is a length above 0, not " + width + ".");
        }
    }

    /**
     * The width of a photograph in which the distance of two points is known.
     *
     * @param pixels   width of the photograph, pixels
     * @param between  distance of the points, pixels, above 0
     * @param mm       the same distance on the material, mm
     */
    public static double width(int pixels, double between, double mm) {
        return pixels * mm / between;
    }

    /** A copy of a material that shows the photograph where it lies. It is in a catalogue of its own. */
    public Material on(Material like) {
        Material material = EcoreUtil.copy(like);
        material.setTexture(texture(photo.getFileName().toString()));
        Catalogue alone = CatalogueFactory.eINSTANCE.createCatalogue();
        alone.getMaterials().add(material);
        Path beside = photo.toAbsolutePath().resolveSibling("swatch.catalogue");
        new ResourceImpl(URI.createFileURI(beside.toString())).getContents().add(alone);
        return material;
    }

    private Texture texture(String picture) {
        Texture texture = CatalogueFactory.eINSTANCE.createTexture();
        texture.setKind(TextureKind.SWATCH);
        texture.setPicture(picture);
        texture.setScale(width);
        crop.ifPresent(box -> texture.setCrop(area(CatalogueFactory.eINSTANCE.createPhotoArea(), box)));
        grey.ifPresent(box -> {
            GreyPatch patch = area(CatalogueFactory.eINSTANCE.createGreyPatch(), box);
            patch.setLightness(lightness);
            texture.setGrey(patch);
        });
        return texture;
    }

    private static <T extends PhotoArea> T area(T area, Box box) {
        area.setUnit(PhotoUnit.PX);
        area.setX(box.x());
        area.setY(box.y());
        area.setWidth(box.width());
        area.setHeight(box.height());
        return area;
    }

    /**
     * Copies the photograph beside a catalogue and keeps the material there, in the place of one with its id. The copy
     * is byte for byte the photograph; one that lies there already is used. Other entries of the file stay.
     *
     * @param catalogue  its file, which is made when it is not there
     * @param like       the material, whose texture is replaced; it is copied
     * @return the material as it is kept
     * @throws StoreException when the photograph or the catalogue cannot be read or written; the catalogue is then as
     *         it was
     */
    public Material keep(Path catalogue, Material like) throws StoreException {
        boolean fresh = !Files.exists(catalogue);
        Catalogue made = CatalogueFactory.eINSTANCE.createCatalogue();
        made.setName("The studio's own");
        Opened<Catalogue> opened = fresh ? null : ModelFiles.CATALOGUES.open(catalogue);
        Catalogue model = fresh ? made : opened.model();
        Material material = EcoreUtil.copy(like);
        material.setTexture(texture(ArtFiles.adoptBeside(catalogue, photo).path()));
        int at = 0;
        while (at < model.getMaterials().size() && !like.getId().equals(model.getMaterials().get(at).getId())) {
            at++;
        }
        if (at < model.getMaterials().size()) {
            model.getMaterials().set(at, material);
        } else {
            model.getMaterials().add(material);
        }
        if (fresh) {
            ModelFiles.CATALOGUES.create(made, catalogue);
        } else {
            ModelFiles.CATALOGUES.save(opened);
        }
        return material;
    }
}
