/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.sample;

import java.util.List;
import java.util.Optional;
import org.pollex.making.design.Order;

/** The designs of the sample job. */
public final class SampleDesigns {

    /**
     * One design.
     *
     * @param name      of its file, without ending
     * @param title     its name for people
     * @param shows     what it is there to show, the end of a sentence
     * @param quantity  pieces
     * @param product   id
     * @param material  id
     * @param method    id
     * @param inks      ids; none leaves the choice to the suite
     * @param front     art of the front, a name in the art folder
     * @param back      art of the back
     * @param largest   whether it is placed as large as it goes
     * @param down      how far it is then moved by hand towards the tip, mm
     */
    public record Sample(String name, String title, String shows, int quantity, String product, String material,
            String method, List<String> inks, String front, Optional<String> back, boolean largest, double down) {

        /** The order for it, with art in that folder. */
        Order order(String artFolder) {
            return new Order(product, material, method, inks, Optional.of(artFolder + "/" + front),
                    back.map(name -> artFolder + "/" + name), largest, true);
        }

        /** The words that make it by hand. */
        public String words(String folder) {
            StringBuilder words = new StringBuilder("new ").append(folder).append('/').append(name)
                    .append(".design --product ").append(product).append(" --material ").append(material)
                    .append(" --method ").append(method);
            inks.forEach(ink -> words.append(" --ink ").append(ink));
            words.append(" --front ").append(folder).append("/art/").append(front);
            back.ifPresent(art -> words.append(" --back ").append(folder).append("/art/").append(art));
            return words.append(largest ? " --largest" : "").append(" --force").toString();
        }
    }

    /** All of them. */
    public static final List<Sample> ALL = List.of(
            new Sample("skerry-light", "Skerry Light", "a bold mark in one ink that prints as it is", 500,
                    "standard-pick", "solid-cream", "pad-one-colour", List.of("navy"), "lighthouse.svg",
                    Optional.empty(), true, 0),
            new Sample("evening-crossing", "Evening crossing",
                    "rigging too thin to print, and an anchor where the tip wears", 250, "standard-pick",
                    "solid-yellow", "pad-one-colour", List.of("navy"), "ferry.svg", Optional.empty(), false, 2.6),
            new Sample("deck-hands", "Deck hands",
                    "a badge in several inks with lettering, and the lighthouse on its back", 100,
                    "wide-triangle-pick", "solid-white", "pad-spot", List.of(), "badge.svg",
                    Optional.of("lighthouse.svg"), true, 0));

    /** The art they are made from. */
    static final List<String> ART = List.of("lighthouse.svg", "ferry.svg", "badge.svg");

    private SampleDesigns() {
    }
}
