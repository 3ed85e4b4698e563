/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.inks.swatch;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.locationtech.jts.geom.Coordinate;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Lab;
import org.pollex.model.catalogue.Catalogue;
import org.pollex.model.catalogue.Material;
import org.pollex.model.store.EntryNames;
import org.pollex.model.store.StoreException;
import org.pollex.print.FilmColour;
import org.pollex.print.stock.SwatchShot;
import org.pollex.rules.Suite;
import org.pollex.ui.inks.Field;
import org.pollex.ui.inks.swatch.SwatchPhoto.Tool;

/**
 * Takes the swatch picture of a material from a photograph: which part of it is the stock, which patch is a known grey,
 * how wide it is; shows at once what an item of it looks like; keeps it in the studio's catalogue. Cancel leaves
 * everything as it is; the photograph is never changed.
 */
public final class SwatchDialog extends TitleAreaDialog {

    private static final String TITLE = "Swatch of a material";
    private static final String TASK = "From a photograph of the bare stock. It is copied beside the studio's "
            + "catalogue and stays as it is.";
    private static final int GREY = 50;

    private final Path catalogue;
    private final Catalogue own;
    private final Suite suite;
    private SwatchPhoto photo;
    private BoxFields crop;
    private BoxFields grey;
    private PointFields points;
    private Field<Double> lightness;
    private Field<OptionalDouble> width;
    private OptionalDouble apart = OptionalDouble.empty();
    private MaterialChoice choice;
    private Button colour;
    private Label mean;
    private SwatchPreview preview;
    private Optional<Lab> seen = Optional.empty();

    /**
     * @param catalogue  where it is kept; need not be there
     * @param own        what that file has
     * @param suite      what is seen beside the file
     */
    public SwatchDialog(Shell shell, Path catalogue, Catalogue own, Suite suite) {
        super(shell);
        this.catalogue = catalogue;
        this.own = own;
        this.suite = suite;
        setShellStyle(getShellStyle() | SWT.RESIZE);
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
        GridLayoutFactory.swtDefaults().numColumns(2).margins(12, 8).spacing(14, 6).applyTo(area);
        Composite left = new Composite(area, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(left);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(left);
        left(left);
        Composite right = new Composite(area, SWT.NONE);
        GridDataFactory.fillDefaults().grab(false, true).applyTo(right);
        GridLayoutFactory.fillDefaults().numColumns(Field.COLUMNS).applyTo(right);
        right(right);
        return area;
    }

    private void left(Composite left) {
        Button open = new Button(left, SWT.PUSH);
        open.setText("Open &photograph\u2026");
        Composite tools = new Composite(left, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).spacing(12, 0).applyTo(tools);
        GridDataFactory.fillDefaults().align(SWT.END, SWT.CENTER).grab(true, false).applyTo(tools);
        photo = new SwatchPhoto(left, this::marked, this::another);
        GridDataFactory.fillDefaults().grab(true, true).span(2, 1).hint(540, 400).applyTo(photo);
        open.addListener(SWT.Selection, event -> photo.choose("Photograph of a stock"));
        Composite numbers = new Composite(left, SWT.NONE);
        StackLayout stack = new StackLayout();
        numbers.setLayout(stack);
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).applyTo(numbers);
        Composite ofCrop = page(numbers, 5);
        crop = new BoxFields(ofCrop, "the crop", this::lengths, () -> typed(Tool.CROP, crop));
        button(ofCrop, "&Use all", "The whole photograph shows the stock", Tool.CROP);
        Composite ofGrey = page(numbers, 6);
        grey = new BoxFields(ofGrey, "the grey patch", this::lengths, () -> typed(Tool.GREY, grey));
        lightness = lightness(ofGrey);
        button(ofGrey, "With&out", "Leaves the colours of the photograph alone", Tool.GREY);
        points = new PointFields(page(numbers, 3), this::lengths, this::pointed, this::measured);
        tool(tools, "&Crop", "Drag over the part that shows only the stock", Tool.CROP, stack, ofCrop);
        tool(tools, "&Grey card", "Click a grey of known lightness, to take out the cast of the light", Tool.GREY,
                stack, ofGrey);
        tool(tools, "&Two points", "Click two points whose distance you know, to give the scale", Tool.POINTS, stack,
                numbers.getChildren()[2]);
        stack.topControl = ofCrop;
    }

