/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.DoublePredicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.pollex.model.catalogue.CataloguePackage;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignPackage;
import org.pollex.model.design.Side;
import org.pollex.model.design.UnknownMark;
import org.pollex.model.job.JobPackage;

/**
 * Which text an attribute of a model file can take. Types come from the model; what a type cannot say, such as a scale
 * above zero, is in the tables below. Limits of the trade are no matter of files: they live in catalogues.
 */
final class ValueRules {

    /** A value that cannot be. The message completes the sentence "it must be ...". */
    static final class BadValue extends Exception {

        private static final long serialVersionUID = 1L;

        BadValue(String wanted) {
            super(wanted);
        }
    }

    private record Range(DoublePredicate holds, String wanted) {
    }

    private record Shape(Pattern pattern, String wanted) {
    }

    private static final Pattern DECIMAL = Pattern.compile("[+-]?(\\d++(\\.\\d*+)?|\\.\\d++)([eE][+-]?\\d{1,3})?");
    /** Longest text of a value other than a string; keeps parsers from working through millions of digits. */
    private static final int VALUE_MAX = 200;
    private static final Range POSITIVE = new Range(value -> value > 0, "a number above 0");
    private static final Range NOT_NEGATIVE = new Range(value -> value >= 0, "a number not below 0");
    private static final Range SHARE = new Range(value -> value >= 0 && value <= 1, "a number from 0 to 1");
    private static final Range LIGHTNESS = new Range(value -> value >= 0 && value <= 100,
            "a lightness L* from 0 to 100");
    private static final Map<EAttribute, Range> RANGES = ranges();
    private static final Map<EAttribute, Shape> SHAPES = shapes();

    private ValueRules() {
    }

    private static Map<EAttribute, Range> ranges() {
        Map<EAttribute, Range> all = new LinkedHashMap<>();
        DesignPackage design = DesignPackage.eINSTANCE;
        CataloguePackage catalogue = CataloguePackage.eINSTANCE;
        JobPackage job = JobPackage.eINSTANCE;
        all.put(design.getMark_Scale(), POSITIVE);
        all.put(design.getRetoning_Scale(), POSITIVE);
        all.put(design.getTextLine_Size(), POSITIVE);
        all.put(design.getPlainShape_Width(), POSITIVE);
        all.put(design.getPlainShape_Height(), POSITIVE);
        all.put(design.getPlainShape_LineWidth(), NOT_NEGATIVE);
        all.put(catalogue.getProduct_Thickness(), NOT_NEGATIVE);
        all.put(catalogue.getProduct_Register(), NOT_NEGATIVE);
        all.put(catalogue.getZone_Inset(), NOT_NEGATIVE);
        all.put(catalogue.getZone_Level(), SHARE);
        all.put(catalogue.getZone_Strength(), SHARE);
        all.put(catalogue.getMaterial_Translucency(), SHARE);
        all.put(catalogue.getMaterial_WearFactor(), POSITIVE);
        all.put(catalogue.getTexture_Scale(), POSITIVE);
        all.put(catalogue.getTexture_Amount(), NOT_NEGATIVE);
        all.put(catalogue.getPhotoArea_X(), NOT_NEGATIVE);
        all.put(catalogue.getPhotoArea_Y(), NOT_NEGATIVE);
        all.put(catalogue.getPhotoArea_Width(), NOT_NEGATIVE);
        all.put(catalogue.getPhotoArea_Height(), NOT_NEGATIVE);
        all.put(catalogue.getGreyPatch_Lightness(), LIGHTNESS);
        all.put(catalogue.getInk_Film(), NOT_NEGATIVE);
        for (EAttribute limit : catalogue.getMethod().getEAttributes()) {
            if (Number.class.isAssignableFrom(boxed(limit.getEAttributeType()))) {
                all.put(limit, NOT_NEGATIVE);
            }
        }
        all.put(job.getJob_Quantity(), NOT_NEGATIVE);
        all.put(job.getJobDesign_Quantity(), NOT_NEGATIVE);
        return Map.copyOf(all);
    }

