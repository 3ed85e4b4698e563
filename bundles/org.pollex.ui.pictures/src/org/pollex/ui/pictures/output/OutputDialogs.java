/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.pictures.output;

import java.io.IOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.pollex.model.store.JobFolder;

/** Asks where outputs go, and tells when they are there. In the window's thread. */
public final class OutputDialogs {

    private OutputDialogs() {
    }

    /** Asks for the file of one output, at first in the folder for outputs, and writes it. */
    static void one(Shell shell, Output output, Source source) {
        Optional<Wishes> wishes = wishes(shell, output);
        if (wishes.isEmpty()) {
            return;
        }
        Path out = JobFolder.of(source.design()).output();
        boolean fresh = !Files.exists(out);
        try {
            Files.createDirectories(out);
        } catch (IOException e) {
            out = source.design().toAbsolutePath().getParent();
            fresh = false;
        }
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText("Write the " + output.words());
        dialog.setOverwrite(true);
        dialog.setFilterPath(out.toString());
        dialog.setFileName(output.nameFor(source.design(), wishes.get()));
        kinds(dialog, output, wishes.get());
        String chosen = dialog.open();
        if (chosen != null) {
            Path file = Path.of(chosen);
            // a name that says another format has its way
            write(shell, output, wishes.get().with(ReportFormat.of(file).orElse(wishes.get().report())),
                    Map.of(source, file));
        }
        if (fresh && (chosen == null || !Path.of(chosen).startsWith(out))) {
            removeEmpty(out);
        }
    }

    private static void kinds(FileDialog dialog, Output output, Wishes wishes) {
        if (output != Output.REPORT) {
            dialog.setFilterExtensions(new String[] {"*." + output.extension(wishes)});
            return;
        }
        ReportFormat[] formats = ReportFormat.values();
        dialog.setFilterNames(Arrays.stream(formats).map(ReportFormat::words).toArray(String[]::new));
        dialog.setFilterExtensions(Arrays.stream(formats).map(each -> "*." + each.extension()).toArray(String[]::new));
        dialog.setFilterIndex(wishes.report().ordinal());
    }

    private static void removeEmpty(Path folder) {
        try {
            Files.deleteIfExists(folder);
        } catch (DirectoryNotEmptyException e) {
            // the user put something there meanwhile
        } catch (IOException e) {
            ILog.of(OutputDialogs.class).warn(folder + " could not be removed", e);
        }
    }

    /** Writes an output of each design into the folder for outputs beside it, once the user agrees. */
    public static void many(Shell shell, Output output, List<Source> sources) {
        Optional<Wishes> wishes = wishes(shell, output);
        if (wishes.isEmpty()) {
            return;
        }
        Map<Source, Path> files = new LinkedHashMap<>();
        sources.forEach(each -> files.put(each,
                JobFolder.of(each.design()).output().resolve(output.nameFor(each.design(), wishes.get()))));
        long there = files.values().stream().filter(Files::exists).count();
        String question = "Write the " + output.words() + " of " + sources.size() + " designs into the folder \u201c"
                + JobFolder.OUTPUT + "\u201d beside each?" + (there == 0 ? ""
                : there == 1 ? " One file is there already and will be replaced."
                : " " + there + " files are there already and will be replaced.");
        MessageDialog dialog = new MessageDialog(shell, "Write files", null, question, MessageDialog.QUESTION, 0,
                there == 0 ? "Write" : "Write and replace", "Cancel");
        if (dialog.open() == 0) {
            write(shell, output, wishes.get(), files);
        }
    }

    /** How an output is to be; empty when the user would rather have none. */
    private static Optional<Wishes> wishes(Shell shell, Output output) {
        if (output == Output.PICTURE) {
            PictureDialog dialog = new PictureDialog(shell);
            return dialog.open() == Window.OK ? Optional.of(Wishes.usual().with(dialog.options())) : Optional.empty();
        }
        if (output == Output.REPORT) {
            ReportDialog dialog = new ReportDialog(shell);
            return dialog.open() == Window.OK ? Optional.of(Wishes.usual().with(dialog.format())) : Optional.empty();
        }
        return Optional.of(Wishes.usual());
    }

    private static void write(Shell shell, Output output, Wishes wishes, Map<Source, Path> files) {
        new OutputWork(output, wishes, files, result -> {
            if (!shell.isDisposed()) {
                tell(shell, result);
            }
        }).schedule();
    }

    /** Tells what came of it and offers to look at it. */
    static void tell(Shell shell, OutputWork.Result result) {
        if (!result.failed().isEmpty()) {
            MessageDialog.openError(shell, "Not written", String.join("\n", result.failed()));
        }
        if (result.written().isEmpty()) {
            return;
        }
        Path first = result.written().get(0);
        boolean single = result.written().size() == 1;
        String[] buttons = single ? new String[] {"Open", "Show in folder", "Close"}
                : new String[] {"Show in folder", "Close"};
        int answer = MessageDialog.open(MessageDialog.INFORMATION, shell, "Written", single ? first + " is written."
                : result.written().size() + " files are written.", SWT.NONE, buttons);
        if (single && answer == 0) {
            Program.launch(first.toString());
        } else if (answer == (single ? 1 : 0)) {
            Program.launch(first.getParent().toString());
        }
    }
}
