/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.welcome;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.ResourceLocator;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;

/** The page is about nothing in particular, and is not opened again by itself. */
final class WelcomeInput implements IEditorInput {

    @Override
    public boolean exists() {
        return false;
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return ResourceLocator.imageDescriptorFromBundle("org.pollex.ui.jobs", "icons/welcome.svg")
                .orElseGet(ImageDescriptor::getMissingImageDescriptor);
    }

    @Override
    public String getName() {
        return "Welcome";
    }

    @Override
    public IPersistableElement getPersistable() {
        return null;
    }

    @Override
    public String getToolTipText() {
        return "Where to begin";
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return null;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof WelcomeInput;
    }

    @Override
    public int hashCode() {
        return WelcomeInput.class.hashCode();
    }
}
