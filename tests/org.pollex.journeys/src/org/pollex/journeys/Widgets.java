/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.viewers.Viewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IViewPart;

/** Finds widgets by what a user sees on them. */
final class Widgets {

    private Widgets() {
    }

    /** All controls of a kind below one, in their order. */
    static <T extends Control> List<T> all(Control below, Class<T> type) {
        List<T> found = new ArrayList<>();
        if (type.isInstance(below)) {
            found.add(type.cast(below));
        }
        if (below instanceof Composite composite) {
            for (Control each : composite.getChildren()) {
                found.addAll(all(each, type));
            }
        }
        return found;
    }

    /** The button with these words, its mnemonic aside. */
    static Button button(Control below, String words) {
        return all(below, Button.class).stream().filter(each -> each.getText().replace("&", "").equals(words))
                .findFirst().orElseThrow(() -> new AssertionError("there is no button " + words));
    }

    /** Presses a button. */
    static void press(Control below, String words) {
        Button button = button(below, words);
        if (!button.isEnabled()) {
            throw new AssertionError("the button " + words + " cannot be pressed");
        }
        if ((button.getStyle() & SWT.RADIO) != 0) {
            // a click takes the mark off its neighbours
            for (Control each : button.getParent().getChildren()) {
                if (each instanceof Button other && (other.getStyle() & SWT.RADIO) != 0) {
                    other.setSelection(false);
                }
            }
        }
        if ((button.getStyle() & (SWT.CHECK | SWT.RADIO)) != 0) {
            button.setSelection((button.getStyle() & SWT.RADIO) != 0 || !button.getSelection());
        }
        button.notifyListeners(SWT.Selection, new Event());
    }

    /** The dialog with that title, if it is open. */
    static Optional<Shell> dialog(String title) {
        for (Shell each : Window.display().getShells()) {
            if (!each.isDisposed() && each.isVisible() && each.getText().equals(title)) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }

    /** The tree of a view that is open. */
    static Tree tree(String view) {
        IViewPart part = Window.page().findView(view);
        return (Tree) ((Viewer) part.getSite().getSelectionProvider()).getControl();
    }

    /** Texts of the top lines of a tree of two columns. */
    static List<String> texts(Tree tree) {
        List<String> texts = new ArrayList<>();
        for (TreeItem each : tree.getItems()) {
            texts.add((each.getText(0) + " " + each.getText(1)).strip());
        }
        return texts;
    }

    /** Opens a line as a click on its triangle does. */
    static void expand(TreeItem item) {
        Event event = new Event();
        event.item = item;
        item.getParent().notifyListeners(SWT.Expand, event);
        item.setExpanded(true);
    }

    /** What a journey does inside a dialog. */
    interface Steps {
        void in(Shell shell) throws Exception;
    }

    /**
     * Goes on in a dialog once it is open. Looks for it now and then without an event loop of its own: a dialog brings
     * one, and whoever waits in a loop beneath it waits until it is closed.
     *
     * @param longest  milliseconds after which it is not looked for any more
     */
    static void whenOpen(String title, long longest, Steps then) {
        long end = System.currentTimeMillis() + longest;
        Window.display().timerExec(50, new Runnable() {
            @Override
            public void run() {
                if (dialog(title).isPresent()) {
                    try {
                        then.in(dialog(title).get());
                    } catch (Exception e) {
                        throw new AssertionError(e);
                    }
                } else if (System.currentTimeMillis() < end) {
                    Window.display().timerExec(50, this);
                }
            }
        });
    }
}
