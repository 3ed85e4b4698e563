/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.gate;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtNotice;
import org.pollex.artwork.ArtNotice.Kind;

/** Collects what the gate took out and words its refusals. Equal notices are kept once, at most 200 in all. */
public final class GateReport {

    private static final int MOST = 200;
    private static final int LONGEST = 60;

    private final String file;
    private final Set<ArtNotice> notices = new LinkedHashSet<>();

    /** @param file  name of the file in messages */
    public GateReport(String file) {
        this.file = file;
    }

    /** Adds a notice about an element; {@code what} continues a sentence that begins with the element. */
    public void note(Kind kind, String feature, SvgNode node, String what) {
        note(kind, feature, node.where(), what);
    }

    /** Adds a notice about a place in the file. */
    public void note(Kind kind, String feature, String element, String what) {
        if (notices.size() < MOST) {
            notices.add(new ArtNotice(kind, cut(feature), element, element + ": " + what + "."));
        }
    }

    /** A refusal of the whole file, to be thrown. */
    public ArtException refusal(String reason) {
        return new ArtException(file, reason);
    }

    /** What was noted so far. */
    public List<ArtNotice> notices() {
        return new ArrayList<>(notices);
    }

    /** Keeps messages short whatever the file holds. */
    public static String cut(String text) {
        String plain = text.strip().replaceAll("\\s+", " ");
        return plain.length() <= LONGEST ? plain : plain.substring(0, LONGEST) + "...";
    }
}
