/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.action;

import org.eclipse.core.expressions.ReferenceExpression;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.ui.menus.ExtensionContributionFactory;
import org.eclipse.ui.menus.IContributionRoot;
import org.eclipse.ui.services.IServiceLocator;

/** The menu of the menu bar for what is done to a design; it is there while one is in front. */
public final class DesignMenu extends ExtensionContributionFactory {

    @Override
    public void createContributionItems(IServiceLocator services, IContributionRoot root) {
        MenuManager menu = new MenuManager("&Design", "org.pollex.editor.menu");
        new MenuParts(services).all(menu);
        root.addContributionItem(menu, new ReferenceExpression("org.pollex.editor.front"));
    }
}
