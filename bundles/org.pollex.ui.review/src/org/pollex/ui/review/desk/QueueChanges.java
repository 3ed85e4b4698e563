/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.desk;

import java.util.Set;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.IResourceDelta;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.pollex.markers.FindingMarkers;

/** Which changes of the workspace matter to the list of what is to be reviewed. */
final class QueueChanges {

    /** A design without findings has no marker, and waits for review all the same. */
    private static final Set<String> ENDINGS = Set.of("design", "job");

    private QueueChanges() {
    }

    /** Whether findings, designs or jobs came, went or changed. */
    static boolean in(IResourceChangeEvent event) {
        boolean[] found = {event.findMarkerDeltas(FindingMarkers.TYPE, true).length > 0};
        if (!found[0] && event.getDelta() != null) {
            try {
                event.getDelta().accept(delta -> {
                    found[0] |= matters(delta);
                    return !found[0];
                });
            } catch (CoreException e) {
                ILog.of(QueueChanges.class).warn("What changed could not be looked through", e);
            }
        }
        return found[0];
    }

    private static boolean matters(IResourceDelta delta) {
        return delta.getResource() instanceof IFile file && file.getFileExtension() != null
                && ENDINGS.contains(file.getFileExtension()) && (delta.getKind() != IResourceDelta.CHANGED
                        || (delta.getFlags() & IResourceDelta.CONTENT) != 0);
    }
}
