/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.pictures;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Spinner;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.job.Use;
import org.pollex.model.store.EntryNames;
import org.pollex.print.FilmThickness;
import org.pollex.print.Printed;
import org.pollex.print.PrintedSide;
import org.pollex.print.wear.WearRates;
import org.pollex.print.wear.WornSample;
import org.pollex.rules.CheckContext;
import org.pollex.rules.Measures;
import org.pollex.rules.wear.Calibration;
import org.pollex.rules.wear.Uses;

/**
 * Asks for one worn sample of the design in front: where half of the ink is gone, after how many hours of which use,
 * typed or measured in a photograph; says at once what rate that is and how far it may be off.
 */
final class WearSampleDialog extends TitleAreaDialog {

    private static final double TENTH = 10;

    private final CheckContext context;
    private final Path design;
    private final double farthest;
    private final PrintedSide side;
    private final List<String> inks;
    private Path catalogue;
    private Spinner away;
    private Spinner hours;
    private Combo uses;
    private Combo ink;
    private Label told;
    private Label place;
    private WearRates found;
    private String note = "";

    /**
     * @param context    the print, on which something is printed
     * @param design     its file
     * @param catalogue  where the rate is kept, unless another folder is chosen
     */
    WearSampleDialog(Shell shell, CheckContext context, Path design, Path catalogue) {
        super(shell);
        this.context = context;
        this.design = design.toAbsolutePath().normalize();
        this.catalogue = catalogue;
        this.farthest = context.setting("wear.sample-farthest");
        this.side = context.printed().sides().get(0);
        this.inks = side.inks();
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    /** The catalogue that was chosen. */
    Path catalogue() {
        return catalogue;
    }

    /** The rates that the sample showed. */
    WearRates found() {
        return found;
    }

    /** Where they come from, to be kept beside them. */
    String note() {
        return note;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Calibrate the forecast of wear");
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        setTitle("Calibrate with one worn sample");
        Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(16, 12).applyTo(area);
        away = number(area, "&Half of the ink is gone so far from the tip, mm:", 40, 1);
        hours = number(area, "H&ours of use until then:", 200, 1);
        uses = choice(area, "&Use:");
        Use.VALUES.forEach(each -> uses.add(each.getLiteral()));
        uses.select(Use.VALUES.indexOf(Use.PRACTICE));
        ink = choice(area, "&Ink of the sample:");
        FilmThickness films = FilmThickness.of(context.printed());
        inks.forEach(each -> ink.add(name(each) + ", film of " + Measures.number(films.of(each), 1) + " \u00b5m"));
        ink.select(0);
        Button open = new Button(area, SWT.PUSH);
        open.setText("Open &photograph\u2026");
        new Label(area, SWT.WRAP).setText("No need for one; it helps to find the distance.");
        SamplePhoto photo = new SamplePhoto(area, context.printed().item().width(), this::measured);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, true).hint(560, 280).applyTo(photo);
        open.addListener(SWT.Selection, event -> photo.choose("Photograph of a worn sample"));
        told = new Label(area, SWT.WRAP);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(560, SWT.DEFAULT).applyTo(told);
        Button folder = new Button(area, SWT.PUSH);
        folder.setText("&Kept in\u2026");
        place = new Label(area, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(400, SWT.DEFAULT)
                .applyTo(place);
        folder.addListener(SWT.Selection, event -> folder());
        uses.addListener(SWT.Selection, event -> update());
        ink.addListener(SWT.Selection, event -> update());
        away.setFocus();
        return area;
    }

    private Spinner number(Composite area, String words, int value, int least) {
        new Label(area, SWT.NONE).setText(words);
        Spinner spinner = new Spinner(area, SWT.BORDER);
        spinner.setDigits(1);
        spinner.setMinimum(least);
        spinner.setMaximum(100_000);
        spinner.setIncrement(5);
        spinner.setPageIncrement(50);
        spinner.setSelection(value);
        spinner.addListener(SWT.Modify, event -> update());
        return spinner;
    }

    private Combo choice(Composite area, String words) {
        new Label(area, SWT.NONE).setText(words);
        Combo combo = new Combo(area, SWT.READ_ONLY);
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(combo);
        return combo;
    }

    private String name(String id) {
        return context.printed().inks().stream().filter(each -> each.getId().equals(id)).findFirst()
                .map((Ink each) -> EntryNames.of(each)).orElse("full colour");
    }

    private void measured(OptionalDouble mm) {
        mm.ifPresent(value -> away.setSelection((int) Math.round(value * TENTH)));
    }

    private void folder() {
        DirectoryDialog dialog = new DirectoryDialog(getShell(), SWT.SHEET);
        dialog.setText("Folder of the studio's catalogues");
        dialog.setMessage("Designs in this folder and below will use the rate.");
        dialog.setFilterPath(catalogue.getParent().toString());
        String chosen = dialog.open();
        if (chosen != null) {
            catalogue = Path.of(chosen).toAbsolutePath().normalize().resolve(Calibration.FILE);
            update();
        }
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, "Keep", true);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        update();
    }

    private void update() {
        if (place == null || getButton(IDialogConstants.OK_ID) == null) {
            return;
        }
        Printed printed = context.printed();
        String material = EntryNames.of(printed.material());
        place.setText(catalogue + ", for " + material);
        String wrong = null;
        found = null;
        try {
            WornSample sample = new WornSample(away.getSelection() / TENTH, hours.getSelection() / TENTH);
            Use use = Use.VALUES.get(uses.getSelectionIndex());
            double film = FilmThickness.of(printed).of(inks.get(ink.getSelectionIndex()));
            WearRates usual = Uses.rates(context, use);
            found = sample.calibrated(usual, side.face(), film);
            note = Calibration.note(sample, use.getLiteral(), film, EntryNames.of(printed.item().product()));
            told.setText("This is a rate of " + Measures.number(found.rate(), 2) + " \u00b5m an hour at the tip, "
                    + "against " + Measures.number(usual.rate(), 2) + " until now. "
                    + Calibration.uncertainty(sample.nearer(side.face()), sample.farther(side.face())));
        } catch (IllegalArgumentException e) {
            wrong = e.getMessage();
            told.setText("");
        }
        if (wrong == null && !design.startsWith(catalogue.getParent())) {
            wrong = "Designs look for catalogues in their own folder and those above it; choose one of these.";
        }
        setErrorMessage(wrong);
        setMessage(away.getSelection() / TENTH > farthest
                ? "So far from the tip a small error counts much; mark a sample within "
                        + Measures.number(farthest, 0) + " mm."
                : "One number is found, how fast ink wears off this material. The shape of the wear stays a model.",
                away.getSelection() / TENTH > farthest ? IMessageProvider.WARNING : IMessageProvider.NONE);
        getButton(IDialogConstants.OK_ID).setEnabled(wrong == null);
        told.requestLayout();
    }
}
