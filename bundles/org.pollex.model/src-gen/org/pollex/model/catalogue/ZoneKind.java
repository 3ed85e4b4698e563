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
 * A representation of the literals of the enumeration '<em><b>Zone Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see org.pollex.model.catalogue.CataloguePackage#getZoneKind()
 * @generated
 */
public enum ZoneKind implements Enumerator {
    /**
     * The '<em><b>SAFE</b></em>' literal object.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #SAFE_VALUE
     * @generated
     * @ordered
     */
    SAFE(0, "SAFE", "safe"),

    /**
     * The '<em><b>WEAR RISK</b></em>' literal object.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #WEAR_RISK_VALUE
     * @generated
     * @ordered
     */
    WEAR_RISK(1, "WEAR_RISK", "wear-risk"),

    /**
     * The '<em><b>UNPRINTABLE</b></em>' literal object.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #UNPRINTABLE_VALUE
     * @generated
     * @ordered
     */
    UNPRINTABLE(2, "UNPRINTABLE", "unprintable");

    /**
     * The '<em><b>SAFE</b></em>' literal value.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #SAFE
     * @generated
     * @ordered
     */
    public static final int SAFE_VALUE = 0;

    /**
     * The '<em><b>WEAR RISK</b></em>' literal value.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #WEAR_RISK
     * @generated
     * @ordered
     */
    public static final int WEAR_RISK_VALUE = 1;

    /**
     * The '<em><b>UNPRINTABLE</b></em>' literal value.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #UNPRINTABLE
     * @generated
     * @ordered
     */
    public static final int UNPRINTABLE_VALUE = 2;

    /**
     * An array of all the '<em><b>Zone Kind</b></em>' enumerators.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    private static final ZoneKind[] VALUES_ARRAY =
        new ZoneKind[] {
            SAFE,
            WEAR_RISK,
            UNPRINTABLE,
        };

    /**
     * A public read-only list of all the '<em><b>Zone Kind</b></em>' enumerators.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    public static final List<ZoneKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

    /**
     * Returns the '<em><b>Zone Kind</b></em>' literal with the specified literal value.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param literal the literal.
     * @return the matching enumerator or <code>null</code>.
     * @generated
     */
    public static ZoneKind get(String literal) {
        for (int i = 0; i < VALUES_ARRAY.length; ++i) {
            ZoneKind result = VALUES_ARRAY[i];
            if (result.toString().equals(literal)) {
                return result;
            }
        }
        return null;
    }

    /**
     * Returns the '<em><b>Zone Kind</b></em>' literal with the specified name.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param name the name.
     * @return the matching enumerator or <code>null</code>.
     * @generated
     */
    public static ZoneKind getByName(String name) {
        for (int i = 0; i < VALUES_ARRAY.length; ++i) {
            ZoneKind result = VALUES_ARRAY[i];
            if (result.getName().equals(name)) {
                return result;
            }
        }
        return null;
    }

    /**
     * Returns the '<em><b>Zone Kind</b></em>' literal with the specified integer value.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the integer value.
     * @return the matching enumerator or <code>null</code>.
     * @generated
     */
    public static ZoneKind get(int value) {
        switch (value) {
            case SAFE_VALUE: return SAFE;
            case WEAR_RISK_VALUE: return WEAR_RISK;
            case UNPRINTABLE_VALUE: return UNPRINTABLE;
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
    private ZoneKind(int value, String name, String literal) {
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
    
} //ZoneKind