    private static Map<EAttribute, Shape> shapes() {
        Map<EAttribute, Shape> all = new LinkedHashMap<>();
        DesignPackage design = DesignPackage.eINSTANCE;
        Shape hash = new Shape(Pattern.compile("[0-9a-f]{64}"), "64 digits 0-9 a-f");
        all.put(design.getPlacement_Sha256(), hash);
        all.put(design.getRetoning_Sha256(), hash);
        all.put(design.getRetoning_Made(), hash);
        all.put(JobPackage.eINSTANCE.getSnapshot_Sha256(), hash);
        all.put(design.getPlacement_Ground(),
                new Shape(Pattern.compile("none|#[0-9a-fA-F]{6}"), "a colour such as #ffffff, or none"));
        all.put(design.getAssignment_Colour(),
                new Shape(Pattern.compile("#[0-9a-fA-F]{6}"), "a colour such as #1a2b3c"));
        return Map.copyOf(all);
    }

    /** Reads a value. */
    static Object parse(EAttribute attribute, String text) throws BadValue {
        EDataType type = attribute.getEAttributeType();
        Class<?> javaType = boxed(type);
        if (javaType != String.class && text.length() > VALUE_MAX
                || javaType == Double.class && !DECIMAL.matcher(text).matches()) {
            throw new BadValue(wanted(attribute));
        }
        Object value;
        try {
            value = type.getEPackage().getEFactoryInstance().createFromString(type, text);
        } catch (RuntimeException e) {
            throw new BadValue(wanted(attribute));
        }
        check(attribute, value);
        return value;
    }

    /** Refuses a value, of the right Java type or null, that a file cannot hold or the attribute cannot take. */
    static void check(EAttribute attribute, Object value) throws BadValue {
        if (value instanceof String text) {
            Shape shape = SHAPES.get(attribute);
            if (shape != null && !shape.pattern().matcher(text).matches()) {
                throw new BadValue(shape.wanted());
            }
            if (!text.codePoints().allMatch(ValueRules::isXml)) {
                throw new BadValue("text without control characters");
            }
        } else if (value instanceof Number number) {
            Range range = RANGES.get(attribute);
            double plain = number.doubleValue();
            if (!Double.isFinite(plain) || range != null && !range.holds().test(plain)) {
                throw new BadValue(wanted(attribute));
            }
        }
    }

    /** What is wrong with an object as a whole, to follow its name in a sentence; empty when nothing is. */
    static String complaint(EObject object) {
        if (object instanceof Design design) {
            Set<String> names = new HashSet<>();
            for (Side side : design.getSides()) {
                if (side.getName() == null || side.getName().isEmpty()) {
                    return "has a side without a name; call it front or back";
                }
                if (!names.add(side.getName())) {
                    return "has two sides named " + Quoted.of(side.getName()) + "; rename or remove one";
                }
            }
        }
        if (object instanceof UnknownMark mark && !UnknownMarks.whole(mark)) {
            return "has a mark of no kind; only one that was read from a file can be kept";
        }
        return "";
    }

    private static String wanted(EAttribute attribute) {
        Range range = RANGES.get(attribute);
        EDataType type = attribute.getEAttributeType();
        if (range != null) {
            return range.wanted();
        }
        if (type instanceof EEnum words) {
            return words.getELiterals().stream().map(literal -> literal.getLiteral())
                    .collect(Collectors.joining(", ", "one of ", ""));
        }
        return switch (boxed(type).getSimpleName()) {
            case "Double" -> "a number such as 1.5";
            case "Integer" -> "a whole number";
            case "Boolean" -> "true or false";
            case "LocalDate" -> "a date such as 2026-05-31";
            case "Instant" -> "a moment such as 2026-05-31T09:30:00Z";
            case "LabColour" -> "three numbers L* a* b* such as 54.3 80.8 69.9, L* from 0 to 100";
            default -> "a value of type " + type.getName();
        };
    }

    private static Class<?> boxed(EDataType type) {
        Class<?> plain = type.getInstanceClass();
        return plain == double.class ? Double.class : plain == int.class ? Integer.class
                : plain == boolean.class ? Boolean.class : plain;
    }

    /** The Char production of XML 1.0. */
    private static boolean isXml(int c) {
        return c == 0x9 || c == 0xA || c == 0xD || c >= 0x20 && c <= 0xD7FF || c >= 0xE000 && c <= 0xFFFD
                || c >= 0x10000;
    }
}
