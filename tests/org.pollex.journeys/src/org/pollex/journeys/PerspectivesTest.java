/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Field;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.Accessible;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IViewReference;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignSession;

/** Makes and reviews with a design open: are the views in their places, and is every control named? */
class PerspectivesTest {

    private static final String[] MAKING = {"org.pollex.ui.jobs.tree", "org.pollex.ui.review.findings",
        "org.pollex.ui.pictures.truesize", "org.pollex.ui.pictures.loupe", "org.pollex.ui.pictures.mockup",
        "org.eclipse.ui.views.PropertySheet", "org.eclipse.ui.views.ContentOutline",
        "org.pollex.app.problem.list"};
    private static final String[] REVIEWING = {"org.pollex.ui.jobs.tree", "org.pollex.ui.review.desk"};

    @TempDir
    Path folder;

    @AfterEach
    void close() throws Exception {
        Window.closeEditors();
        PlatformUI.getWorkbench().showPerspective("org.pollex.app.making", Window.window());
        Window.page().resetPerspective();
        Window.idle();
    }

    private void open(String perspective, String... views) throws Exception {
        Window.fill();
        PlatformUI.getWorkbench().showPerspective(perspective, Window.window());
        Window.page().resetPerspective();
        DesignEditor editor = (DesignEditor) Window.open(Samples.ferry(folder, "voyage"));
        DesignSession session = editor.getAdapter(DesignSession.class);
        Window.until("the print is there", session::fresh);
        Window.idle();
        for (String view : views) {
            assertNotNull(Window.page().findViewReference(view), view + " is not in " + perspective);
        }
        Picture.take(Window.display(), perspective.substring(perspective.lastIndexOf('.') + 1));
    }

    @Test
    void making() throws Exception {
        open("org.pollex.app.making", MAKING);
    }

    @Test
    void reviewing() throws Exception {
        open("org.pollex.app.reviewing", REVIEWING);
    }

    @Test
    void everyControlOfOurViewsIsNamed() throws Exception {
        open("org.pollex.app.making", MAKING);
        List<String> wrong = new ArrayList<>();
        int seen = 0;
        for (IViewReference each : Window.page().getViewReferences()) {
            if (!each.getId().startsWith("org.pollex.") || each.getId().startsWith("org.pollex.journeys")) {
                continue;
            }
            IViewPart part = Window.page().showView(each.getId(), each.getSecondaryId(), IWorkbenchPage.VIEW_VISIBLE);
            Window.idle();
            assertNotNull(part, each.getId() + " does not open");
            seen++;
            unnamed(each.getId(), Window.window().getShell(), wrong);
        }
        assertTrue(seen >= 5, "only " + seen + " views");
        assertEquals(List.of(), wrong);
    }

    private static void unnamed(String view, Control pane, List<String> wrong) {
        for (Control each : Widgets.all(pane, Control.class)) {
            if (!each.isVisible()) {
                continue;
            }
            if (each instanceof Button button && button.getText().isBlank() && name(each).isBlank()
                    && (button.getToolTipText() == null)) {
                wrong.add(view + ": a button without words");
            }
            if ((each instanceof Text || each instanceof Combo || each instanceof Spinner) && !labelled(each)) {
                wrong.add(view + ": a field without a label");
            }
            if (each instanceof ToolBar bar) {
                for (ToolItem item : bar.getItems()) {
                    if ((item.getStyle() & SWT.SEPARATOR) == 0 && item.getText().isBlank()
                            && (item.getToolTipText() == null || item.getToolTipText().isBlank())) {
                        wrong.add(view + ": a tool without words");
                    }
                }
            }
        }
    }

    /** A field is named by a label right before it, by a hint inside it, or by its accessible name. */
    private static boolean labelled(Control control) {
        if (control instanceof Text text && (!text.getMessage().isBlank() || (text.getStyle() & SWT.READ_ONLY) != 0)) {
            return true;
        }
        Control[] siblings = control.getParent().getChildren();
        for (int i = 1; i < siblings.length; i++) {
            if (siblings[i] == control && siblings[i - 1] instanceof Label label && !label.getText().isBlank()) {
                return true;
            }
        }
        return !name(control).isBlank();
    }

    /** What a screen reader says of a control; the platform gives no other way to ask. */
    private static String name(Control control) {
        try {
            Field field = Accessible.class.getDeclaredField("accessibleListeners");
            field.setAccessible(true);
            AccessibleEvent event = new AccessibleEvent(control.getAccessible());
            if (field.get(control.getAccessible()) instanceof List<?> listeners) {
                listeners.forEach(each -> ((AccessibleListener) each).getName(event));
            }
            return event.result == null ? "" : event.result;
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
    }
}
