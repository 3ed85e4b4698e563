/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import java.math.BigDecimal;
import java.util.List;
import org.pollex.model.store.Migration.Stuck;

/**
 * From format 0, the drafts before formats were counted, to format 1. Files of format 0 have no format attribute, or
 * format="0". They differ in these names and measures; whatever already has its later name is kept:
 * <ul>
 * <li>design: the inks stood in one attribute {@code inks}, blanks between; a placement had {@code file} for
 * {@code art}; a mark had {@code zoom} in percent for the factor {@code scale}, and {@code angle} in degrees
 * counter-clockwise for {@code turn} in degrees clockwise;</li>
 * <li>job: {@code deadline} for {@code due}, {@code usage} for {@code use};</li>
 * <li>catalogue: a material or ink had {@code colour} for {@code lab}, an ink {@code colourOnBlack} for
 * {@code labOverBlack}.</li>
 * </ul>
 */
final class FormatZero {

    private FormatZero() {
    }

    static void design(XmlElement design) throws Stuck {
        String inks = design.attributes().remove("inks");
        if (inks != null && !inks.isBlank()) {
            for (String ink : inks.strip().split("\\s+")) {
                XmlElement element = new XmlElement("", "inks", design.line());
                element.append(ink);
                design.children().add(element);
            }
        }
        for (XmlElement side : design.children("sides")) {
            for (XmlElement layer : side.children("layers")) {
                for (XmlElement mark : layer.children("marks")) {
                    rename(mark, "file", "art");
                    convert(mark, "zoom", "scale", zoom -> zoom.movePointLeft(2));
                    convert(mark, "angle", "turn", BigDecimal::negate);
                }
            }
        }
    }

    static void job(XmlElement job) throws Stuck {
        rename(job, "deadline", "due");
        rename(job, "usage", "use");
    }

    static void catalogue(XmlElement catalogue) throws Stuck {
        for (String list : List.of("materials", "inks")) {
            for (XmlElement entry : catalogue.children(list)) {
                rename(entry, "colour", "lab");
                rename(entry, "colourOnBlack", "labOverBlack");
            }
        }
    }

    private static void rename(XmlElement element, String from, String to) throws Stuck {
        String value = element.attributes().remove(from);
        if (value != null && element.attributes().putIfAbsent(to, value) != null) {
            throw new Stuck(element, "has both " + from + " and " + to + "; remove " + from);
        }
    }

    private interface Measure {
        BigDecimal of(BigDecimal old);
    }

    private static void convert(XmlElement element, String from, String to, Measure measure) throws Stuck {
        String old = element.attributes().get(from);
        if (old != null) {
            // The bound keeps a number such as 1e999999999 from being written out digit by digit.
            if (old.length() > 40 || !old.matches("[+-]?\\d+(\\.\\d+)?")) {
                throw new Stuck(element, "has " + from + "=" + Quoted.of(old) + ", which is no number; correct it");
            }
            BigDecimal value = measure.of(new BigDecimal(old)).stripTrailingZeros();
            element.attributes().put(from, value.signum() == 0 ? "0" : value.toPlainString());
            rename(element, from, to);
        }
    }
}
