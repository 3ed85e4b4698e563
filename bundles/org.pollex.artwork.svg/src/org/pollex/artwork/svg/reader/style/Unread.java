/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.style;

import org.pollex.artwork.svg.reader.report.Notices;
import org.pollex.artwork.svg.reader.tree.Node;

/** Names the properties that would change the picture and are not read. */
final class Unread {

    private Unread() {
    }

    static void report(String name, String value, Node node, Notices notices) {
        String word = value.strip();
        switch (name) {
            case "rotate", "translate", "scale", "offset-path", "mask-image", "mask-border", "-webkit-mask",
                    "-webkit-mask-image", "backdrop-filter", "perspective", "shape-inside", "inline-size", "clip" -> {
                if (!word.equals("none") && !word.equals("auto")) {
                    notices.unsupported(name, node.label(), "the property " + name
                            + " is not read; write it into the shapes themselves and export the art again");
                }
            }
            case "animation", "animation-name", "transition" -> {
                if (!word.equals("none")) {
                    notices.ignored("animation", node.label(),
                            "an animation has no meaning in print and is left out");
                }
            }
            default -> {
            }
        }
    }
}
