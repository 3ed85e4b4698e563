/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.page;

import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.ide.IGotoMarker;
import org.eclipse.ui.views.contentoutline.IContentOutlinePage;
import org.eclipse.ui.views.properties.IPropertySheetPage;
import org.pollex.editor.guide.Guides;
import org.pollex.editor.outline.LayersPage;
import org.pollex.editor.property.PropertyPage;
import org.pollex.editor.session.Notices;
import org.pollex.editor.work.Session;
import org.pollex.markers.FindingMarkers;
import org.pollex.rules.Finding;

/**
 * What the editor hands to views of the platform: properties of what is selected, the outline of its layers,
 * its guides, the sentences over it, and the way to a marker's place.
 */
final class Handed {

    private Handed() {
    }

    /** Whether a view asks for one of these. */
    static boolean is(Class<?> type) {
        return type == IPropertySheetPage.class || type == IContentOutlinePage.class || type == IGotoMarker.class
                || type == Guides.class || type == Notices.class;
    }

    /** The thing asked for; null when there is none now. */
    static Object of(Class<?> type, IEditorPart editor, Session session, SideTabs tabs, Notices bar) {
        if (type == Notices.class) {
            return bar;
        }
        if (type == IPropertySheetPage.class) {
            return new PropertyPage(session, tabs);
        }
        if (type == IContentOutlinePage.class) {
            return new LayersPage(editor);
        }
        if (type == Guides.class) {
            return tabs.page() == null ? null : tabs.page().guideDrag().guides();
        }
        IGotoMarker there = marker -> {
            Finding finding = FindingMarkers.of(marker);
            if (!finding.where().isEmpty()) {
                tabs.reveal(finding.side(), finding.where().getEnvelopeInternal());
            }
        };
        return there;
    }
}
