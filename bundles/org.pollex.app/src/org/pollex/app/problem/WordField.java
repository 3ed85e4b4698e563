/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.app.problem;

import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.views.markers.MarkerField;
import org.eclipse.ui.views.markers.MarkerItem;

/**
 * A column that shows an attribute of a marker as it is; empty for markers without it. The attribute is named in the
 * declaration, behind the class and a colon.
 */
public class WordField extends MarkerField implements IExecutableExtension {

    private static final int LETTERS = 12;

    private String attribute = "";

    @Override
    public void setInitializationData(IConfigurationElement element, String property, Object data) {
        attribute = String.valueOf(data);
    }

    /** The attribute's text for a marker; empty when it has none. */
    protected final String text(MarkerItem item) {
        return item.getAttributeValue(attribute, "");
    }

    @Override
    public String getValue(MarkerItem item) {
        return text(item);
    }

    @Override
    public int getDefaultColumnWidth(Control control) {
        GC gc = new GC(control);
        try {
            return (int) (gc.getFontMetrics().getAverageCharacterWidth() * LETTERS);
        } finally {
            gc.dispose();
        }
    }
}
