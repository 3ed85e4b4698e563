/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.widgets.Display;
import org.osgi.service.prefs.BackingStoreException;

/**
 * How many pixels of this screen make a millimetre: what the user measured with a ruler or a card, else what the system
 * says.
 */
public final class ScreenScale {

    private static final String KEY = "pixelsPerMm";
    private static final double MM_PER_INCH = 25.4;

    private ScreenScale() {
    }

    /** Pixels a millimetre. */
    public static double pixelsPerMm(Display display) {
        double kept = InstanceScope.INSTANCE.getNode(Person.NODE).getDouble(key(display), 0);
        return kept > 0 ? kept : display.getDPI().x / MM_PER_INCH;
    }

    /** Whether the user measured this screen. */
    public static boolean measured(Display display) {
        return InstanceScope.INSTANCE.getNode(Person.NODE).getDouble(key(display), 0) > 0;
    }

    /** Keeps what the user measured. */
    public static void set(Display display, double pixelsPerMm) {
        if (!(pixelsPerMm > 0.5 && pixelsPerMm < 100)) {
            throw new IllegalArgumentException("No screen has " + pixelsPerMm + " pixels a millimetre.");
        }
        InstanceScope.INSTANCE.getNode(Person.NODE).putDouble(key(display), pixelsPerMm);
        try {
            InstanceScope.INSTANCE.getNode(Person.NODE).flush();
        } catch (BackingStoreException e) {
            org.eclipse.core.runtime.ILog.of(ScreenScale.class).warn("The screen's scale could not be kept", e);
        }
    }

    private static String key(Display display) {
        org.eclipse.swt.graphics.Rectangle size = display.getPrimaryMonitor().getBounds();
        return KEY + "." + size.width + "x" + size.height;
    }
}
