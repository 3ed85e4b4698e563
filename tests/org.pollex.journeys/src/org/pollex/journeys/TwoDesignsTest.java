/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.edit.PlaceMarkCommand;
import org.pollex.edit.Pose;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignSession;
import org.pollex.model.design.Mark;

/** Two designs are changed side by side: each has its own history, print, findings and saving. */
class TwoDesignsTest {

    @TempDir
    Path folder;

    @AfterEach
    void close() {
        Window.closeEditors();
    }

    private static Mark boat(DesignSession session) {
        return session.design().getSides().get(0).getLayers().get(0).getMarks().get(0);
    }

    private static void move(DesignSession session, double dx) {
        session.run(new PlaceMarkCommand("Move", boat(session), Pose.of(boat(session)).moved(dx, 0)));
    }

    @Test
    void eachKeepsItsOwn() throws Exception {
        Window.fill();
        DesignEditor one = (DesignEditor) Window.open(Samples.ferry(folder.resolve("one"), "one"));
        DesignEditor two = (DesignEditor) Window.open(Samples.ferry(folder.resolve("two"), "two"));
        DesignSession first = one.getAdapter(DesignSession.class);
        DesignSession second = two.getAdapter(DesignSession.class);
        move(first, 12);
        move(second, 1);
        Window.until("both are printed", () -> first.fresh() && second.fresh());
        assertTrue(first.known().orElseThrow().findings().stream().anyMatch(each -> each.check()
                .equals("art-off-edge")));
        assertFalse(second.known().orElseThrow().findings().stream().anyMatch(each -> each.check()
                .equals("art-off-edge")));
        first.history().undo();
        assertEquals(0, boat(first).getX());
        assertEquals(1, boat(second).getX());
        assertFalse(one.isDirty());
        assertTrue(two.isDirty());
        Window.page().activate(two);
        two.doSave(new org.eclipse.core.runtime.NullProgressMonitor());
        Window.until("the second is saved", () -> !two.isDirty());
        assertTrue(first.history().canRedo());
        Window.page().activate(one);
        Window.until("the print of the first follows", first::fresh);
        Window.idle();
        Picture.take(Window.display(), "two-designs");
    }
}
