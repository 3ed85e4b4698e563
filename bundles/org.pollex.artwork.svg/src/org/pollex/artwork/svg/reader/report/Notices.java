/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.pollex.artwork.ArtNotice;

/** Collects notices, each feature of an element once, and no more than a person can read. */
public final class Notices {

    private static final int MOST = 500;

    private final List<ArtNotice> list = new ArrayList<>();
    private final Set<String> seen = new HashSet<>();
    private int muted;

    /** Something is not painted as the file means it. The message starts after the name of the element. */
    public void unsupported(String feature, String element, String what) {
        add(ArtNotice.Kind.UNSUPPORTED, feature, element, what);
    }

    /** Something was left out for safety. */
    public void refused(String feature, String element, String what) {
        add(ArtNotice.Kind.REFUSED, feature, element, what);
    }

    /** Something has no meaning in print. */
    public void ignored(String feature, String element, String what) {
        add(ArtNotice.Kind.IGNORED, feature, element, what);
    }

    /** Another font stands in. */
    public void fontReplaced(String asked, String used, String element) {
        add(ArtNotice.Kind.FONT_REPLACED, "font-family: " + cut(asked), element, "the font \"" + cut(asked)
                + "\" is not shipped and " + used + " stands in; convert the text to paths to keep its look");
    }

    private void add(ArtNotice.Kind kind, String feature, String element, String what) {
        if (muted > 0 || list.size() >= MOST) {
            return;
        }
        String name = cut(element);
        if (seen.add(kind + "\n" + feature + "\n" + name + "\n" + (kind == ArtNotice.Kind.FONT_REPLACED ? what : ""))) {
            list.add(new ArtNotice(kind, cut(feature), name, name + ": " + what + "."));
        }
    }

    /** Until {@link #speak}, notices are dropped: for measuring what is read again later. */
    public void mute() {
        muted++;
    }

    /** Ends one {@link #mute}. */
    public void speak() {
        muted--;
    }

    /** A text of the file short enough for a message. */
    public static String cut(String text) {
        String line = text.strip().replaceAll("\\s+", " ");
        return line.length() <= 60 ? line : line.substring(0, 57) + "...";
    }

    /** Everything so far. */
    public List<ArtNotice> list() {
        return list;
    }
}
