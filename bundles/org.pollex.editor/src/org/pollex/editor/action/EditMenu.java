/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.action;

import org.eclipse.jface.action.IContributionItem;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.ui.menus.ExtensionContributionFactory;
import org.eclipse.ui.menus.IContributionRoot;
import org.eclipse.ui.services.IServiceLocator;

/** Cut, copy, paste and their like in the edit menu of the window. */
public final class EditMenu extends ExtensionContributionFactory {

    @Override
    public void createContributionItems(IServiceLocator services, IContributionRoot root) {
        MenuManager menu = new MenuManager();
        new MenuParts(services).clipboard(menu);
        root.addContributionItem(new Separator(), null);
        for (IContributionItem item : menu.getItems()) {
            menu.remove(item);
            root.addContributionItem(item, null);
        }
    }
}
