/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.IEclipsePreferences.IPreferenceChangeListener;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import org.osgi.service.prefs.BackingStoreException;

/**
 * How many pixels of the screen on which a control is shown make a millimetre: what the user measured there with a
 * card, else what the system says. A screen is told from another by its place and size.
 */
public final class ScreenScale {

    private static final String KEY = "pixelsPerMm";
    private static final double MM_PER_INCH = 25.4;

    private ScreenScale() {
    }

    /** Pixels a millimetre. */
    public static double pixelsPerMm(Control control) {
        double kept = node().getDouble(key(control), 0);
        return kept > 0 ? kept : control.getDisplay().getDPI().x / MM_PER_INCH;
    }

    /** Whether the user measured this screen. */
    public static boolean measured(Control control) {
        return node().getDouble(key(control), 0) > 0;
    }

    /** Keeps what the user measured. */
    public static void set(Control control, double pixelsPerMm) {
        if (!(pixelsPerMm > 0.5 && pixelsPerMm < 100)) {
            throw new IllegalArgumentException("No screen has " + pixelsPerMm + " pixels a millimetre.");
        }
        node().putDouble(key(control), pixelsPerMm);
        try {
            node().flush();
        } catch (BackingStoreException e) {
            ILog.of(ScreenScale.class).warn("The screen's scale could not be kept", e);
        }
    }

    /** Runs something in the window's thread whenever a screen was measured, as long as a control lives. */
    public static void follow(Control control, Runnable changed) {
        IPreferenceChangeListener listener = event -> {
            if (event.getKey().startsWith(KEY) && !control.isDisposed()) {
                control.getDisplay().asyncExec(() -> {
                    if (!control.isDisposed()) {
                        changed.run();
                    }
                });
            }
        };
        node().addPreferenceChangeListener(listener);
        control.addDisposeListener(event -> node().removePreferenceChangeListener(listener));
    }

    private static IEclipsePreferences node() {
        return InstanceScope.INSTANCE.getNode(Person.NODE);
    }

    private static String key(Control control) {
        Rectangle bounds = control.getMonitor().getBounds();
        return KEY + "." + bounds.x + "." + bounds.y + "." + bounds.width + "x" + bounds.height;
    }
}
