/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.tree;

import java.util.List;
import java.util.Optional;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IFolder;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IViewSite;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.actions.ActionFactory;
import org.pollex.making.job.JobFacts;
import org.pollex.ui.jobs.tree.JobItem.Kind;
import org.pollex.ui.jobs.retone.RetoneWizard;
import org.pollex.ui.jobs.wizard.JobDialog;
import org.pollex.ui.jobs.wizard.Wizards;
import org.pollex.ui.jobs.work.JobSteps;
import org.pollex.ui.jobs.work.Studio;

/** What can be done with lines of the list of jobs. */
final class JobActions {

    private final IViewSite site;
    private final JobsView view;
    private final Action rename;
    private final Action remove;

    JobActions(IViewSite site, JobsView view) {
        this.site = site;
        this.view = view;
        this.rename = action("Rename job\u2026", this::rename);
        this.remove = action("Take off the list\u2026", this::remove);
        rename.setActionDefinitionId("org.eclipse.ui.edit.rename");
        remove.setActionDefinitionId("org.eclipse.ui.edit.delete");
        site.getActionBars().setGlobalActionHandler(ActionFactory.RENAME.getId(), rename);
        site.getActionBars().setGlobalActionHandler(ActionFactory.DELETE.getId(), remove);
        Action newJob = action("New job\u2026", () -> Wizards.newJob(shell()));
        Action add = action("Add job folder\u2026", () -> Wizards.openFolder(shell()));
        IMenuManager bar = site.getActionBars().getMenuManager();
        bar.add(newJob);
        bar.add(add);
    }

    void fill(IMenuManager menu) {
        Optional<JobItem> one = view.one();
        boolean job = one.isPresent() && one.get().kind() == Kind.JOB;
        if (!view.selected().isEmpty()) {
            menu.add(action(job ? "Open or close" : "Open", this::open));
            menu.add(action("Check now", this::check));
            menu.add(action("Show in folder", this::showInFolder));
            one.filter(each -> each.kind() == Kind.DESIGN).ifPresent(item -> menu.add(action(
                    "Re-tone for another material\u2026", () -> RetoneWizard.open(shell(), item.path()))));
            menu.add(new Separator());
        }
        menu.add(action("New job\u2026", () -> Wizards.newJob(shell())));
        one.ifPresent(item -> menu.add(action("New design\u2026", () -> newDesign(item))));
        menu.add(action("Add job folder\u2026", () -> Wizards.openFolder(shell())));
        menu.add(action("Import\u2026", () -> Wizards.bringIn(shell(), one.map(each -> each.job().path()))));
        if (job) {
            menu.add(new Separator());
            menu.add(rename);
            menu.add(remove);
            menu.add(new Separator());
            menu.add(action("Properties\u2026", () -> properties(one.get())));
        }
        menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
    }

    void open() {
        for (JobItem item : view.selected()) {
            switch (item.kind()) {
                case DESIGN -> item.resource().ifPresent(each -> Studio.edit((IFile) each));
                case FILE -> Program.launch(item.path().toString());
                default -> view.toggle();
            }
        }
    }

    private void check() {
        List<IFolder> folders = view.selected().stream().map(JobItem::job).distinct()
                .flatMap(each -> each.resource().stream()).map(IFolder.class::cast).toList();
        JobSteps.check(folders);
    }

    private void showInFolder() {
        view.one().ifPresent(item -> Program.launch((item.kind() == Kind.FILE || item.kind() == Kind.DESIGN
                ? item.path().getParent() : item.path()).toString()));
    }

    private void newDesign(JobItem item) {
        Wizards.newDesign(shell(), Optional.of(item.job().path()), List.of());
    }

    private void rename() {
        view.one().filter(each -> each.kind() == Kind.JOB).ifPresent(item -> {
            InputDialog dialog = new InputDialog(shell(), "Rename job", "New title of the job; its files keep their "
                    + "names.", item.name(), text -> text.isBlank() ? "Write a title." : null);
            if (dialog.open() == Window.OK) {
                JobSteps.change(item.path(), facts -> new JobFacts(dialog.getValue(), facts.client(), facts.use(),
                        facts.quantity(), facts.due(), facts.note()));
            }
        });
    }

    private void properties(JobItem item) {
        JobSteps.read(item.path(), facts -> {
            JobDialog dialog = new JobDialog(shell(), facts);
            if (dialog.open() == Window.OK) {
                JobSteps.change(item.path(), old -> dialog.facts());
            }
        });
    }

    private void remove() {
        view.one().filter(each -> each.kind() == Kind.JOB).flatMap(JobItem::resource).ifPresent(resource -> {
            IFolder folder = (IFolder) resource;
            String question = folder.isLinked()
                    ? "Take \u201c" + view.one().get().name() + "\u201d off the list? Its files stay where they are."
                    : "Take \u201c" + view.one().get().name() + "\u201d off the list? Its files move to\n"
                    + JobSteps.removedJobs() + "\nand stay there.";
            MessageDialog dialog = new MessageDialog(shell(), "Take off the list", null, question,
                    MessageDialog.QUESTION, 0, "Take off", "Keep");
            if (dialog.open() == 0) {
                JobSteps.remove(folder);
            }
        });
    }

    private Shell shell() {
        return site.getShell();
    }

    private static Action action(String text, Runnable run) {
        return new Action(text) {
            @Override
            public void run() {
                run.run();
            }
        };
    }
}
