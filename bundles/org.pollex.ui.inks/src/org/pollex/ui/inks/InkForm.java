/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.inks;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.pollex.colour.ColourText;
import org.pollex.colour.Lab;
import org.pollex.edit.ChangeInkCommand;
import org.pollex.edit.ChangeInkCommand.Values;
import org.pollex.model.LabColour;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.InkKind;
import org.pollex.model.store.EntryNames;
import org.pollex.print.Drawdown;
import org.pollex.ui.inks.read.ReadCardDialog;

/**
 * The fields of one ink. What is typed is shown on the materials at once and becomes one change a moment after the last
 * key, when the field is left, or when {@link #flush()} asks. What cannot be used stays in its field with a sentence.
 */
final class InkForm {

    /** Takes what the form makes of an ink. */
    interface Owner {

        /** The ink shall be so from now on. */
        void change(String label, Ink ink, Values values);

        /** The ink would look like this one. */
        void preview(Ink look);

        /** What is typed and not yet taken may differ from before. */
        void typing();
    }

    private static final int PAUSE = 700;
    private static final double FILM_MOST = 1000;
    private static final List<InkKind> KINDS = List.of(InkKind.SPOT, InkKind.PROCESS, InkKind.WHITE);
    private static final List<String> KIND_NAMES = List.of("spot colour", "process colour", "white");

    private final Composite area;
    private final Owner owner;
    private final Label id;
    private final Field<String> name;
    private final Combo kind;
    private final Field<Optional<Lab>> white;
    private final Field<Optional<Lab>> black;
    private final Field<Double> film;
    private final Field<String> description;
    private final Field<String> source;
    private final Label verdict;
    private final List<Field<?>> fields;
    private final List<Button> buttons = new ArrayList<>();
    private Ink ink;
    private boolean editable;
    private boolean pending;
    private boolean taking;
    private int typed;

