/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.paint;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.svg.reader.tree.Node;

/** Gradients and patterns take over from the element that their href names what they do not say themselves. */
final class TakenOver {

    private static final int LONGEST = 32;

    private TakenOver() {
    }

    /**
     * The element and those it takes over from, nearest first.
     *
     * @param kind    which elements may be taken over from
     * @param circle  told when the references go in a circle or on for too long; they are followed no farther
     */
    static List<Node> chain(Reading reading, Node element, Predicate<Node> kind, Runnable circle)
            throws ArtException {
        List<Node> chain = new ArrayList<>();
        Node at = element;
        while (at != null) {
            if (chain.contains(at) || chain.size() >= LONGEST) {
                circle.run();
                break;
            }
            reading.budget().effort(10);
            chain.add(at);
            String href = at.href();
            at = href.isEmpty() ? null : reading.tree().target(href).filter(kind).orElse(null);
        }
        return chain;
    }

    /** The attribute of the nearest element that has it; empty when none has. */
    static String attribute(List<Node> chain, String name) {
        for (Node node : chain) {
            if (node.has(name)) {
                return node.attribute(name).strip();
            }
        }
        return "";
    }
}
