/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.page;

import java.util.Locale;
import java.util.Optional;

/**
 * Size of a page, upright.
 *
 * @param name    such as A4
 * @param width   mm
 * @param height  mm
 */
public record PageSize(String name, double width, double height) {

    /** ISO 216 A4. */
    public static final PageSize A4 = new PageSize("A4", 210, 297);

    /** ISO 216 A3. */
    public static final PageSize A3 = new PageSize("A3", 297, 420);

    /** 8.5 x 11 inches. */
    public static final PageSize LETTER = new PageSize("letter", 215.9, 279.4);

    /** The size of that name, in any case. */
    public static Optional<PageSize> named(String name) {
        return switch (name.toLowerCase(Locale.ROOT)) {
            case "a4" -> Optional.of(A4);
            case "a3" -> Optional.of(A3);
            case "letter" -> Optional.of(LETTER);
            default -> Optional.empty();
        };
    }
}
