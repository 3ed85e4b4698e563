/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.job;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Use</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * How the items will be used.
 * <!-- end-model-doc -->
 * @see org.pollex.model.job.JobPackage#getUse()
 * @generated
 */
public enum Use implements Enumerator {
    /**
     * The '<em><b>GIVEAWAY</b></em>' literal object.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #GIVEAWAY_VALUE
     * @generated
     * @ordered
     */
    GIVEAWAY(0, "GIVEAWAY", "giveaway"),

    /**
     * The '<em><b>PRACTICE</b></em>' literal object.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #PRACTICE_VALUE
     * @generated
     * @ordered
     */
    PRACTICE(1, "PRACTICE", "practice"),

    /**
     * The '<em><b>STAGE</b></em>' literal object.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #STAGE_VALUE
     * @generated
     * @ordered
     */
    STAGE(2, "STAGE", "stage"),

    /**
     * The '<em><b>DISPLAY</b></em>' literal object.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #DISPLAY_VALUE
     * @generated
     * @ordered
     */
    DISPLAY(3, "DISPLAY", "display");

    /**
     * The '<em><b>GIVEAWAY</b></em>' literal value.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #GIVEAWAY
     * @generated
     * @ordered
     */
    public static final int GIVEAWAY_VALUE = 0;

    /**
     * The '<em><b>PRACTICE</b></em>' literal value.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #PRACTICE
     * @generated
     * @ordered
     */
    public static final int PRACTICE_VALUE = 1;

    /**
     * The '<em><b>STAGE</b></em>' literal value.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #STAGE
     * @generated
     * @ordered
     */
    public static final int STAGE_VALUE = 2;

    /**
     * The '<em><b>DISPLAY</b></em>' literal value.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see #DISPLAY
     * @generated
     * @ordered
     */
    public static final int DISPLAY_VALUE = 3;

    /**
     * An array of all the '<em><b>Use</b></em>' enumerators.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    private static final Use[] VALUES_ARRAY =
        new Use[] {
            GIVEAWAY,
            PRACTICE,
            STAGE,
            DISPLAY,
        };

    /**
     * A public read-only list of all the '<em><b>Use</b></em>' enumerators.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    public static final List<Use> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

    /**
     * Returns the '<em><b>Use</b></em>' literal with the specified literal value.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param literal the literal.
     * @return the matching enumerator or <code>null</code>.
     * @generated
     */
    public static Use get(String literal) {
        for (int i = 0; i < VALUES_ARRAY.length; ++i) {
            Use result = VALUES_ARRAY[i];
            if (result.toString().equals(literal)) {
                return result;
            }
        }
        return null;
    }

    /**
     * Returns the '<em><b>Use</b></em>' literal with the specified name.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param name the name.
     * @return the matching enumerator or <code>null</code>.
     * @generated
     */
    public static Use getByName(String name) {
        for (int i = 0; i < VALUES_ARRAY.length; ++i) {
            Use result = VALUES_ARRAY[i];
            if (result.getName().equals(name)) {
                return result;
            }
        }
        return null;
    }

    /**
     * Returns the '<em><b>Use</b></em>' literal with the specified integer value.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param value the integer value.
     * @return the matching enumerator or <code>null</code>.
     * @generated
     */
    public static Use get(int value) {
        switch (value) {
            case GIVEAWAY_VALUE: return GIVEAWAY;
            case PRACTICE_VALUE: return PRACTICE;
            case STAGE_VALUE: return STAGE;
            case DISPLAY_VALUE: return DISPLAY;
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
    private Use(int value, String name, String literal) {
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
    
} //Use
