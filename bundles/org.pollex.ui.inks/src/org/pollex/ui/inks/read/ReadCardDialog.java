/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.inks.read;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
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
import org.pollex.colour.film.FilmModel;

/**
 * Asks for a file of measurements and for the samples in it that are the ink over white and over black. When the bare
 * card was measured too, the colours are worked out for the usual card, which the catalogue goes by.
 */
public final class ReadCardDialog extends TitleAreaDialog {

    /** What a sample can be. */
    private enum Part {
        WHITE("Ink over white:", "Use for &white", "over white", "none chosen"),
        BLACK("Ink over black:", "Use for &black", "over black", "none chosen; the ink is taken as covering"),
        BARE_WHITE("Bare white card:", "Use for b&are white", "bare white",
                "as usual   " + ColourText.format(FilmModel.WHITE_CARD)),
        BARE_BLACK("Bare black card:", "Use for bare blac&k", "bare black",
                "as usual   " + ColourText.format(FilmModel.BLACK_CARD));

        private final String words;
        private final String button;
        private final String used;
        private final String none;

        Part(String words, String button, String used, String none) {
            this.words = words;
            this.button = button;
            this.used = used;
            this.none = none;
        }
    }

    private static final String TITLE = "Read measurements";
    private static final String TASK = "Choose the file, then the samples. With the bare card, colours are worked out "
            + "for the usual one.";
    private static final int PAUSE = 250;
    private static final int ROWS = 12;

    private Text file;
    private Table table;
    private final Map<Part, Label> labels = new EnumMap<>(Part.class);
    private final Map<Part, Button> uses = new EnumMap<>(Part.class);
    private Chips chips;
    private List<MeasuredSample> samples = List.of();
    private final Map<Part, MeasuredSample> chosen = new EnumMap<>(Part.class);
    private String name = "";
    private int asked;

    /** A dialog over a shell. */
    public ReadCardDialog(Shell shell) {
        super(shell);
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    /** Colour over white; only after OK. */
    public Lab white() {
        return colours().get(0);
    }

    /** Colour over black, if a sample was chosen for it. */
    public Optional<Lab> black() {
        return colours().stream().skip(1).findFirst();
    }

    /** The colours over the usual card; those that were measured when nothing is known of another card. */
    private List<Lab> colours() {
        Lab white = chosen.get(Part.WHITE).colour();
        if (!chosen.containsKey(Part.BLACK)) {
            return List.of(white);
        }
        Lab black = chosen.get(Part.BLACK).colour();
        if (!chosen.containsKey(Part.BARE_WHITE) && !chosen.containsKey(Part.BARE_BLACK)) {
            return List.of(white, black);
        }
        return FilmModel.spectral().onCards(white, card(Part.BARE_WHITE, FilmModel.WHITE_CARD), black,
                card(Part.BARE_BLACK, FilmModel.BLACK_CARD)).orElse(List.of(white, black));
    }

    private Lab card(Part part, Lab usual) {
        return chosen.containsKey(part) ? chosen.get(part).colour() : usual;
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
        for (Part each : Part.values()) {
            labels.put(each, chosen(area, each.words));
            uses.put(each, use(area, each));
        }
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

    private Button use(Composite area, Part part) {
        Button button = new Button(area, SWT.PUSH);
        button.setText(part.button);
        GridDataFactory.fillDefaults().applyTo(button);
        button.addListener(SWT.Selection, event -> {
            chosen.put(part, selected());
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
        chosen.clear();
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
                guess.white().ifPresent(each -> chosen.put(Part.WHITE, each));
                guess.black().ifPresent(each -> chosen.put(Part.BLACK, each));
                guess.bareWhite().ifPresent(each -> chosen.put(Part.BARE_WHITE, each));
                guess.bareBlack().ifPresent(each -> chosen.put(Part.BARE_BLACK, each));
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
            chosen.entrySet().stream().filter(each -> each.getValue() == sample).map(each -> each.getKey().used)
                    .collect(Collectors.joining(", "))});
    }

    private static String words(Lab colour) {
        return String.format(Locale.ROOT, "%.1f  %.1f  %.1f", colour.l(), colour.a(), colour.b());
    }

    private void tell() {
        for (Part each : Part.values()) {
            labels.get(each).setText(chosen.containsKey(each) ? words(chosen.get(each)) : each.none);
        }
        table.clearAll();
        enable();
        Button ok = getButton(IDialogConstants.OK_ID);
        if (ok != null) {
            ok.setEnabled(chosen.containsKey(Part.WHITE));
        }
    }

    private static String words(MeasuredSample sample) {
        return (sample.name() + "   " + ColourText.format(sample.colour())).replace("&", "&&");
    }

    private void enable() {
        boolean one = table.getSelectionIndex() >= 0;
        uses.values().forEach(each -> each.setEnabled(one));
    }
}