    InkForm(Composite parent, Owner owner) {
        this.owner = owner;
        area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(Field.COLUMNS).applyTo(area);
        name = new Field<>(area, "&Name", "Shown to everybody who chooses inks", InkForm::name, this::typed);
        white = Field.colour(area, "Colour over &white", "L* a* b* (D50, 2 degrees) such as 52.1 -3 20, or a screen "
                + "colour such as #1a2b3c; two rows at once fill both", text -> Optional.of(ColourText.read(text)),
                this::typed);
        black = Field.colour(area, "Colour over &black", "The same film on the black of the card; empty when it was "
                + "not measured", text -> text.isBlank() ? Optional.empty() : Optional.of(ColourText.read(text)),
                this::typed);
        actions();
        verdict = new Label(area, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(220, SWT.DEFAULT).span(Field.COLUMNS, 1)
                .applyTo(verdict);
        film = new Field<>(area, "&Film, \u00b5m", "Thickness of the dry film on the card, micrometres",
                InkForm::film, this::typed);
        new Label(area, SWT.NONE).setText("&Kind:");
        kind = new Combo(area, SWT.READ_ONLY);
        kind.setItems(KIND_NAMES.toArray(String[]::new));
        kind.setToolTipText("White is laid below the others where a method does so; process colours are mixed");
        GridDataFactory.fillDefaults().grab(true, false).span(Field.COLUMNS - 1, 1).applyTo(kind);
        kind.addListener(SWT.Selection, event -> {
            typed();
            flush();
        });
        description = new Field<>(area, "&Description", "What else is worth knowing", String::strip, this::typed);
        source = new Field<>(area, "Sou&rce", "Where the numbers come from", String::strip, this::typed);
        new Label(area, SWT.NONE).setText("Id in designs:");
        id = new Label(area, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).span(Field.COLUMNS - 1, 1).applyTo(id);
        fields = List.of(name, white, black, film, description, source);
        for (Field<?> each : fields) {
            each.text().addListener(SWT.FocusOut, event -> flush());
            each.text().addListener(SWT.DefaultSelection, event -> flush());
        }
        for (Field<?> each : List.of(white, black)) {
            each.text().addListener(SWT.Verify, this::pasted);
        }
        show(null, false);
    }

    private void actions() {
        new Label(area, SWT.NONE).setVisible(false);
        Composite row = new Composite(area, SWT.NONE);
        GridDataFactory.fillDefaults().span(Field.COLUMNS - 1, 1).applyTo(row);
        GridLayoutFactory.fillDefaults().numColumns(3).applyTo(row);
        button(row, "&Paste both", "Takes two rows of L* a* b* from the clipboard: over white, then over black",
                this::paste);
        button(row, "&Swap", "Changes the two colours over", this::swap);
        button(row, "M&easurements…", "Takes both colours out of a file of a measuring program (CGATS text)",
                this::measurements);
    }

    private void button(Composite row, String words, String tip, Runnable action) {
        Button button = new Button(row, SWT.PUSH);
        button.setText(words);
        button.setToolTipText(tip);
        button.addListener(SWT.Selection, event -> action.run());
        buttons.add(button);
    }

    Composite area() {
        return area;
    }

    /** Puts the keys into the first field that wants a value. */
    void edit() {
        (white.known().isEmpty() ? white : name).text().setFocus();
    }

    private static String name(String text) {
        if (text.isBlank()) {
            throw new IllegalArgumentException("An ink needs a name to be chosen by; type one.");
        }
        if (!text.codePoints().allMatch(each -> each >= ' ' && each != 0x7f)) {
            throw new IllegalArgumentException("A name is letters and signs in one line; take the others out.");
        }
        return text.strip();
    }

    private static double film(String text) {
        String number = text.strip();
        if (number.matches("\\d*,\\d+")) {
            throw new IllegalArgumentException("Write decimals with a point: " + number.replace(',', '.') + ".");
        }
        if (!number.matches("\\d{1,6}(\\.\\d{0,6})?|\\.\\d{1,6}") || Double.parseDouble(number) > FILM_MOST) {
            throw new IllegalArgumentException("A film is a number of micrometres from 0 to " + (int) FILM_MOST
                    + ", such as 8.");
        }
        return Double.parseDouble(number);
    }

    /** Shows an ink, or that there is none; what was typed before is taken first. */
    void show(Ink shown, boolean mayChange) {
        boolean same = shown == ink && mayChange == editable;
        if (!same) {
            flush();
        }
        ink = shown;
        editable = mayChange && shown != null;
        for (Field<?> each : fields) {
            each.text().setEditable(editable);
            each.text().setEnabled(shown != null);
        }
        kind.setEnabled(editable);
        buttons.forEach(each -> each.setEnabled(editable));
        // what is being typed keeps its spelling
        if (!same || !pending && !taking) {
            fill();
        }
        look();
    }

    private void fill() {
        pending = false;
        Values values = ink == null ? null : Values.of(ink);
        name.show(values == null ? "" : EntryNames.of(ink));
        kind.select(values == null ? -1 : KINDS.indexOf(values.kind()));
        white.show(values == null ? "" : values.white().map(InkForm::text).orElse(""));
        black.show(values == null ? "" : values.black().map(InkForm::text).orElse(""));
        film.show(values == null ? "" : plain(values.film()));
        description.show(values == null ? "" : values.description());
        source.show(values == null ? "" : values.source());
        id.setText(ink == null || ink.getId() == null ? "" : ink.getId().replace("&", "&&"));
        if (ink == null) {
            fields.forEach(each -> each.say(""));
        }
    }

    private static String text(LabColour colour) {
        return ColourText.format(new Lab(colour.l(), colour.a(), colour.b()));
    }

    private static String plain(double value) {
        return String.format(Locale.ROOT, "%.3f", value).replaceFirst("\\.?0+$", "");
    }

    private void typed() {
        pending = true;
        look();
        owner.typing();
        int now = ++typed;
        area.getDisplay().timerExec(PAUSE, () -> {
            if (!area.isDisposed() && now == typed) {
                flush();
            }
        });
    }

    /** Whether something was typed that is not yet taken. */
    boolean pending() {
        return pending;
    }

    /** Takes what was typed as far as it can be used. */
    void flush() {
        if (!pending || ink == null || !editable || area.isDisposed()) {
            return;
        }
        pending = fields.stream().anyMatch(each -> !each.complaint().isEmpty());
        Values now = values();
        Values before = Values.of(ink);
        if (!now.equals(before)) {
            taking = true;
            owner.change(label(before, now), ink, now);
            taking = false;
        }
        owner.typing();
    }

    private static String label(Values before, Values now) {
        return !before.name().equals(now.name()) ? "Rename ink" : before.kind() != now.kind() ? "Change kind of ink"
                : before.film() != now.film() ? "Change film of ink"
                : !before.white().equals(now.white()) || !before.black().equals(now.black()) ? "Change colour of ink"
                : "Change words on ink";
    }

    /** What is typed; of a field that cannot be used what the ink has. */
    private Values values() {
        Values old = Values.of(ink);
        String typedName = name.known().orElse(old.name());
        return new Values(typedName.isBlank() ? ink.getId() : typedName,
                kind.getSelectionIndex() < 0 ? old.kind() : KINDS.get(kind.getSelectionIndex()),
                colour(white, old.white()), colour(black, old.black()),
                film.text().getText().equals(plain(old.film())) ? old.film() : film.known().orElse(old.film()),
                description.known().orElse(old.description()), source.known().orElse(old.source()));
    }

    private static Optional<LabColour> colour(Field<Optional<Lab>> field, Optional<LabColour> old) {
        if (field.known().isEmpty() || old.map(InkForm::text).orElse("").equals(field.text().getText())) {
            return old;
        }
        return field.known().get().map(each -> new LabColour(each.l(), each.a(), each.b()));
    }

    /** The first field that cannot be used, with what is wrong. */
    Optional<String> trouble() {
        return wrong().map(each -> each.name() + ": " + each.complaint());
    }

    /** Puts the keys into the first field that cannot be used. */
    void editWrong() {
        wrong().ifPresent(each -> each.text().setFocus());
    }

    private Optional<Field<?>> wrong() {
        return fields.stream().filter(each -> editable && pending && !each.complaint().isEmpty()).findFirst();
    }

    private void look() {
        if (ink == null) {
            verdict.setText("");
            return;
        }
        Ink look = EcoreUtil.copy(ink);
        if (editable) {
            new ChangeInkCommand("Look", look, values()).execute();
        }
        Drawdown drawdown = Drawdown.of(look);
        verdict.setText((drawdown.doubtful() ? "\u26A0 " : "") + drawdown.cover().map(each -> String.format(Locale.ROOT,
                "Contrast ratio %.2f: the ink %s. ", drawdown.opacity(), each)).orElse("") + drawdown.sentence());
        verdict.requestLayout();
        owner.preview(look);
    }

    /** Two rows pasted into a field of one are two colours. */
    private void pasted(Event event) {
        if (event.text.strip().contains("\n")) {
            event.doit = false;
            String rows = event.text;
            area.getDisplay().asyncExec(() -> {
                if (!area.isDisposed()) {
                    rows(rows);
                }
            });
        }
    }

    private void paste() {
        Clipboard clipboard = new Clipboard(area.getDisplay());
        try {
            Object text = clipboard.getContents(TextTransfer.getInstance());
            rows(text instanceof String words ? words : "");
        } finally {
            clipboard.dispose();
        }
    }

    private void rows(String text) {
        try {
            List<Lab> colours = ColourText.rows(text);
            if (colours.size() > 2) {
                white.say("There are " + colours.size() + " rows; copy the one over white and the one over black.");
                return;
            }
            take(colours.get(0), colours.size() > 1 ? Optional.of(colours.get(1)) : Optional.empty());
        } catch (IllegalArgumentException e) {
            white.say("What was copied cannot be used. " + e.getMessage());
        }
    }

    private void take(Lab overWhite, Optional<Lab> overBlack) {
        white.show(ColourText.format(overWhite));
        overBlack.ifPresent(each -> black.show(ColourText.format(each)));
        typed();
        flush();
    }

    private void swap() {
        String over = white.text().getText();
        white.show(black.text().getText());
        black.show(over);
        typed();
        flush();
    }

    private void measurements() {
        ReadCardDialog dialog = new ReadCardDialog(area.getShell());
        dialog.create();
        if (dialog.open() == org.eclipse.jface.window.Window.OK) {
            if (source.text().getText().isBlank()) {
                source.show("Measured: " + dialog.fileName());
            }
            take(dialog.white(), dialog.black());
        }
    }
}
