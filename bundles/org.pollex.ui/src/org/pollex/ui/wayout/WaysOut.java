/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.wayout;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Platform;
import org.eclipse.ui.IWorkbenchPage;

/** The ways out that bundles contribute on the point {@code org.pollex.ui.waysOut}. */
public final class WaysOut {

    private static final String POINT = "org.pollex.ui.waysOut";

    private WaysOut() {
    }

    /** One that is offered; the class that goes it is made when it is taken. */
    public static final class Offer {

        private final IConfigurationElement declared;

        private Offer(IConfigurationElement declared) {
            this.declared = declared;
        }

        /** A few words for a button or a menu. */
        public String label() {
            return words("label");
        }

        /** What it does, in one sentence. */
        public String description() {
            return words("description");
        }

        private String words(String attribute) {
            return Optional.ofNullable(declared.getAttribute(attribute)).orElse("");
        }

        /** Goes the way; one that is broken is logged with its bundle. Called in the window's thread. */
        public void take(IWorkbenchPage page, Path design) {
            try {
                ((WayOut) declared.createExecutableExtension("class")).take(page, design);
            } catch (CoreException | ClassCastException e) {
                ILog.of(WaysOut.class).error("The way out " + label() + " of " + declared.getContributor().getName()
                        + " cannot be taken", e);
            }
        }
    }

    /** What leads out of the findings of a check, in the order of the bundles. */
    public static List<Offer> of(String check) {
        List<Offer> offers = new ArrayList<>();
        for (IConfigurationElement each : Platform.getExtensionRegistry().getConfigurationElementsFor(POINT)) {
            Offer offer = new Offer(each);
            if (check.equals(each.getAttribute("check")) && !offer.label().isEmpty()) {
                offers.add(offer);
            }
        }
        return offers;
    }
}
