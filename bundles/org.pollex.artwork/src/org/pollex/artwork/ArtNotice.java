/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork;

/**
 * Something of the file that is not in the art as the file means it.
 *
 * @param kind     what happened
 * @param feature  name of the feature in the file's own words, such as {@code filter} or {@code mix-blend-mode}
 * @param element  id or path of the element
 * @param message  one sentence for people: what, where, what to do
 */
public record ArtNotice(Kind kind, String feature, String element, String message) {

    /** What happened to the feature. */
    public enum Kind {
        /** Not painted, or painted differently from what the file means. */
        UNSUPPORTED,
        /** Another font stands in for the one asked for. */
        FONT_REPLACED,
        /** Left out for safety, such as a script or a reference to another file. */
        REFUSED,
        /** Has no meaning on a printed item and was left out, such as an animation. */
        IGNORED
    }
}
