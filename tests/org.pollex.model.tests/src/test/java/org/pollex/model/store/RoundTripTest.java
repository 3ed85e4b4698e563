/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.pollex.model.catalogue.CatalogueFactory;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.model.design.Side;

/** What is written is read back, by this reader and by EMF's own, and the same model gives the same bytes. */
class RoundTripTest {

    private static final int MODELS = 150;

    @ParameterizedTest
    @EnumSource(FileKind.class)
    void everyModelComesBack(FileKind kind) throws Exception {
        for (int seed = 0; seed < MODELS; seed++) {
            roundTrip(store(kind), seed);
        }
    }

    private static <T extends EObject> void roundTrip(ModelStore<T> store, int seed) throws Exception {
        T model = new RandomModels(seed).model(store.kind(), store.type());
        byte[] bytes = store.write(model);
        T again = store.read(new ByteArrayInputStream(bytes), "seed " + seed);
        assertTrue(EcoreUtil.equals(model, again), () -> "seed " + seed + " came back differently");
        assertArrayEquals(bytes, store.write(again), () -> "bytes of seed " + seed);
        assertArrayEquals(bytes, store.write(model), () -> "second bytes of seed " + seed);

        Resource plain = new XMIResourceImpl(URI.createURI("plain.xmi"));
        plain.load(new ByteArrayInputStream(bytes), null);
        assertEquals(List.of(), plain.getErrors());
        assertTrue(EcoreUtil.equals(model, plain.getContents().get(0)), () -> "EMF reads seed " + seed + " otherwise");
    }

    private static ModelStore<? extends EObject> store(FileKind kind) {
        return switch (kind) {
            case DESIGN -> ModelFiles.DESIGNS;
            case JOB -> ModelFiles.JOBS;
            case CATALOGUE -> ModelFiles.CATALOGUES;
        };
    }

    /** The reader follows no links, which is safe only while the model has none. */
    @ParameterizedTest
    @EnumSource(FileKind.class)
    void modelHasNoLinks(FileKind kind) {
        List<String> links = new ArrayList<>();
        for (EClassifier classifier : kind.root().getEPackage().getEClassifiers()) {
            if (classifier instanceof EClass type) {
                for (EReference reference : type.getEReferences()) {
                    if (!reference.isContainment()) {
                        links.add(type.getName() + "." + reference.getName());
                    }
                }
            }
        }
        assertEquals(List.of(), links);
    }

    @Test
    void bytesDoNotDependOnTheSystem() throws Exception {
        byte[] usual = ModelFiles.JOBS.write(new RandomModels(7).model(FileKind.JOB, ModelFiles.JOBS.type()));
        Locale before = Locale.getDefault();
        String separator = System.getProperty("line.separator");
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            System.setProperty("line.separator", "\r\n");
            assertArrayEquals(usual,
                    ModelFiles.JOBS.write(new RandomModels(7).model(FileKind.JOB, ModelFiles.JOBS.type())));
        } finally {
            Locale.setDefault(before);
            System.setProperty("line.separator", separator);
        }
        assertEquals(-1, new String(usual, StandardCharsets.UTF_8).indexOf('\r'));
    }

    @Test
    void idsAreGivenOnceAndStay() throws Exception {
        Design design = DesignFactory.eINSTANCE.createDesign();
        Side side = DesignFactory.eINSTANCE.createSide();
        side.setName("front");
        design.getSides().add(side);
        Layer layer = DesignFactory.eINSTANCE.createLayer();
        side.getLayers().add(layer);
        for (String id : new String[] {"m1", "", "m1", "logo"}) {
            Mark mark = DesignFactory.eINSTANCE.createTextLine();
            mark.setId(id.isEmpty() ? null : id);
            layer.getMarks().add(mark);
        }
        ModelFiles.DESIGNS.write(design);
        assertEquals("l1", layer.getId());
        assertEquals(List.of("m1", "m2", "m3", "logo"), layer.getMarks().stream().map(Mark::getId).toList());
        ModelFiles.DESIGNS.write(design);
        assertEquals(List.of("m1", "m2", "m3", "logo"), layer.getMarks().stream().map(Mark::getId).toList());
    }

    @Test
    void writingLeavesTheModelInItsResource() throws Exception {
        Design design = DesignFactory.eINSTANCE.createDesign();
        Resource home = new XMIResourceImpl(URI.createURI("home.design"));
        home.getContents().add(design);
        ModelFiles.DESIGNS.write(design);
        assertSame(home, design.eResource());
        assertEquals(FileKind.DESIGN.format(), design.getFormat());
    }

    @Test
    void idsOfMissingEntriesAreKept() throws Exception {
        Design design = DesignFactory.eINSTANCE.createDesign();
        design.setProduct("gone product");
        design.setMaterial("gone-material");
        design.getInks().addAll(List.of("red", "gone-ink", "bare"));
        Design again = ModelFiles.DESIGNS.read(new ByteArrayInputStream(ModelFiles.DESIGNS.write(design)), "d");
        assertEquals("gone product", again.getProduct());
        assertEquals("gone-material", again.getMaterial());
        assertEquals(List.of("red", "gone-ink", "bare"), again.getInks());
        var catalogue = CatalogueFactory.eINSTANCE.createCatalogue();
        var red = CatalogueFactory.eINSTANCE.createInk();
        red.setId("red");
        catalogue.getInks().add(red);
        assertEquals(List.of("product \"gone product\"", "material \"gone-material\"", "no method",
                "ink \"gone-ink\""), Catalogues.of(catalogue).missing(again, java.util.Set.of("bare")));
    }

    @Test
    void aValueThatNoFileHoldsIsNamedAndNotWritten() {
        Design design = DesignFactory.eINSTANCE.createDesign();
        design.setName("bell \u0007");
        assertRefused(design, "the design: not saved, since name of a Design in this design is \"bell ?\" "
                + "but must be text without control characters.");
        design.setName("half \uD83D");
        assertRefused(design, "text without control characters");
        design.setName("fine");
        Side side = DesignFactory.eINSTANCE.createSide();
        design.getSides().add(side);
        assertRefused(design, "has a side without a name");
        side.setName("front");
        Layer layer = DesignFactory.eINSTANCE.createLayer();
        side.getLayers().add(layer);
        Placement placement = DesignFactory.eINSTANCE.createPlacement();
        layer.getMarks().add(placement);
        placement.setX(Double.NaN);
        assertRefused(design, "x of a Placement");
        placement.setX(0);
        placement.setScale(0);
        assertRefused(design, "a number above 0");
        placement.setScale(1);
        placement.setSha256("ABC");
        assertRefused(design, "64 digits");
    }

    private static void assertRefused(Design design, String part) {
        StoreException e = assertThrows(StoreException.class, () -> ModelFiles.DESIGNS.write(design));
        assertEquals(StoreException.Reason.BAD_VALUE, e.reason());
        assertTrue(e.getMessage().contains(part), e.getMessage());
    }
}
