/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import static org.junit.jupiter.api.Assertions.fail;

import java.nio.file.Path;
import java.util.function.BooleanSupplier;
import org.eclipse.core.filesystem.EFS;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignSession;

/** Drives the workbench window from the window's own thread. */
final class Window {

    private static final long LONGEST = 10_000;

    private Window() {
    }

    static IWorkbenchWindow window() {
        return PlatformUI.getWorkbench().getActiveWorkbenchWindow() != null
                ? PlatformUI.getWorkbench().getActiveWorkbenchWindow()
                : PlatformUI.getWorkbench().getWorkbenchWindows()[0];
    }

    static IWorkbenchPage page() {
        return window().getActivePage();
    }

    static Display display() {
        return PlatformUI.getWorkbench().getDisplay();
    }

    /** Lays the window over the whole screen and brings it to the front. */
    static void fill() {
        window().getShell().setBounds(display().getBounds());
        window().getShell().forceActive();
        idle();
    }

    /** Runs the event loop until it is so; fails after ten seconds. */
    static void until(String what, BooleanSupplier condition) {
        until(what, LONGEST, condition);
    }

    /** Runs the event loop until it is so; fails after that many milliseconds. */
    static void until(String what, long longest, BooleanSupplier condition) {
        long end = System.currentTimeMillis() + longest;
        while (!condition.getAsBoolean()) {
            if (System.currentTimeMillis() > end) {
                fail("waited in vain: " + what);
            }
            if (!display().readAndDispatch()) {
                pause();
            }
        }
    }

    /** Runs the event loop until nothing is due and everything had time to be painted. */
    static void idle() {
        for (int quiet = 0; quiet < 12;) {
            if (display().readAndDispatch()) {
                continue;
            }
            quiet++;
            pause();
        }
    }

    private static void pause() {
        try {
            Thread.sleep(10);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Opens a file of the disk in its editor. */
    static IEditorPart open(Path file) throws Exception {
        return IDE.openEditorOnFileStore(page(), EFS.getStore(file.toUri()));
    }

    /** Fills the screen, opens a design and waits for its print; the views stand beside it, the editor is in front. */
    static DesignEditor design(Path file, String... views) throws Exception {
        fill();
        DesignEditor editor = (DesignEditor) open(file);
        for (String view : views) {
            page().showView(view);
        }
        page().activate(editor);
        until("the print is there", editor.getAdapter(DesignSession.class)::fresh);
        idle();
        return editor;
    }

    /** Sends a mouse event to a control; {@code state} holds the buttons and keys that are down. */
    static void mouse(Control control, int type, int x, int y, int button, int state) {
        Event event = new Event();
        event.type = type;
        event.x = x;
        event.y = y;
        event.button = button;
        event.stateMask = state;
        event.count = 1;
        event.widget = control;
        event.display = control.getDisplay();
        control.notifyListeners(type, event);
    }

    /** Presses the first button at one place, moves in steps, and lets go at the other unless told to hold. */
    static void drag(Control control, int x, int y, int toX, int toY, boolean letGo) {
        drag(control, x, y, toX, toY, letGo, 0);
    }

    /** The same with keys held down while moving. */
    static void drag(Control control, int x, int y, int toX, int toY, boolean letGo, int keys) {
        mouse(control, SWT.MouseMove, x, y, 0, 0);
        mouse(control, SWT.MouseDown, x, y, 1, 0);
        int steps = 8;
        for (int i = 1; i <= steps; i++) {
            mouse(control, SWT.MouseMove, x + (toX - x) * i / steps, y + (toY - y) * i / steps, 0,
                    SWT.BUTTON1 | keys);
            idle();
        }
        if (letGo) {
            mouse(control, SWT.MouseUp, toX, toY, 1, SWT.BUTTON1);
            idle();
        }
    }

    /** Presses a button of a dialog as soon as that is open; call it before what opens the dialog and waits. */
    static void answer(String title, String label) {
        answer(title, label, System.currentTimeMillis() + LONGEST);
    }

    private static void answer(String title, String label, long end) {
        display().timerExec(20, () -> {
            for (Shell shell : display().getShells()) {
                if (shell.getText().equals(title) && shell.isVisible()) {
                    if (!press(shell, label)) {
                        // what waits for the dialog goes on and finds that nothing was answered
                        shell.close();
                    }
                    return;
                }
            }
            if (System.currentTimeMillis() < end) {
                answer(title, label, end);
            }
        });
    }

    private static boolean press(Composite parent, String label) {
        for (Control child : parent.getChildren()) {
            if (child instanceof Button button && button.getText().replace("&", "").equals(label)) {
                button.notifyListeners(SWT.Selection, new Event());
                return true;
            }
            if (child instanceof Composite inner && press(inner, label)) {
                return true;
            }
        }
        return false;
    }

    /** Makes the window dark, or light again. */
    static void dark(boolean on) {
        PlatformUI.getWorkbench().getService(IThemeEngine.class).setTheme("org.eclipse.e4.ui.css.theme.e4_"
                + (on ? "dark" : "default"), false);
        idle();
    }

    /** Closes all editors, without saving. */
    static void closeEditors() {
        page().closeAllEditors(false);
        idle();
    }
}
