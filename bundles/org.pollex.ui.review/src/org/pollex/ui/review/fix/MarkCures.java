/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.fix;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.menus.ExtensionContributionFactory;
import org.eclipse.ui.menus.IContributionRoot;
import org.eclipse.ui.services.IServiceLocator;
import org.locationtech.jts.geom.Envelope;
import org.pollex.editor.session.DesignPages;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.session.Known;
import org.pollex.fixes.Remedies;
import org.pollex.fixes.Remedy;
import org.pollex.model.design.Mark;
import org.pollex.rules.Finding;
import org.pollex.ui.wayout.WaysOut;

/**
 * What cures the findings on the marks that are selected, in the menu on the drawing. Without a selection it is about
 * all that is on the face that shows.
 */
public final class MarkCures extends ExtensionContributionFactory {

    @Override
    public void createContributionItems(IServiceLocator services, IContributionRoot root) {
        IWorkbenchWindow window = services.getService(IWorkbenchWindow.class);
        MenuManager menu = new MenuManager("&Cure what was found", "org.pollex.ui.review.cures");
        menu.setRemoveAllWhenShown(true);
        menu.addMenuListener(shown -> fill(shown, window.getActivePage()));
        root.addContributionItem(menu, null);
    }

    private static void fill(IMenuManager menu, IWorkbenchPage page) {
        IEditorPart editor = page == null ? null : page.getActiveEditor();
        DesignSession session = editor == null ? null : editor.getAdapter(DesignSession.class);
        DesignPages pages = editor == null ? null : editor.getAdapter(DesignPages.class);
        List<Finding> findings = session == null || pages == null ? List.of() : findings(session, pages);
        Map<String, List<Finding>> remedies = new LinkedHashMap<>();
        Map<String, WaysOut.Offer> ways = new LinkedHashMap<>();
        for (Finding each : findings) {
            each.fixes().forEach(id -> remedies.computeIfAbsent(id, key -> new ArrayList<>()).add(each));
            WaysOut.of(each.check()).forEach(way -> ways.putIfAbsent(way.label(), way));
        }
        remedies.forEach((id, cured) -> menu.add(action(Remedies.label(id) + (cured.size() == 1 ? ""
                : " (" + cured.size() + " findings)"), () -> mend(editor, session, id, cured))));
        ways.values().forEach(way -> menu.add(action(way.label(), () -> way.take(page, session.file()))));
        if (menu.isEmpty()) {
            Action none = action(findings.isEmpty() ? "Nothing was found here" : "Nothing that was found here can be "
                    + "cured by one step", () -> { });
            none.setEnabled(false);
            menu.add(none);
        }
    }

    /** Findings on the face that shows, of the marks that are selected if any are. */
    private static List<Finding> findings(DesignSession session, DesignPages pages) {
        Set<String> selected = pages.selected().stream().map(Mark::getId).collect(Collectors.toSet());
        // a finding on an ink names no mark; that their boxes meet is enough for a menu
        List<Envelope> boxes = session.known().flatMap(each -> each.printed().side(pages.face())).stream()
                .flatMap(each -> each.marks().stream()).filter(each -> selected.contains(each.id()))
                .map(each -> each.area().getEnvelopeInternal()).toList();
        return session.known().map(Known::findings).orElse(List.of()).stream()
                .filter(each -> !each.waived() && each.side().equals(pages.face()))
                .filter(each -> selected.isEmpty() || selected.contains(each.region()) || boxes.stream()
                        .anyMatch(box -> box.intersects(each.where().getEnvelopeInternal()))).toList();
    }

    private static Action action(String label, Runnable run) {
        return new Action(label.replace("&", "&&")) {
            @Override
            public void run() {
                run.run();
            }
        };
    }

    private static void mend(IEditorPart editor, DesignSession session, String id, List<Finding> findings) {
        OpenDesign.mend(session, Remedies.label(id), remedies -> findings.size() == 1
                ? remedies.apply(id, findings.get(0)) : remedies.applyAll(id, findings), answer -> {
                    if (answer instanceof Remedy.Done done) {
                        editor.getEditorSite().getActionBars().getStatusLineManager().setMessage(done.said());
                    } else if (answer instanceof Remedy.Refused refused) {
                        MessageDialog.openInformation(editor.getSite().getShell(), Remedies.label(id), refused.why());
                    }
                });
    }
}
