/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.retone;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.Material;
import org.pollex.model.store.EntryNames;
import org.pollex.print.retone.RetoneStyle;
import org.pollex.ui.ScreenImages;
import org.pollex.ui.Swatches;
import org.pollex.ui.jobs.wizard.InkChips;
import org.pollex.ui.jobs.wizard.PictureRows;

/** Material, ink, style and name of a sibling, with the pictures of what it replaces and of what it is. */
final class RetonePage extends WizardPage {

    private static final int MARGIN = 12;
    private static final int CHIP_WIDTH = 40;
    private static final int CHIP_HEIGHT = 22;
    /** What is told of two sides, in lines of text, so that none is cut whatever the size of the letters. */
    private static final int LINES_TOLD = 8;

    private final RetoneChoice choice;
    private final Path folder;
    private Table material;
    private Table ink;
    private PictureRows inkRows;
    private Combo lines;
    private Button grow;
    private Button apart;
    private Text name;
    private Text done;
    private Button stop;
    private Pair pair;
    private boolean named;
    private boolean naming;
    private String trouble = "";

    RetonePage(RetoneChoice choice, Path folder) {
        super("retone", "Re-tone for another material", null);
        this.choice = choice;
        this.folder = folder;
        setDescription("Light stays light and dark stays dark. The design it is made from is not changed.");
    }

    @Override
    public void createControl(Composite parent) {
        Composite area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(MARGIN, MARGIN).spacing(16, 8).applyTo(area);
        Composite left = column(area);
        GridDataFactory.fillDefaults().grab(false, true).hint(250, SWT.DEFAULT).applyTo(left);
        Composite right = column(area);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(right);
        label(left, "&Material:");
        material = rows(left, 150);
        label(left, "&Ink:");
        ink = rows(left, 110);
        inkRows = new PictureRows(ink);
        label(left, "&Lines round dark parts:");
        lines = new Combo(left, SWT.READ_ONLY);
        lines.setItems("Round dark masses", "Round all that is dark", "None");
        lines.select(choice.style().lines().ordinal());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(lines);
        grow = new Button(left, SWT.CHECK);
        grow.setText("&Fuller light parts");
        grow.setToolTipText("Light parts take half of the dark outlines round them, so that thin limbs stay");
        apart = new Button(left, SWT.CHECK);
        apart.setText("&Keep parts apart");
        apart.setToolTipText("Several inks: chooses them so that parts which differ stay apart, even where another ink "
                + "is nearer; hues may change");
        label(left, "&Name:");
        name = new Text(left, SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(name);
        pair = new Pair(right, this::said);
        Composite below = new Composite(right, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(below);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(below);
        done = new Text(below, SWT.READ_ONLY | SWT.MULTI | SWT.WRAP | SWT.V_SCROLL);
        GridDataFactory.fillDefaults().grab(true, false).hint(300,
                done.computeTrim(0, 0, 0, LINES_TOLD * done.getLineHeight()).height).applyTo(done);
        stop = new Button(below, SWT.PUSH);
        stop.setText("&Stop");
        stop.setToolTipText("Stops drawing the pictures; another choice draws them again");
        GridDataFactory.swtDefaults().align(SWT.END, SWT.BEGINNING).applyTo(stop);
        fill();
        listen();
        setControl(area);
    }

    private static Composite column(Composite parent) {
        Composite column = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 5).applyTo(column);
        return column;
    }

    private static void label(Composite parent, String words) {
        new Label(parent, SWT.NONE).setText(words);
    }

    private static Table rows(Composite parent, int height) {
        Table table = new Table(parent, SWT.BORDER | SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL);
        GridDataFactory.fillDefaults().grab(true, true).hint(SWT.DEFAULT, height).applyTo(table);
        return table;
    }

    private void fill() {
        List<Supplier<Optional<BufferedImage>>> swatches = new ArrayList<>();
        int backdrop = ScreenImages.rgb(material.getBackground());
        int rim = ScreenImages.rgb(material.getForeground());
        for (Material each : choice.materials()) {
            new TableItem(material, SWT.NONE).setText(EntryNames.title(each));
            swatches.add(() -> Optional.of(new InkChips(each, CHIP_WIDTH, CHIP_HEIGHT, backdrop, rim).bare()));
        }
        new PictureRows(material).draw(swatches);
        material.select(choice.materials().indexOf(choice.material()));
        material.showSelection();
        new TableItem(ink, SWT.NONE).setText(choice.usualInk());
        for (Ink each : choice.inks()) {
            new TableItem(ink, SWT.NONE).setText(EntryNames.title(each));
        }
        ink.select(0);
        apart.setEnabled(choice.severalInks());
        chips();
        suggest();
    }

    private void chips() {
        int backdrop = ScreenImages.rgb(ink.getBackground());
        int rim = ScreenImages.rgb(ink.getForeground());
        Material on = choice.material();
        List<Supplier<Optional<BufferedImage>>> chips = new ArrayList<>();
        // The surface is looked at by the thread that draws: a photograph takes a while.
        Supplier<InkChips> surface = PictureRows.once(
                () -> new InkChips(on, CHIP_WIDTH, CHIP_HEIGHT, backdrop, rim));
        chips.add(() -> Optional.of(Swatches.blank(CHIP_WIDTH, CHIP_HEIGHT, backdrop)));
        choice.inks().forEach(each -> chips.add(() -> Optional.of(surface.get().of(each))));
        inkRows.draw(chips);
    }

    private void listen() {
        material.addListener(SWT.Selection, event -> {
            choice.material(choice.materials().get(material.getSelectionIndex()));
            suggest();
            chips();
            show();
        });
        ink.addListener(SWT.Selection, event -> {
            int at = ink.getSelectionIndex();
            choice.ink(at <= 0 ? Optional.empty() : Optional.of(choice.inks().get(at - 1)));
            apart.setEnabled(choice.severalInks());
            show();
        });
        lines.addListener(SWT.Selection, event -> styled());
        grow.addListener(SWT.Selection, event -> styled());
        apart.addListener(SWT.Selection, event -> styled());
        name.addModifyListener(event -> {
            named |= !naming;
            choice.name(name.getText());
            check();
        });
        stop.addListener(SWT.Selection, event -> pair.stop());
    }

    private void styled() {
        choice.style(new RetoneStyle(RetoneStyle.Lines.values()[lines.getSelectionIndex()], grow.getSelection(),
                apart.getSelection()));
        show();
    }

    private void suggest() {
        if (!named) {
            naming = true;
            name.setText(choice.suggestion());
            choice.name(name.getText());
            naming = false;
        }
    }

    private void show() {
        trouble = "";
        check();
        pair.show(choice.order(), folder);
    }

    private void said(Pair.Said said) {
        stop.setEnabled(said.busy());
        trouble = said.trouble();
        done.setText(String.join("\n", said.done()));
        check();
    }

    private void check() {
        String wrong = choice.trouble().orElse(trouble);
        setErrorMessage(wrong.isEmpty() ? null : wrong);
        setPageComplete(wrong.isEmpty());
    }

    @Override
    public void setVisible(boolean visible) {
        super.setVisible(visible);
        if (visible) {
            show();
            material.setFocus();
        }
    }
}
