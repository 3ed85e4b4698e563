/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.inks.read;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.pollex.colour.ColourText;
import org.pollex.colour.Lab;
import org.pollex.colour.cgats.CgatsException;
import org.pollex.colour.cgats.CgatsReader;
import org.pollex.colour.cgats.MeasuredSample;

/** Asks for a file of measurements and for the two samples in it that are the ink over white and over black. */
public final class ReadCardDialog extends TitleAreaDialog {

    private static final String TITLE = "Read measurements";
    private static final String TASK = "Choose the file, then the samples measured over white and over black.";
    private static final int PAUSE = 250;
    private static final int ROWS = 12;

    private Text file;
    private Table table;
    private Label whiteLabel;
    private Label blackLabel;
    private Button useWhite;
    private Button useBlack;
    private Chips chips;
    private List<MeasuredSample> samples = List.of();
    private MeasuredSample white;
    private MeasuredSample black;
    private String name = "";
    private int asked;

    /** A dialog over a shell. */
    public ReadCardDialog(Shell shell) {
        super(shell);
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    /** Colour over white; only after OK. */
    public Lab white() {
        return white.colour();
    }

    /** Colour over black, if a sample was chosen for it. */
    public Optional<Lab> black() {
        return Optional.ofNullable(black).map(MeasuredSample::colour);
    }

    /** Name of the file that was read. */
    public String fileName() {
        return name;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(TITLE);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        setTitle(TITLE);
        setMessage(TASK);
        Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
        GridLayoutFactory.swtDefaults().margins(12, 8).numColumns(3).applyTo(area);
        new Label(area, SWT.NONE).setText("&File:");
        file = new Text(area, SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, false).hint(420, SWT.DEFAULT).applyTo(file);
        file.addListener(SWT.Modify, event -> ask());
        Button browse = new Button(area, SWT.PUSH);
        browse.setText("B&rowse…");
        browse.addListener(SWT.Selection, event -> browse());
        Label list = new Label(area, SWT.NONE);
        list.setText("&Samples:");
        GridDataFactory.fillDefaults().span(3, 1).applyTo(list);
        table = new Table(area, SWT.BORDER | SWT.VIRTUAL | SWT.FULL_SELECTION | SWT.SINGLE);
        table.setHeaderVisible(true);
        GridDataFactory.fillDefaults().grab(true, true).span(3, 1).hint(SWT.DEFAULT, table.getItemHeight() * ROWS)
                .applyTo(table);
        column("Sample", 300);
        column("L* a* b*", 180);
        column("Used", 110);
        chips = new Chips(table.getDisplay());
        table.addDisposeListener(event -> chips.dispose());
        table.addListener(SWT.SetData, event -> fill((TableItem) event.item, event.index));
        table.addListener(SWT.Selection, event -> enable());
        whiteLabel = chosen(area, "Over white:");
        useWhite = use(area, "Use for &white", () -> white = selected());
        blackLabel = chosen(area, "Over black:");
        useBlack = use(area, "Use for &black", () -> black = selected());
        return area;
    }

    private void column(String title, int width) {
        TableColumn column = new TableColumn(table, SWT.NONE);
        column.setText(title);
        column.setWidth(width);
    }

    private static Label chosen(Composite area, String words) {
        new Label(area, SWT.NONE).setText(words);
        Label label = new Label(area, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(label);
        return label;
    }

    private Button use(Composite area, String words, Runnable choice) {
        Button button = new Button(area, SWT.PUSH);
        button.setText(words);
        GridDataFactory.fillDefaults().applyTo(button);
        button.addListener(SWT.Selection, event -> {
            choice.run();
            tell();
        });
        return button;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        super.createButtonsForButtonBar(parent);
        tell();
        file.setFocus();
    }

    private MeasuredSample selected() {
        return samples.get(table.getSelectionIndex());
    }

    private void browse() {
        FileDialog dialog = new FileDialog(getShell(), SWT.OPEN | SWT.SHEET);
        dialog.setText(TITLE);
        dialog.setFilterExtensions(new String[] {"*.txt;*.cgats;*.ti3;*.it8", "*"});
        dialog.setFilterNames(new String[] {"Measurements as CGATS text", "All files"});
        String chosen = dialog.open();
        if (chosen != null) {
            file.setText(chosen);
        }
    }

    /** Reads the file that is named now, in the background, a moment after the last key. */
    private void ask() {
        int now = ++asked;
        samples = List.of();
        white = null;
        black = null;
        table.removeAll();
        tell();
        Path path;
        try {
            path = Path.of(file.getText().strip());
        } catch (InvalidPathException e) {
            setErrorMessage("This is no name of a file.");
            return;
        }
        if (file.getText().isBlank()) {
            setErrorMessage(null);
            return;
        }
        Job reading = Job.createSystem("Reading measurements", monitor -> {
            List<MeasuredSample> found = List.of();
            String trouble = null;
            try {
                found = CgatsReader.read(path);
            } catch (CgatsException e) {
                trouble = e.getMessage();
            }
            show(now, path, found, trouble);
            return Status.OK_STATUS;
        });
        reading.schedule(PAUSE);
    }

    private void show(int ask, Path path, List<MeasuredSample> found, String trouble) {
        table.getDisplay().asyncExec(() -> {
            if (!table.isDisposed() && ask == asked) {
                setErrorMessage(trouble);
                samples = found;
                name = path.getFileName() == null ? "" : path.getFileName().toString();
                Guess guess = Guess.of(found);
                white = guess.white().orElse(null);
                black = guess.black().orElse(null);
                table.setItemCount(found.size());
                if (!found.isEmpty()) {
                    table.select(0);
                }
                tell();
            }
        });
    }

    private void fill(TableItem item, int index) {
        MeasuredSample sample = samples.get(index);
        Image chip = chips.of(sample.colour());
        item.setImage(0, chip);
        item.setText(new String[] {sample.name(), words(sample.colour()),
            sample == white ? "over white" : sample == black ? "over black" : ""});
    }

    private static String words(Lab colour) {
        return String.format(Locale.ROOT, "%.1f  %.1f  %.1f", colour.l(), colour.a(), colour.b());
    }

    private void tell() {
        whiteLabel.setText(white == null ? "none chosen" : words(white));
        blackLabel.setText(black == null ? "none chosen; the ink is then taken as covering" : words(black));
        table.clearAll();
        enable();
        Button ok = getButton(IDialogConstants.OK_ID);
        if (ok != null) {
            ok.setEnabled(white != null);
        }
    }

    private static String words(MeasuredSample sample) {
        return (sample.name() + "   " + ColourText.format(sample.colour())).replace("&", "&&");
    }

    private void enable() {
        boolean one = table.getSelectionIndex() >= 0;
        useWhite.setEnabled(one);
        useBlack.setEnabled(one);
    }
}
