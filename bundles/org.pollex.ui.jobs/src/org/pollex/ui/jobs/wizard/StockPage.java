/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.wizard;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Comparator;
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
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.InkKind;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.Method;
import org.pollex.model.store.EntryNames;
import org.pollex.rules.Suite;
import org.pollex.ui.ScreenImages;
import org.pollex.ui.Swatches;

/** What it is made of, how it is printed, and in which inks. */
final class StockPage extends WizardPage {

    private static final int MARGIN = 12;
    private static final int SWATCH = 52;
    private static final int CHIP_WIDTH = 48;
    private static final int CHIP_HEIGHT = 26;

    private final Choice choice;
    private List<Material> materials = List.of();
    private List<Method> methods = List.of();
    private List<Ink> inks = List.of();
    private Table material;
    private PictureRows materialRows;
    private Combo method;
    private Label about;
    private Button fromArt;
    private Table ink;
    private PictureRows inkRows;

    StockPage(Choice choice) {
        super("stock", "New design: material, method, inks", null);
        this.choice = choice;
        setDescription("What is it made of, and how is it printed?");
    }

    @Override
    public void createControl(Composite parent) {
        Composite area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).equalWidth(true).margins(MARGIN, MARGIN).spacing(16, 8)
                .applyTo(area);
        Composite left = column(area);
        JobForm.label(left, "&Material:");
        material = new Table(left, SWT.BORDER | SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL);
        GridDataFactory.fillDefaults().grab(true, true).hint(SWT.DEFAULT, 320).applyTo(material);
        materialRows = new PictureRows(material);
        Composite right = column(area);
        JobForm.label(right, "Me&thod:");
        method = new Combo(right, SWT.READ_ONLY);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(method);
        about = new Label(right, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(200, SWT.DEFAULT).applyTo(about);
        fromArt = new Button(right, SWT.CHECK);
        fromArt.setText("&Choose the inks from the art");
        fromArt.setSelection(true);
        JobForm.label(right, "&Inks, in printing order:");
        ink = new Table(right, SWT.BORDER | SWT.CHECK | SWT.V_SCROLL);
        GridDataFactory.fillDefaults().grab(true, true).hint(SWT.DEFAULT, 180).applyTo(ink);
        inkRows = new PictureRows(ink);
        material.addListener(SWT.Selection, event -> {
            choice.material(materials.get(material.getSelectionIndex()).getId());
            chips();
        });
        method.addListener(SWT.Selection, event -> methodChosen());
        fromArt.addListener(SWT.Selection, event -> {
            choice.inksFromArt(fromArt.getSelection());
            check();
        });
        ink.addListener(SWT.Selection, event -> {
            if (event.detail == SWT.CHECK) {
                ticked((TableItem) event.item);
            }
        });
        setControl(area);
        setPageComplete(false);
        choice.whenLoaded(this::loaded);
    }

    private static Composite column(Composite parent) {
        Composite column = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(column);
        GridLayoutFactory.fillDefaults().spacing(0, 6).applyTo(column);
        return column;
    }

    private void loaded() {
        if (material.isDisposed()) {
            return;
        }
        Suite suite = choice.suite().orElseThrow();
        materials = suite.catalogues().materials();
        methods = suite.catalogues().methods();
        inks = suite.catalogues().inks().stream()
                .filter(each -> each.getKind() != InkKind.PROCESS && each.getLab() != null)
                .sorted(Comparator.comparing(each -> each.getKind() != InkKind.WHITE)).toList();
        method.removeAll();
        methods.forEach(each -> method.add(EntryNames.title(each)));
        method.select(0);
        material.removeAll();
        ink.removeAll();
        for (Material each : materials) {
            new TableItem(material, SWT.NONE).setText(EntryNames.title(each));
        }
        for (Ink each : inks) {
            new TableItem(ink, SWT.NONE).setText(EntryNames.title(each));
        }
        material.select(0);
        choice.material(materials.get(0).getId());
        methodChosen();
        swatches();
        chips();
    }

    @Override
    public void setVisible(boolean visible) {
        if (visible && choice.suite().isPresent()) {
            swatches();
        }
        super.setVisible(visible);
    }

    private void swatches() {
        Suite suite = choice.suite().orElseThrow();
        String product = choice.product();
        int backdrop = ScreenImages.rgb(material.getBackground());
        List<Supplier<Optional<BufferedImage>>> pictures = new ArrayList<>();
        materials.forEach(each -> pictures.add(
                () -> Swatches.item(suite, product, each.getId(), false, SWATCH, backdrop)));
        materialRows.draw(pictures);
    }

    private void chips() {
        int backdrop = ScreenImages.rgb(ink.getBackground());
        int rim = ScreenImages.rgb(ink.getForeground());
        Material on = materials.get(material.getSelectionIndex());
        List<Supplier<Optional<BufferedImage>>> pictures = new ArrayList<>();
        Supplier<InkChips> chips = PictureRows.once(() -> new InkChips(on, CHIP_WIDTH, CHIP_HEIGHT, backdrop, rim));
        inks.forEach(each -> pictures.add(() -> Optional.of(chips.get().of(each))));
        inkRows.draw(pictures);
    }

    private int most() {
        return choice.method().map(Method::getInksMax).orElse(0);
    }

    private void methodChosen() {
        Method chosen = methods.get(method.getSelectionIndex());
        choice.method(chosen.getId());
        String words = chosen.getDescription() == null ? "" : chosen.getDescription();
        about.setText(words);
        about.getParent().layout();
        for (int i = 0, kept = 0; i < ink.getItemCount(); i++) {
            if (ink.getItem(i).getChecked() && ++kept > most()) {
                ink.getItem(i).setChecked(false);
            }
        }
        check();
    }

    /** A method of one ink swaps it; a method of more refuses one too many. */
    private void ticked(TableItem item) {
        int ticked = 0;
        for (TableItem each : ink.getItems()) {
            if (each.getChecked()) {
                ticked++;
            }
        }
        if (item.getChecked() && ticked > most()) {
            if (most() == 1) {
                for (TableItem each : ink.getItems()) {
                    each.setChecked(each == item);
                }
            } else {
                item.setChecked(false);
                check();
                setMessage(method.getText() + " prints at most " + most() + " inks; untick one first.", WARNING);
                return;
            }
        }
        check();
    }

    private void check() {
        boolean mixed = choice.method().map(Method::isFullColour).orElse(false);
        fromArt.setEnabled(!mixed);
        ink.setEnabled(!mixed && !fromArt.getSelection());
        List<String> ids = new ArrayList<>();
        for (int i = 0; i < ink.getItemCount(); i++) {
            if (ink.getItem(i).getChecked()) {
                ids.add(inks.get(i).getId());
            }
        }
        choice.inks(ids);
        boolean missing = !mixed && !fromArt.getSelection() && ids.isEmpty();
        setErrorMessage(missing ? "Tick an ink, or let the inks be chosen from the art." : null);
        setMessage(null);
        setPageComplete(choice.specified() && !missing);
    }
}
