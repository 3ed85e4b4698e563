/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.session;

import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.pollex.model.design.Mark;

/** The pages of an open editor, one for each face of the item. In the window's thread only. */
public interface DesignPages {

    /** Name of the face that is shown. */
    String face();

    /** Shows a face. */
    void show(String face);

    /** Shows a face and brings a place (mm on the item) into view, enlarged so that it is seen well. */
    void reveal(String face, Envelope place);

    /** The marks selected on the page that is shown. */
    List<Mark> selected();

    /** Selects marks of the page that is shown. */
    void select(List<? extends Mark> marks);

    /** Adds a listener to the pointer. */
    void add(PointerListener listener);

    /** Takes a listener off. */
    void remove(PointerListener listener);

    /** Hears where the pointer is. */
    interface PointerListener {

        /** The pointer is over a face at this place, in mm on the item. */
        void over(String face, double x, double y);

        /** The pointer left the drawing. */
        default void left() {
        }
    }
}
