/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.action;

import org.eclipse.jface.action.IContributionItem;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.swt.SWT;
import org.eclipse.ui.menus.CommandContributionItem;
import org.eclipse.ui.menus.CommandContributionItemParameter;
import org.eclipse.ui.services.IServiceLocator;

/** Menu entries for acts, the same in the menu bar and on the drawing. */
final class MenuParts {

    private static final String OWN = "org.pollex.editor.";
    private static final String SHARED = "org.eclipse.ui.edit.";

    private final IServiceLocator services;

    MenuParts(IServiceLocator services) {
        this.services = services;
    }

    void all(IMenuManager menu) {
        items(menu, "place-art", "replace-art", "add-text", "add-rectangle", "add-ellipse");
        menu.add(new Separator());
        placed(menu);
        menu.add(sub("G&uides", "add-guide", "next-guide", "delete-guides"));
        menu.add(new Separator());
        items(menu, "add-layer", "group", "lock", "hide", "show-all", "other-side", "overprint");
        menu.add(new Separator());
        items(menu, "retone");
    }

    private void placed(IMenuManager menu) {
        menu.add(sub("&Turn and mirror", "turn-left", "turn-right", "mirror"));
        menu.add(sub("&Align", "align-left", "align-centre", "align-right", "align-top", "align-middle",
                "align-bottom"));
        menu.add(sub("D&istribute", "distribute-across", "distribute-down"));
        menu.add(sub("&Order", "to-front", "forward", "backward", "to-back"));
        menu.add(sub("&Move", "move-left", "move-right", "move-up", "move-down", "move-far-left", "move-far-right",
                "move-far-up", "move-far-down"));
    }

    void clipboard(IMenuManager menu) {
        for (String name : new String[] {"cut", "copy", "paste", "delete", "selectAll"}) {
            menu.add(item(SHARED + name, SWT.PUSH));
        }
        items(menu, "duplicate");
    }

    private MenuManager sub(String label, String... names) {
        MenuManager menu = new MenuManager(label, OWN + "menu." + names[0]);
        items(menu, names);
        return menu;
    }

    private void items(IMenuManager menu, String... names) {
        for (String name : names) {
            menu.add(own(name));
        }
    }

    IContributionItem own(String name) {
        return item(OWN + name, SWT.PUSH);
    }

    private IContributionItem item(String command, int style) {
        return new CommandContributionItem(new CommandContributionItemParameter(services, command + ".item", command,
                style));
    }
}
