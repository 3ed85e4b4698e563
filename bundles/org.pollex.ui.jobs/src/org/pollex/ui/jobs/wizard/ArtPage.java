/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.wizard;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.pollex.markers.StudioProject;

/** The art of each face, and what the design is called; shows what will be made. */
final class ArtPage extends WizardPage {

    private static final int MARGIN = 12;

    private final Choice choice;
    private Text front;
    private Text back;
    private Text name;
    private Button largest;
    private Preview preview;
    private boolean named;
    private boolean naming;

    ArtPage(Choice choice) {
        super("art", "New design: art", null);
        this.choice = choice;
        setDescription("Drop SVG files on the picture, or browse for them. They are copied into the job unchanged.");
    }

    @Override
    public void createControl(Composite parent) {
        Composite area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(3).margins(MARGIN, MARGIN).spacing(10, 8).applyTo(area);
        front = art(area, "&Front:", choice.front(), choice::front);
        back = art(area, "B&ack:", choice.back(), choice::back);
        JobForm.label(area, "");
        largest = new Button(area, SWT.CHECK);
        largest.setText("As &large as fits, whatever size the art states");
        largest.setSelection(true);
        GridDataFactory.fillDefaults().span(2, 1).applyTo(largest);
        JobForm.label(area, "&Name:");
        name = new Text(area, SWT.BORDER);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(name);
        preview = new Preview(area, this::told);
        GridDataFactory.fillDefaults().span(3, 1).grab(true, true).hint(SWT.DEFAULT, 240).applyTo(preview.control());
        largest.addListener(SWT.Selection, event -> {
            choice.largest(largest.getSelection());
            changed();
        });
        name.addModifyListener(event -> {
            named |= !naming;
            choice.name(name.getText());
            check();
        });
        drop(area);
        setControl(area);
        suggest();
        check();
        setErrorMessage(null);
    }

    private Text art(Composite area, String label, Optional<Path> file, Consumer<Path> chosen) {
        JobForm.label(area, label);
        Text text = new Text(area, SWT.BORDER);
        text.setMessage("No art on this face");
        text.setText(file.map(Path::toString).orElse(""));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
        Button browse = new Button(area, SWT.PUSH);
        browse.setText("Browse\u2026");
        browse.setToolTipText("Choose an SVG file for this face");
        text.addModifyListener(event -> {
            chosen.accept(path(text.getText()).orElse(null));
            suggest();
            changed();
        });
        browse.addListener(SWT.Selection, event -> SvgFiles.ask(getShell(), false).stream().findFirst()
                .ifPresent(each -> text.setText(each.toString())));
        return text;
    }

    private static Optional<Path> path(String text) {
        try {
            return text.isBlank() ? Optional.empty() : Optional.of(Path.of(text.strip()));
        } catch (java.nio.file.InvalidPathException e) {
            return Optional.empty();
        }
    }

    private void drop(Composite area) {
        DropTarget target = new DropTarget(area, DND.DROP_COPY | DND.DROP_DEFAULT);
        target.setTransfer(FileTransfer.getInstance());
        target.addDropListener(new DropTargetAdapter() {
            @Override
            public void dragEnter(DropTargetEvent event) {
                event.detail = DND.DROP_COPY;
            }

            @Override
            public void drop(DropTargetEvent event) {
                if (event.data instanceof String[] names) {
                    take(Arrays.stream(names).map(Path::of).filter(SvgFiles::is).toList());
                }
            }
        });
    }

    /** The first file goes to the first face without art, the second to the other. */
    private void take(List<Path> files) {
        for (Path each : files) {
            (front.getText().isBlank() || !back.getText().isBlank() ? front : back).setText(each.toString());
        }
    }

    private void suggest() {
        if (!named && name != null) {
            String file = choice.front().or(choice::back).map(each -> each.getFileName().toString()).orElse("");
            int dot = file.lastIndexOf('.');
            naming = true;
            name.setText((dot > 0 ? file.substring(0, dot) : file).replace('-', ' ').replace('_', ' '));
            naming = false;
        }
    }

    private void changed() {
        check();
        if (isCurrentPage()) {
            preview.show(choice);
        }
    }

    private void told(String trouble) {
        if (!trouble.isEmpty()) {
            setErrorMessage(trouble);
            setPageComplete(false);
        } else {
            check();
        }
    }

    private void check() {
        if (name == null) {
            return;
        }
        String trouble = choice.name().isBlank() ? "Write a name for the design." : taken()
                ? "The job has a design of that name already; write another." : null;
        setErrorMessage(trouble);
        setPageComplete(trouble == null);
    }

    private boolean taken() {
        return choice.job().isPresent() && StudioProject.file(choice.file()).isPresent();
    }

    @Override
    public void setVisible(boolean visible) {
        super.setVisible(visible);
        if (visible) {
            preview.show(choice);
            front.setFocus();
        }
    }
}
