/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.pollex.model.design.DesignPackage;
import org.pollex.model.LabColour;
import org.pollex.model.design.Design;

/** Fills any model with random values of every kind, so that a new feature is tested without a new line here. */
final class RandomModels {

    private static final String[] TEXTS = {
        "front", "", "Fähre <b> & \"Söhne\" 'x'", "a\nb\r\n\tc", "日本語 ☕ \uD83D\uDC1D",
        " padded ", "]]>", "&amp;", "x".repeat(3000), "e\u0301", "none"};

    private final Random random;
    private int next;

    RandomModels(long seed) {
        this.random = new Random(seed);
    }

    <T extends EObject> T model(FileKind kind, Class<T> type) {
        EObject root = fill(kind.root());
        if (root instanceof Design design) {
            // Sides have names of their own; that is a rule of the format.
            for (int i = 0; i < design.getSides().size(); i++) {
                design.getSides().get(i).setName(i == 0 ? "front" : i == 1 ? "back" : "side " + i);
            }
        }
        return type.cast(root);
    }

    @SuppressWarnings("unchecked")
    private EObject fill(EClass type) {
        EObject object = type.getEPackage().getEFactoryInstance().create(type);
        for (EStructuralFeature feature : type.getEAllStructuralFeatures()) {
            boolean needed = feature.isRequired() || feature instanceof EAttribute attribute && attribute.isID();
            if (!needed && random.nextInt(4) == 0) {
                continue;
            }
            if (feature.isMany()) {
                List<Object> list = (List<Object>) object.eGet(feature);
                for (int i = random.nextInt(4); i > 0; i--) {
                    list.add(value(feature));
                }
            } else {
                object.eSet(feature, value(feature));
            }
        }
        return object;
    }

    private Object value(EStructuralFeature feature) {
        if (feature instanceof EReference reference) {
            List<EClass> concrete = new ArrayList<>();
            for (EClassifier each : reference.getEReferenceType().getEPackage().getEClassifiers()) {
                if (each instanceof EClass known && !known.isAbstract()
                        && known != DesignPackage.Literals.UNKNOWN_MARK
                        && reference.getEReferenceType().isSuperTypeOf(known)) {
                    concrete.add(known);
                }
            }
            return fill(concrete.get(random.nextInt(concrete.size())));
        }
        EAttribute attribute = (EAttribute) feature;
        if (attribute.isID()) {
            return "id-" + next++;
        }
        EDataType type = attribute.getEAttributeType();
        if (type instanceof EEnum words) {
            return words.getELiterals().get(random.nextInt(words.getELiterals().size())).getInstance();
        }
        return switch (type.getInstanceClass().getSimpleName()) {
            case "String" -> text(attribute);
            case "double" -> number(attribute);
            case "int" -> random.nextInt(5000);
            case "boolean" -> random.nextBoolean();
            case "LocalDate" -> LocalDate.of(2020, 1, 1).plusDays(random.nextInt(9000));
            case "Instant" -> Instant.ofEpochSecond(random.nextInt(), random.nextInt(1_000_000_000));
            case "LabColour" -> new LabColour(random.nextInt(101), random.nextGaussian() * 40, -random.nextInt(100));
            default -> throw new IllegalStateException("No random value for " + type.getName());
        };
    }

    private String text(EAttribute attribute) {
        return switch (attribute.getName()) {
            case "sha256", "made" -> Hashes.sha256(new byte[] {(byte) next++});
            case "ground", "colour" -> String.format("#%06x", random.nextInt(0x1000000));
            default -> TEXTS[random.nextInt(TEXTS.length)];
        };
    }

    private double number(EAttribute attribute) {
        double any = switch (random.nextInt(5)) {
            case 0 -> random.nextInt(100);
            case 1 -> random.nextDouble();
            case 2 -> random.nextGaussian() * 30;
            case 3 -> random.nextDouble() * 1e-9;
            default -> -0.0;
        };
        for (double value : new double[] {any, Math.abs(any) + 1e-3, 0.5}) {
            try {
                ValueRules.check(attribute, value);
                return value;
            } catch (ValueRules.BadValue e) {
                continue;
            }
        }
        throw new IllegalStateException("No number for " + attribute.getName());
    }
}
