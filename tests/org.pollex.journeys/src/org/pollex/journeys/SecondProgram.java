/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import java.nio.file.Path;
import org.eclipse.core.filesystem.EFS;
import org.eclipse.gef.commands.CommandStack;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IStartup;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.pollex.edit.PlaceMarkCommand;
import org.pollex.edit.Pose;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignSession;
import org.pollex.model.design.Mark;

/**
 * What a second program does that a journey starts, and kills. Does nothing in a program that was started without the
 * property {@value #WORD}.
 */
public final class SecondProgram implements IStartup {

    /** Says what to do: change or reopen a design, add-ink or reopen-inks in a catalogue. */
    static final String WORD = "org.pollex.journeys.second";
    /** The design or the catalogue. */
    static final String FILE = "org.pollex.journeys.second.file";
    /** How far the change moves the mark, mm. */
    static final double MOVE = 2.5;

    private static final long LONGEST = 60_000;

    @Override
    public void earlyStartup() {
        String word = System.getProperty(WORD);
        if (word != null) {
            Display display = PlatformUI.getWorkbench().getDisplay();
            display.asyncExec(() -> {
                try {
                    run(word, Path.of(System.getProperty(FILE)));
                } catch (Exception e) {
                    System.out.println("SECOND failed " + e);
                    System.out.flush();
                    Runtime.getRuntime().halt(3);
                }
            });
        }
    }

    private static void run(String word, Path file) throws Exception {
        IWorkbenchPage page = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
        if (word.endsWith("ink") || word.endsWith("inks")) {
            inks(word, page, IDE.openEditorOnFileStore(page, EFS.getStore(file.toUri())));
            return;
        }
        DesignEditor editor = (DesignEditor) IDE.openEditorOnFileStore(page, EFS.getStore(file.toUri()));
        DesignSession session = editor.getAdapter(DesignSession.class);
        Mark mark = session.design().getSides().get(0).getLayers().get(0).getMarks().get(0);
        if (word.equals("change")) {
            session.run(new PlaceMarkCommand("Move", mark, Pose.of(mark).moved(MOVE, 0)));
            // stays open, dirty, until it is killed
            System.out.println("SECOND changed " + mark.getX());
            System.out.flush();
            return;
        }
        Button back = offer(page);
        double saved = mark.getX();
        if (back == null) {
            System.out.println("SECOND offers nothing");
        } else {
            back.notifyListeners(SWT.Selection, new Event());
            Mark again = session.design().getSides().get(0).getLayers().get(0).getMarks().get(0);
            System.out.println("SECOND had " + saved + " brought back " + again.getX() + " dirty " + editor.isDirty());
        }
        System.out.flush();
        Runtime.getRuntime().halt(0);
    }

    private static Button offer(IWorkbenchPage page) {
        long end = System.currentTimeMillis() + LONGEST;
        Button back = null;
        while (back == null && System.currentTimeMillis() < end) {
            Display.getCurrent().readAndDispatch();
            back = FindingsViewTest.find(page.getWorkbenchWindow().getShell(), Button.class,
                    each -> each.getText().equals("Bring it back"));
        }
        return back;
    }

    private static void inks(String word, IWorkbenchPage page, IEditorPart editor) {
        CommandStack history = editor.getAdapter(CommandStack.class);
        if (word.equals("add-ink")) {
            InksTest.add("Fog");
            System.out.println("SECOND added " + InksTest.own().size());
            System.out.flush();
            return;
        }
        Button back = offer(page);
        if (back == null) {
            System.out.println("SECOND offers nothing");
        } else {
            int saved = InksTest.own().size();
            back.notifyListeners(SWT.Selection, new Event());
            String again = String.join(" ", InksTest.own());
            boolean dirty = editor.isDirty();
            history.undo();
            System.out.println("SECOND had " + saved + " brought back " + again + " dirty " + dirty + " undone "
                    + InksTest.own().size());
        }
        System.out.flush();
        Runtime.getRuntime().halt(0);
    }
}
