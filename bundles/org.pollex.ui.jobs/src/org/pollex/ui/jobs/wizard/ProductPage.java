/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.wizard;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.pollex.model.catalogue.Entry;
import org.pollex.model.catalogue.Family;
import org.pollex.model.catalogue.Product;
import org.pollex.model.store.EntryNames;
import org.pollex.rules.Suite;
import org.pollex.ui.ScreenImages;
import org.pollex.ui.Swatches;
import org.pollex.ui.JobNames;
import org.pollex.ui.jobs.work.Studio;

/** Which job, and which product. */
public final class ProductPage extends WizardPage {

    private static final int MARGIN = 12;
    private static final int PICTURE = 106;

    private final Choice choice;
    private final Optional<Path> start;
    private final List<Path> jobs = new ArrayList<>();
    private List<Product> shown = List.of();
    private Combo job;
    private Combo family;
    private Table table;
    private PictureRows rows;

    ProductPage(Choice choice, Optional<Path> start) {
        super("product", "New design: product", null);
        this.choice = choice;
        this.start = start;
        setDescription("What is printed on? Dashes mark where art prints well and lasts.");
    }

    @Override
    public void createControl(Composite parent) {
        Composite area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(MARGIN, MARGIN).spacing(10, 8).applyTo(area);
        JobForm.label(area, "&Job:");
        job = new Combo(area, SWT.READ_ONLY);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(job);
        JobForm.label(area, "&Family:");
        family = new Combo(area, SWT.READ_ONLY);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(family);
        Label product = JobForm.label(area, "&Product:");
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.BEGINNING).applyTo(product);
        table = new Table(area, SWT.BORDER | SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL);
        GridDataFactory.fillDefaults().grab(true, true).hint(SWT.DEFAULT, 300).applyTo(table);
        rows = new PictureRows(table);
        job.addListener(SWT.Selection, event -> choice.load(jobs.get(job.getSelectionIndex())));
        family.addListener(SWT.Selection, event -> fill());
        table.addListener(SWT.Selection, event -> {
            choice.product(shown.get(table.getSelectionIndex()).getId());
            check();
        });
        table.addListener(SWT.DefaultSelection, event -> {
            if (canFlipToNextPage()) {
                getContainer().showPage(getNextPage());
            }
        });
        setControl(area);
        jobs();
        setPageComplete(false);
        choice.whenLoaded(this::loaded);
    }

    private void jobs() {
        try {
            List<IFolder> folders = Studio.jobs();
            folders.forEach(each -> jobs.add(each.getLocation().toPath()));
            JobNames.fill(job, folders);
        } catch (CoreException e) {
            setErrorMessage(e.getMessage());
        }
        if (jobs.isEmpty()) {
            setErrorMessage("There is no job to put the design in; make one with File > New job.");
            job.setEnabled(false);
            return;
        }
        int at = start.map(jobs::indexOf).filter(each -> each >= 0).orElse(0);
        job.select(at);
        choice.load(jobs.get(at));
    }

    private void loaded() {
        if (table.isDisposed()) {
            return;
        }
        setMessage(choice.trouble().isEmpty() ? null : choice.trouble(), WARNING);
        Suite suite = choice.suite().orElseThrow();
        family.removeAll();
        family.add("All families");
        for (Family each : suite.catalogues().families()) {
            family.add(EntryNames.title(each));
        }
        family.select(0);
        fill();
    }

    private void fill() {
        Suite suite = choice.suite().orElseThrow();
        int only = family.getSelectionIndex() - 1;
        shown = suite.catalogues().products().stream().filter(each -> only < 0
                || suite.catalogues().families().get(only).getId().equals(each.getFamily())).toList();
        rows.clear();
        List<Supplier<Optional<BufferedImage>>> pictures = new ArrayList<>();
        int backdrop = ScreenImages.rgb(table.getBackground());
        String material = suite.catalogues().materials().get(0).getId();
        for (Product each : shown) {
            TableItem item = new TableItem(table, SWT.NONE);
            item.setText(EntryNames.title(each) + (each.getDescription() == null ? "" : "\n" + each.getDescription()));
            pictures.add(() -> Swatches.item(suite, each.getId(), material, true, PICTURE, backdrop));
        }
        rows.draw(pictures);
        int at = Math.max(0, shown.stream().map(Entry::getId).toList().indexOf(choice.product()));
        if (!shown.isEmpty()) {
            table.select(at);
            choice.product(shown.get(at).getId());
        }
        check();
    }

    private void check() {
        setPageComplete(choice.suite().isPresent() && table.getSelectionIndex() >= 0);
    }
}
