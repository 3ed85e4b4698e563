/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.app.help;

import java.util.Map;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens help at the page about the view or editor that one works in; at the first page elsewhere. */
public final class HelpHandler extends AbstractHandler {

    /** Beginnings of ids of views and editors, and the page about them. */
    private static final Map<String, String> ABOUT = Map.of("org.pollex.editor.", "placing",
            "org.pollex.ui.review.findings", "findings", "org.pollex.app.problem.list", "findings",
            "org.pollex.ui.review.desk", "review", "org.pollex.ui.pictures.", "pictures",
            "org.pollex.ui.inks.", "inks",
            "org.eclipse.ui.views.PropertySheet", "placing", "org.eclipse.ui.views.ContentOutline", "placing");

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchPage page = HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage();
        IWorkbenchPart part = page.getActivePart();
        String about = part == null ? "start" : page(part.getSite().getId());
        try {
            ((HelpView) page.showView(HelpView.ID)).open(about);
        } catch (PartInitException e) {
            throw new ExecutionException("Help does not open", e);
        }
        return null;
    }

    /** The name of the page about a view or an editor. */
    static String page(String part) {
        return ABOUT.entrySet().stream().filter(each -> part.startsWith(each.getKey())).map(Map.Entry::getValue)
                .findFirst().orElse("start");
    }
}
