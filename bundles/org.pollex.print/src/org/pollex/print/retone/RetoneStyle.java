/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

/**
 * How re-toned art is drawn, where there is a choice.
 *
 * @param lines  which dark parts get a line round them
 * @param grow   whether light parts get half of the dark outline round them, so that figures do not shrink; more parts
 *     run together
 * @param apart  whether several inks are chosen so that parts which differ stay apart ({@link KeptApart}), and not each
 *     as the nearest to its colour
 */
public record RetoneStyle(Lines lines, boolean grow, boolean apart) {

    /** Lines round masses only, nothing grown, every colour in the nearest ink. */
    public static final RetoneStyle USUAL = new RetoneStyle(Lines.MASSES, false, false);

    /** Where lines are laid round dark parts. */
    public enum Lines {
        /** Where a dark mass would melt into the ground. */
        MASSES,
        /** Round all that is dark, outlines too; keeps most edges and looks like a sticker. */
        EVERYWHERE,
        /** Nowhere; dark masses melt into the ground. */
        NOWHERE
    }
}
