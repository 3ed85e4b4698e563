/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.tree;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.jface.resource.ResourceLocator;
import org.eclipse.jface.viewers.DecorationOverlayIcon;
import org.eclipse.jface.viewers.IDecoration;
import org.eclipse.jface.viewers.ITableLabelProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.swt.graphics.Image;

/** Names, their state in words beside them, icons with their badge at the lower right. */
final class JobLabels extends LabelProvider implements ITableLabelProvider {

    private final LocalResourceManager images = new LocalResourceManager(JFaceResources.getResources());
    private final Map<String, ImageDescriptor> icons = new HashMap<>();

    @Override
    public String getColumnText(Object element, int column) {
        return element instanceof JobItem item ? column == 0 ? item.name() : item.detail() : String.valueOf(element);
    }

    @Override
    public Image getColumnImage(Object element, int column) {
        if (column != 0 || !(element instanceof JobItem item)) {
            return null;
        }
        ImageDescriptor base = icon(switch (item.kind()) {
            case JOB -> "job";
            case DESIGN -> "design";
            case ART -> "art";
            case OUTPUTS -> "outputs";
            case REVISIONS, REVISION -> "revision";
            case FILE -> "file";
        });
        return images.get(item.badge() == Badge.NONE ? base
                : new DecorationOverlayIcon(base, icon("on-" + item.badge().icon()), IDecoration.BOTTOM_RIGHT));
    }

    private ImageDescriptor icon(String name) {
        return icons.computeIfAbsent(name, each -> {
            Optional<ImageDescriptor> found = ResourceLocator.imageDescriptorFromBundle("org.pollex.ui.jobs",
                    "icons/" + each + ".svg");
            return found.orElseGet(ImageDescriptor::getMissingImageDescriptor);
        });
    }

    @Override
    public void dispose() {
        images.dispose();
        super.dispose();
    }
}
