/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.app;

import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.GroupMarker;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IContributionItem;
import org.eclipse.jface.action.ICoolBarManager;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.action.SubContributionItem;
import org.eclipse.jface.action.ToolBarContributionItem;
import org.eclipse.jface.action.ToolBarManager;
import org.eclipse.swt.SWT;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.actions.ActionFactory.IWorkbenchAction;
import org.eclipse.ui.actions.ContributionItemFactory;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;

/**
 * Which menus are there before any other bundle adds to them?
 *
 * <p>Every menu has the groups that contributions name: the platform's {@code additions} in each, so that bundles
 * installed later find their place (the installer's own entries sit in the help menu).
 */
class StudioActionBarAdvisor extends ActionBarAdvisor {

    private IWorkbenchAction save;
    private IWorkbenchAction saveAll;
    private IWorkbenchAction quit;
    private IWorkbenchAction undo;
    private IWorkbenchAction redo;
    private IWorkbenchAction preferences;
    private IWorkbenchAction about;
    private IWorkbenchAction create;
    private IWorkbenchAction close;
    private IWorkbenchAction closeAll;
    private IWorkbenchAction cut;
    private IWorkbenchAction copy;
    private IWorkbenchAction paste;
    private IWorkbenchAction delete;
    private IWorkbenchAction selectAll;
    private IWorkbenchAction resetPerspective;
    private IContributionItem perspectives;
    private IContributionItem views;

    StudioActionBarAdvisor(IActionBarConfigurer configurer) {
        super(configurer);
    }

    @Override
    protected void makeActions(IWorkbenchWindow window) {
        save = registered(ActionFactory.SAVE, window);
        saveAll = registered(ActionFactory.SAVE_ALL, window);
        quit = registered(ActionFactory.QUIT, window);
        undo = registered(ActionFactory.UNDO, window);
        redo = registered(ActionFactory.REDO, window);
        preferences = registered(ActionFactory.PREFERENCES, window);
        about = registered(ActionFactory.ABOUT, window);
        create = registered(ActionFactory.NEW, window);
        create.setText("&New...");
        close = registered(ActionFactory.CLOSE, window);
        closeAll = registered(ActionFactory.CLOSE_ALL, window);
        cut = registered(ActionFactory.CUT, window);
        copy = registered(ActionFactory.COPY, window);
        paste = registered(ActionFactory.PASTE, window);
        delete = registered(ActionFactory.DELETE, window);
        selectAll = registered(ActionFactory.SELECT_ALL, window);
        resetPerspective = registered(ActionFactory.RESET_PERSPECTIVE, window);
        resetPerspective.setText("&Put views back");
        perspectives = ContributionItemFactory.PERSPECTIVES_SHORTLIST.create(window);
        views = ContributionItemFactory.VIEWS_SHORTLIST.create(window);
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
        file.add(create);
        file.add(new GroupMarker(IWorkbenchActionConstants.NEW_EXT));
        file.add(new Separator());
        file.add(close);
        file.add(closeAll);
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
        edit.add(new GroupMarker(IWorkbenchActionConstants.UNDO_EXT));
        edit.add(new Separator());
        edit.add(cut);
        edit.add(copy);
        edit.add(paste);
        edit.add(new GroupMarker(IWorkbenchActionConstants.CUT_EXT));
        edit.add(new Separator());
        edit.add(delete);
        edit.add(selectAll);
        edit.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        edit.add(new GroupMarker(IWorkbenchActionConstants.EDIT_END));
        bar.add(edit);

        bar.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));

        MenuManager window = new MenuManager("Wi&ndow", IWorkbenchActionConstants.M_WINDOW);
        MenuManager perspective = new MenuManager("&Perspective", "org.pollex.app.perspectives");
        perspective.add(perspectives);
        window.add(perspective);
        MenuManager view = new MenuManager("Show &view", "org.pollex.app.views");
        view.add(views);
        window.add(view);
        window.add(resetPerspective);
        window.add(new Separator());
        window.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        window.add(new Separator());
        window.add(preferences);
        bar.add(window);

        MenuManager help = new MenuManager("&Help", IWorkbenchActionConstants.M_HELP);
        help.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        help.add(new Separator());
        help.add(about);
        bar.add(help);
    }

    @Override
    protected void fillCoolBar(ICoolBarManager bar) {
        IToolBarManager tools = new ToolBarManager(SWT.FLAT | SWT.RIGHT);
        tools.add(save);
        tools.add(shown(undo));
        tools.add(shown(redo));
        bar.add(new ToolBarContributionItem(tools, IWorkbenchActionConstants.TOOLBAR_FILE));
        bar.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
    }

    /**
     * The platform hides undo and redo in the toolbar of every perspective, by the id of the command that an item of
     * an action tells of; an item around it tells of none.
     */
    private static IContributionItem shown(IAction action) {
        SubContributionItem item = new SubContributionItem(new ActionContributionItem(action));
        item.setVisible(true);
        return item;
    }
}
