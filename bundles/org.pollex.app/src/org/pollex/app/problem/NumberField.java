/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.app.problem;

import java.util.Locale;
import java.util.OptionalDouble;
import org.eclipse.ui.views.markers.MarkerItem;
import org.pollex.markers.FindingValues;

/** A column that shows a number with its unit and sorts by its size; markers without one come first. */
public final class NumberField extends WordField {

    private OptionalDouble number(MarkerItem item) {
        String text = text(item);
        try {
            return text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
        } catch (NumberFormatException e) {
            // a marker of somebody else with an attribute of this name
            return OptionalDouble.empty();
        }
    }

    @Override
    public String getValue(MarkerItem item) {
        OptionalDouble number = number(item);
        if (number.isEmpty()) {
            return text(item);
        }
        String unit = item.getAttributeValue(FindingValues.UNIT, "").replace("mm2", "mm\u00b2");
        return String.format(Locale.ROOT, "%.2f %s", number.getAsDouble(), unit).strip();
    }

    @Override
    public int compare(MarkerItem one, MarkerItem other) {
        return Double.compare(number(one).orElse(Double.NEGATIVE_INFINITY),
                number(other).orElse(Double.NEGATIVE_INFINITY));
    }
}
