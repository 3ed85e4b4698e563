/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.catalogue;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Texture Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see org.pollex.model.catalogue.CataloguePackage#getTextureKind()
 * @generated
 */
public enum TextureKind implements Enumerator {
    /**
     * The '<em><b>FLAT</b></em>' literal object.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #FLAT_VALUE
     * @generated
     * @ordered
     */
    FLAT(0, "FLAT", "flat"),

    /**
     * The '<em><b>FLECKED</b></em>' literal object.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #FLECKED_VALUE
     * @generated
     * @ordered
     */
    FLECKED(1, "FLECKED", "flecked"),

    /**
     * The '<em><b>MOTTLED</b></em>' literal object.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #MOTTLED_VALUE
     * @generated
     * @ordered
     */
    MOTTLED(2, "MOTTLED", "mottled"),

    /**
     * The '<em><b>CAMOUFLAGE</b></em>' literal object.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #CAMOUFLAGE_VALUE
     * @generated
     * @ordered
     */
    CAMOUFLAGE(3, "CAMOUFLAGE", "camouflage"),

    /**
     * The '<em><b>TORTOISE</b></em>' literal object.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #TORTOISE_VALUE
     * @generated
     * @ordered
     */
    TORTOISE(4, "TORTOISE", "tortoise"),

    /**
     * The '<em><b>PEARL</b></em>' literal object.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #PEARL_VALUE
     * @generated
     * @ordered
     */
    PEARL(5, "PEARL", "pearl"),

    /**
     * The '<em><b>BRUSHED</b></em>' literal object.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #BRUSHED_VALUE
     * @generated
     * @ordered
     */
    BRUSHED(6, "BRUSHED", "brushed"),

    /**
     * The '<em><b>SWATCH</b></em>' literal object.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #SWATCH_VALUE
     * @generated
     * @ordered
     */
    SWATCH(7, "SWATCH", "swatch");

    /**
     * The '<em><b>FLAT</b></em>' literal value.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #FLAT
     * @generated
     * @ordered
     */
    public static final int FLAT_VALUE = 0;

    /**
     * The '<em><b>FLECKED</b></em>' literal value.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #FLECKED
     * @generated
     * @ordered
     */
    public static final int FLECKED_VALUE = 1;

    /**
     * The '<em><b>MOTTLED</b></em>' literal value.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #MOTTLED
     * @generated
     * @ordered
     */
    public static final int MOTTLED_VALUE = 2;

    /**
     * The '<em><b>CAMOUFLAGE</b></em>' literal value.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #CAMOUFLAGE
     * @generated
     * @ordered
     */
    public static final int CAMOUFLAGE_VALUE = 3;

    /**
     * The '<em><b>TORTOISE</b></em>' literal value.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #TORTOISE
     * @generated
     * @ordered
     */
    public static final int TORTOISE_VALUE = 4;

    /**
     * The '<em><b>PEARL</b></em>' literal value.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #PEARL
     * @generated
     * @ordered
     */
    public static final int PEARL_VALUE = 5;

    /**
     * The '<em><b>BRUSHED</b></em>' literal value.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #BRUSHED
     * @generated
     * @ordered
     */
    public static final int BRUSHED_VALUE = 6;

    /**
     * The '<em><b>SWATCH</b></em>' literal value.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #SWATCH
     * @generated
     * @ordered
     */
    public static final int SWATCH_VALUE = 7;

    /**
     * An array of all the '<em><b>Texture Kind</b></em>' enumerators.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    private static final TextureKind[] VALUES_ARRAY =
        new TextureKind[] {
            FLAT,
            FLECKED,
            MOTTLED,
            CAMOUFLAGE,
            TORTOISE,
            PEARL,
            BRUSHED,
            SWATCH,
        };

    /**
     * A public read-only list of all the '<em><b>Texture Kind</b></em>' enumerators.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    public static final List<TextureKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

    /**
     * Returns the '<em><b>Texture Kind</b></em>' literal with the specified literal value.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param literal the literal.
     * @return the matching enumerator or <code>null</code>.
     * @generated
     */
    public static TextureKind get(String literal) {
        for (int i = 0; i < VALUES_ARRAY.length; ++i) {
            TextureKind result = VALUES_ARRAY[i];
            if (result.toString().equals(literal)) {
                return result;
            }
        }
        return null;
    }

    /**
     * Returns the '<em><b>Texture Kind</b></em>' literal with the specified name.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param name the name.
     * @return the matching enumerator or <code>null</code>.
     * @generated
     */
    public static TextureKind getByName(String name) {
        for (int i = 0; i < VALUES_ARRAY.length; ++i) {
            TextureKind result = VALUES_ARRAY[i];
            if (result.getName().equals(name)) {
                return result;
            }
        }
        return null;
    }

    /**
     * Returns the '<em><b>Texture Kind</b></em>' literal with the specified integer value.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the integer value.
     * @return the matching enumerator or <code>null</code>.
     * @generated
     */
    public static TextureKind get(int value) {
        switch (value) {
            case FLAT_VALUE: return FLAT;
            case FLECKED_VALUE: return FLECKED;
            case MOTTLED_VALUE: return MOTTLED;
            case CAMOUFLAGE_VALUE: return CAMOUFLAGE;
            case TORTOISE_VALUE: return TORTOISE;
            case PEARL_VALUE: return PEARL;
            case BRUSHED_VALUE: return BRUSHED;
            case SWATCH_VALUE: return SWATCH;
        }
        return null;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    private final int value;

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    private final String name;

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    private final String literal;

    /**
     * Only this class can construct instances.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    private TextureKind(int value, String name, String literal) {
        this.value = value;
        this.name = name;
        this.literal = literal;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public int getValue() {
      return value;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getName() {
      return name;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String getLiteral() {
      return literal;
    }

    /**
     * Returns the literal value of the enumerator, which is its string representation.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String toString() {
        return literal;
    }
    
} //TextureKind