    private static Composite page(Composite numbers, int columns) {
        Composite page = new Composite(numbers, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(columns).spacing(10, 0).applyTo(page);
        return page;
    }

    private Field<Double> lightness(Composite page) {
        Composite one = new Composite(page, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(Field.COLUMNS).applyTo(one);
        GridDataFactory.fillDefaults().applyTo(one);
        Field<Double> field = new Field<>(one, "L* of gre&y",
                "Lightness of the grey, as measured or as printed on the card; 18 % of the light is L* 49.5",
                SwatchDialog::lightness, this::update);
        field.letters(6);
        field.show(Integer.toString(GREY));
        return field;
    }

    private static Double lightness(String text) {
        try {
            double value = Double.parseDouble(text.strip());
            if (value > 0 && value <= 100) {
                return value;
            }
        } catch (NumberFormatException e) {
            // said below
        }
        throw new IllegalArgumentException("The lightness L* of a grey is a number above 0, up to 100, such as 50.");
    }

    private void button(Composite page, String words, String tip, Tool of) {
        Button button = new Button(page, SWT.PUSH);
        button.setText(words);
        button.setToolTipText(tip);
        GridDataFactory.swtDefaults().align(SWT.END, SWT.BEGINNING).applyTo(button);
        button.addListener(SWT.Selection, event -> {
            photo.box(of, Optional.empty());
            marked();
        });
    }

    private void tool(Composite tools, String words, String tip, Tool tool, StackLayout stack, Control numbers) {
        Button button = new Button(tools, SWT.RADIO);
        button.setText(words);
        button.setToolTipText(tip);
        button.setSelection(tool == Tool.CROP);
        button.addListener(SWT.Selection, event -> {
            if (button.getSelection()) {
                photo.tool(tool);
                stack.topControl = numbers;
                numbers.getParent().layout(true, true);
            }
        });
    }

    private void right(Composite right) {
        choice = new MaterialChoice(right, own.getMaterials(), suite.catalogues().materials(), this::update);
        width = new Field<>(right, "&Whole width", "How wide the whole photograph is on the material, such as "
                + "60 mm; two points whose distance is known give it too", PhotoLength::above, () -> {
                    apart = OptionalDouble.empty();
                    marked();
                });
        colour = new Button(right, SWT.CHECK);
        colour.setText("Take the colou&r of the material from it");
        colour.setToolTipText("The mean colour of the stock in the photograph becomes that of the material");
        colour.setSelection(true);
        GridDataFactory.fillDefaults().span(Field.COLUMNS, 1).applyTo(colour);
        mean = new Label(right, SWT.WRAP);
        GridDataFactory.fillDefaults().span(Field.COLUMNS, 1).grab(true, false).hint(300, SWT.DEFAULT).applyTo(mean);
        preview = new SwatchPreview(right, suite, this::seen);
        GridDataFactory.fillDefaults().span(Field.COLUMNS, 1).grab(true, true).hint(300, 190)
                .applyTo(preview.control());
        preview.control().addListener(SWT.Resize, event -> update());
        Label scale = new Label(right, SWT.WRAP);
        scale.setText("At true size, and enlarged.");
        GridDataFactory.fillDefaults().span(Field.COLUMNS, 1).grab(true, false).hint(300, SWT.DEFAULT).applyTo(scale);
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, "&Keep", true);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        update();
    }

    private PhotoLength lengths() {
        OptionalDouble wide = wide();
        return new PhotoLength(wide.isPresent() && photo.isShown()
                ? OptionalDouble.of(photo.pixelsAcross() / wide.getAsDouble()) : OptionalDouble.empty());
    }

    private OptionalDouble wide() {
        return width == null ? OptionalDouble.empty() : width.known().orElse(OptionalDouble.empty());
    }

    /** Another photograph: what was marked in the one before means nothing in it. */
    private void another() {
        apart = OptionalDouble.empty();
        marked();
    }

    /** Something was marked in the photograph, or the scale is another one: the fields follow. */
    private void marked() {
        if (points == null || width == null) {
            return;
        }
        OptionalDouble between = photo.between();
        if (apart.isPresent() && between.isPresent()) {
            width.show(PhotoLength.shown(SwatchShot.width(photo.pixelsAcross(), between.getAsDouble(),
                    apart.getAsDouble())));
        }
        PhotoLength length = lengths();
        crop.show(photo.box(Tool.CROP));
        grey.show(photo.box(Tool.GREY));
        for (int i = 0; i < 2; i++) {
            points.show(i, photo.point(i).orElse(null), length);
        }
        points.show(apart.isPresent() ? apart : between.isPresent() && length.perMm().isPresent()
                ? OptionalDouble.of(between.getAsDouble() / length.perMm().getAsDouble()) : OptionalDouble.empty());
        update();
    }

    private void typed(Tool of, BoxFields fields) {
        photo.box(of, fields.box());
        update();
    }

    private void pointed(int index, Coordinate at) {
        photo.point(index, at);
        marked();
    }

    private void measured() {
        apart = points.distance();
        marked();
    }

    private Optional<SwatchShot> shot() {
        if (!photo.isShown() || wide().isEmpty() || !complaint().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new SwatchShot(photo.file(), wide().getAsDouble(), photo.box(Tool.CROP),
                photo.box(Tool.GREY), lightness.known().orElse((double) GREY)));
    }

    private String complaint() {
        for (String each : new String[] {crop.complaint(), grey.complaint(), lightness.complaint(), points.complaint(),
            width.complaint()}) {
            if (!each.isEmpty()) {
                return each;
            }
        }
        return "";
    }

    /** What is chosen changed: it is looked at anew. */
    private void update() {
        Button keep = getButton(IDialogConstants.OK_ID);
        if (keep == null) {
            return;
        }
        seen = Optional.empty();
        keep.setEnabled(false);
        mean.setText("");
        setErrorMessage(complaint().isEmpty() ? null : complaint());
        Optional<SwatchShot> shot = shot();
        if (shot.isPresent()) {
            setMessage(choice.trouble().isEmpty() ? TASK : choice.trouble());
            preview.show(shot.get(), choice.material());
        } else {
            setMessage(photo.isShown() ? "Give the width of the whole photograph, or two points and their distance."
                    : TASK);
            preview.nothing(photo.isShown() ? "The scale is not known yet." : "No photograph yet.");
        }
    }

    private void seen(SwatchPreview.Seen now) {
        seen = now.mean();
        setErrorMessage(now.trouble().isEmpty() ? null : now.trouble());
        Optional<Material> like = choice.chosen().filter(each -> each.getLab() != null);
        mean.setText(now.mean().map(lab -> words(lab) + like.map(each -> String.format(Locale.ROOT,
                "; %.1f (CIEDE2000) from that of %s so far", DeltaE.ciede2000(FilmColour.lab(each.getLab()), lab),
                EntryNames.title(each))).orElse("") + ".").orElse("").replace("&", "&&"));
        mean.requestLayout();
        getButton(IDialogConstants.OK_ID).setEnabled(now.trouble().isEmpty() && seen.isPresent()
                && choice.trouble().isEmpty());
    }

    private static String words(Lab lab) {
        return String.format(Locale.ROOT, "Mean colour L* %.1f, a* %.1f, b* %.1f", lab.l(), lab.a(), lab.b());
    }

    @Override
    protected void okPressed() {
        Optional<SwatchShot> shot = shot();
        if (shot.isEmpty() || seen.isEmpty()) {
            return;
        }
        Material material = choice.material();
        if (colour.getSelection() || material.getLab() == null) {
            material.setLab(SwatchPreview.colour(seen.get()));
            material.setSource("Photograph: " + photo.file().getFileName());
        }
        try {
            PlatformUI.getWorkbench().getProgressService().busyCursorWhile(monitor -> {
                monitor.beginTask("Keeping the swatch", -1);
                try {
                    shot.get().keep(catalogue, material);
                } catch (StoreException e) {
                    throw new InvocationTargetException(e, e.getMessage());
                }
            });
            super.okPressed();
        } catch (InvocationTargetException e) {
            setErrorMessage(e.getCause().getMessage());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
