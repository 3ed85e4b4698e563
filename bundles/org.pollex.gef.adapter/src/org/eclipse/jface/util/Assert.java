/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.eclipse.jface.util;

/**
 * The checks that GEF calls under their former name: is a condition true, is an object there?
 *
 * <p>The platform moved this class to {@link org.eclipse.core.runtime.Assert} and has since dropped the old name; GEF
 * from Maven Central was compiled against the old one. Every method forwards and fails exactly as the new class does.
 * Nothing of Pollex may call it.
 */
public final class Assert {

    private Assert() {
    }

    /** Fails with an IllegalArgumentException unless the argument is legal; returns true otherwise. */
    public static boolean isLegal(boolean legal) {
        return org.eclipse.core.runtime.Assert.isLegal(legal);
    }

    /** As {@link #isLegal(boolean)}, with a message for the failure. */
    public static boolean isLegal(boolean legal, String message) {
        return org.eclipse.core.runtime.Assert.isLegal(legal, message);
    }

    /** Fails with an AssertionFailedException when the object is null. */
    public static void isNotNull(Object object) {
        org.eclipse.core.runtime.Assert.isNotNull(object);
    }

    /** As {@link #isNotNull(Object)}, with a message for the failure. */
    public static void isNotNull(Object object, String message) {
        org.eclipse.core.runtime.Assert.isNotNull(object, message);
    }

    /** Fails with an AssertionFailedException unless the condition holds; returns true otherwise. */
    public static boolean isTrue(boolean condition) {
        return org.eclipse.core.runtime.Assert.isTrue(condition);
    }

    /** As {@link #isTrue(boolean)}, with a message for the failure. */
    public static boolean isTrue(boolean condition, String message) {
        return org.eclipse.core.runtime.Assert.isTrue(condition, message);
    }
}
