/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import java.lang.reflect.Constructor;
import java.nio.file.Path;
import java.util.Arrays;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.DropTargetListener;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Widget;

/** Drops files from outside on a control, by the listeners that the system would call. */
final class Drops {

    private Drops() {
    }

    /**
     * Enters, rests and lets go.
     *
     * @param item  what lies under the pointer in a tree; null for none
     * @return the operation that the target made of it
     */
    static int files(Control control, Widget item, int x, int y, Path... files) throws Exception {
        DropTarget target = (DropTarget) control.getData(DND.DROP_TARGET_KEY);
        DropTargetEvent event = event(control, item, x, y);
        DropTargetListener[] listeners = target.getDropListeners();
        for (DropTargetListener each : listeners) {
            each.dragEnter(event);
        }
        for (DropTargetListener each : listeners) {
            each.dragOver(event);
        }
        if (event.detail != DND.DROP_NONE) {
            for (DropTargetListener each : listeners) {
                each.dropAccept(event);
            }
            event.data = Arrays.stream(files).map(Path::toString).toArray(String[]::new);
            for (DropTargetListener each : listeners) {
                each.drop(event);
            }
        }
        return event.detail;
    }

    /** The platform makes such events itself and lets nobody else do so. */
    private static DropTargetEvent event(Control control, Widget item, int x, int y) throws Exception {
        Class<?> type = Class.forName("org.eclipse.swt.dnd.DNDEvent", true, DropTargetEvent.class.getClassLoader());
        Constructor<?> made = type.getDeclaredConstructor();
        made.setAccessible(true);
        Event untyped = (Event) made.newInstance();
        untyped.widget = (Widget) control.getData(DND.DROP_TARGET_KEY);
        untyped.display = control.getDisplay();
        Constructor<?> typed = DropTargetEvent.class.getConstructor(type);
        DropTargetEvent event = (DropTargetEvent) typed.newInstance(untyped);
        Point there = control.toDisplay(x, y);
        event.x = there.x;
        event.y = there.y;
        event.item = item;
        event.operations = DND.DROP_COPY | DND.DROP_MOVE;
        event.detail = DND.DROP_DEFAULT;
        event.dataTypes = FileTransfer.getInstance().getSupportedTypes();
        event.currentDataType = event.dataTypes[0];
        return event;
    }
}
