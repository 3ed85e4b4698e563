/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.part;

import java.util.List;
import org.pollex.editor.figure.ItemLook;
import org.pollex.editor.figure.MarkLook;
import org.pollex.model.design.Mark;

/** What the parts of one page ask about the side they show; the editor answers. */
public interface SideScene {

    /** Name of the face: front, back. */
    String face();

    /** The item as it looks now. */
    ItemLook item();

    /** The marks of the side that show, lowest first. */
    List<Mark> marks();

    /** How a mark looks now. */
    MarkLook look(Mark mark);

    /** Whether gestures may not change the mark: it, its layer or the whole design is locked. */
    boolean locked(Mark mark);

    /** A gesture shows a mark at another pose; null ends the gesture. */
    void previewing(Mark mark, org.pollex.edit.Pose pose);

    /** Snaps a wished pose to zone edges, centre, guides and other art. */
    org.pollex.edit.Pose snap(Mark mark, org.pollex.edit.Pose wished);
}
