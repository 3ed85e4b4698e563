/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.app;

import org.eclipse.jface.action.GroupMarker;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.actions.ContributionItemFactory;
import org.eclipse.ui.actions.ActionFactory.IWorkbenchAction;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;

/**
 * Which menus are there before any other bundle adds to them?
 *
 * <p>Every menu has the groups that contributions name: the platform's {@code additions} in each, so that bundles
 * installed later find their place (the installer's own entries sit in the help menu).
 */
class StudioActionBarAdvisor extends ActionBarAdvisor {

    private IWorkbenchWindow window;
    private IWorkbenchAction save;
    private IWorkbenchAction saveAll;
    private IWorkbenchAction quit;
    private IWorkbenchAction undo;
    private IWorkbenchAction redo;
    private IWorkbenchAction preferences;
    private IWorkbenchAction about;

    StudioActionBarAdvisor(IActionBarConfigurer configurer) {
        super(configurer);
    }

    @Override
    protected void makeActions(IWorkbenchWindow opened) {
        window = opened;
        save = registered(ActionFactory.SAVE, window);
        saveAll = registered(ActionFactory.SAVE_ALL, window);
        quit = registered(ActionFactory.QUIT, window);
        undo = registered(ActionFactory.UNDO, window);
        redo = registered(ActionFactory.REDO, window);
        preferences = registered(ActionFactory.PREFERENCES, window);
        about = registered(ActionFactory.ABOUT, window);
    }

    private IWorkbenchWindow window() {
        return window;
    }

    private IWorkbenchAction registered(ActionFactory factory, IWorkbenchWindow window) {
        IWorkbenchAction action = factory.create(window);
        register(action);
        return action;
    }

    @Override
    protected void fillMenuBar(IMenuManager bar) {
        MenuManager file = new MenuManager("&File", IWorkbenchActionConstants.M_FILE);
        file.add(new GroupMarker(IWorkbenchActionConstants.FILE_START));
        file.add(new GroupMarker(IWorkbenchActionConstants.NEW_EXT));
        file.add(new Separator());
        file.add(save);
        file.add(saveAll);
        file.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        file.add(new Separator());
        file.add(quit);
        file.add(new GroupMarker(IWorkbenchActionConstants.FILE_END));
        bar.add(file);

        MenuManager edit = new MenuManager("&Edit", IWorkbenchActionConstants.M_EDIT);
        edit.add(new GroupMarker(IWorkbenchActionConstants.EDIT_START));
        edit.add(undo);
        edit.add(redo);
        edit.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        edit.add(new GroupMarker(IWorkbenchActionConstants.EDIT_END));
        bar.add(edit);

        bar.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));

        MenuManager windows = new MenuManager("&Window", IWorkbenchActionConstants.M_WINDOW);
        MenuManager perspectives = new MenuManager("&Perspective", "perspectives");
        perspectives.add(ContributionItemFactory.PERSPECTIVES_SHORTLIST.create(window()));
        windows.add(perspectives);
        MenuManager views = new MenuManager("Show &view", "views");
        views.add(ContributionItemFactory.VIEWS_SHORTLIST.create(window()));
        windows.add(views);
        windows.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        windows.add(new Separator());
        windows.add(preferences);
        bar.add(windows);

        MenuManager help = new MenuManager("&Help", IWorkbenchActionConstants.M_HELP);
        help.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        help.add(new Separator());
        help.add(about);
        bar.add(help);
    }
}
