/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.findings;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.core.resources.IFile;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.ide.IDE;
import org.pollex.editor.session.DesignPages;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.work.Session;
import org.pollex.fixes.Remedies;
import org.pollex.fixes.Remedy;
import org.pollex.markers.StudioProject;
import org.pollex.rules.Finding;
import org.pollex.ui.review.ReviewWork;
import org.pollex.ui.review.WaiveDialog;
import org.pollex.ui.review.fix.Mending;
import org.pollex.ui.review.fix.OpenDesign;
import org.pollex.ui.wayout.WaysOut;

/** What can be done with the findings that are selected. */
final class FindingActions {

    private final IWorkbenchPage page;
    private final Supplier<List<Found>> selected;
    private final Supplier<Optional<DesignSession>> front;
    private final Consumer<String> say;
    private final IAction copy = action("&Copy", this::copy);

    /**
     * @param selected  the findings to do it with
     * @param front     the design in front, whose findings need no file of the workspace
     * @param say       takes one sentence on how it went
     */
    FindingActions(IWorkbenchPage page, Supplier<List<Found>> selected, Supplier<Optional<DesignSession>> front,
            Consumer<String> say) {
        this.page = page;
        this.selected = selected;
        this.front = front;
        this.say = say;
        copy.setActionDefinitionId(org.eclipse.ui.IWorkbenchCommandConstants.EDIT_COPY);
    }

    private static IAction action(String label, Runnable run) {
        Action action = new Action(label) {
            @Override
            public void run() {
                run.run();
            }
        };
        return action;
    }

    /** Puts the selected findings on the clipboard as text. */
    IAction copyAction() {
        return copy;
    }

    /** Fills the context menu for what is selected now. */
    void fill(IMenuManager menu) {
        List<Found> all = selected.get();
        if (all.isEmpty()) {
            return;
        }
        if (all.size() == 1) {
            Found found = all.get(0);
            menu.add(action("&Show the place", () -> place(found)));
            menu.add(action(found.finding().waived() ? "Take &waiver back" : "&Waive\u2026", () -> waive(found)));
        }
        List<String> remedies = new ArrayList<>(all.get(0).finding().fixes());
        all.forEach(each -> remedies.retainAll(each.finding().fixes()));
        if (!remedies.isEmpty()) {
            menu.add(new Separator());
            remedies.forEach(id -> menu.add(action(Remedies.label(id).replace("&", "&&"), () -> mend(id, all))));
        }
        if (all.size() == 1) {
            for (WaysOut.Offer way : WaysOut.of(all.get(0).finding().check())) {
                menu.add(action(way.label().replace("&", "&&"), () -> way.take(page, all.get(0).design())));
            }
        }
        menu.add(new Separator());
        menu.add(copy);
        menu.add(new Separator());
    }

    private void copy() {
        if (page.getWorkbenchWindow().getShell().getDisplay().getFocusControl() instanceof Text field) {
            // the key is that of the whole view; in the field of the filter it is about the words there
            field.copy();
            return;
        }
        List<Found> all = selected.get();
        if (all.isEmpty()) {
            say.accept("Select findings to copy them.");
            return;
        }
        Clipboard clipboard = new Clipboard(page.getWorkbenchWindow().getShell().getDisplay());
        try {
            clipboard.setContents(new Object[] {FindingText.of(all)}, new Transfer[] {TextTransfer.getInstance()});
        } finally {
            clipboard.dispose();
        }
        say.accept(all.size() == 1 ? "Copied." : all.size() + " findings are copied.");
    }

    /** Opens the design if need be, and brings the place into view. */
    void place(Found found) {
        try {
            IEditorPart editor = ofFront(found) ? page.getActiveEditor() : null;
            if (editor == null || editor.getAdapter(DesignPages.class) == null) {
                Optional<IFile> file = StudioProject.file(found.design());
                if (file.isEmpty()) {
                    say.accept(found.design().getFileName() + " is not among the jobs; open it from its folder.");
                    return;
                }
                editor = IDE.openEditor(page, file.get());
            } else {
                page.activate(editor);
            }
            DesignPages pages = editor.getAdapter(DesignPages.class);
            if (pages != null && !found.finding().where().isEmpty()) {
                pages.reveal(found.finding().side(), found.finding().where().getEnvelopeInternal());
            }
        } catch (PartInitException e) {
            say.accept(e.getMessage());
        }
    }

    private boolean ofFront(Found found) {
        return front.get().isPresent() && front.get().get().file().equals(found.design());
    }

    /** Does a remedy on findings that offer it. */
    void mend(String id, List<Found> all) {
        if (all.stream().allMatch(this::ofFront)) {
            List<Finding> findings = all.stream().map(Found::finding).toList();
            OpenDesign.mend(front.get().get(), Remedies.label(id), remedies -> findings.size() == 1
                    ? remedies.apply(id, findings.get(0)) : remedies.applyAll(id, findings), this::said);
            return;
        }
        Map<IFile, List<Finding>> files = new LinkedHashMap<>();
        for (Found each : all) {
            StudioProject.file(each.design()).ifPresent(file -> files.computeIfAbsent(file, key -> new ArrayList<>())
                    .add(each.finding()));
        }
        Mending.run(id, files, say, say);
    }

    private void said(Remedy answer) {
        say.accept(answer instanceof Remedy.Done done ? done.said() : ((Remedy.Refused) answer).why());
    }

    /** Asks why and waives a finding, or takes its waiver back. */
    void waive(Found found) {
        Finding finding = found.finding();
        Path file = found.design();
        if (finding.waived()) {
            ReviewWork.run("Taking back a waiver", file, review -> review.takeBack(file, finding), say,
                    () -> again(file));
            return;
        }
        WaiveDialog dialog = new WaiveDialog(page.getWorkbenchWindow().getShell(), finding);
        if (dialog.open() == WaiveDialog.OK) {
            ReviewWork.run("Waiving", file, review -> review.waive(file, finding, dialog.reason(), dialog.who()),
                    say, () -> again(file));
        }
    }

    private static void again(Path file) {
        Mending.session(file).filter(Session.class::isInstance).map(Session.class::cast).ifPresent(Session::again);
    }
}
