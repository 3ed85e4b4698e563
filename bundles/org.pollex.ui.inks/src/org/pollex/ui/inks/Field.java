/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.inks;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;

/**
 * A row of a form: a label, a field, a chip where the value is a colour, and below it one sentence while what is typed
 * cannot be used.
 *
 * @param <T> what the field holds
 */
public final class Field<T> {

    /** Columns of the form. */
    public static final int COLUMNS = 3;

    private static final int CHIP = 40;
    private static final int WIDTH = 150;

    private final String name;
    private final Text text;
    private final Label complaint;
    private final Function<String, T> reading;
    private Canvas chip;
    private String said = "";
    private boolean showing;

    /**
     * @param form     with a grid of {@link #COLUMNS}
     * @param name     words of the label, the mnemonic marked
     * @param reading  makes the value of the text, or throws IllegalArgumentException with a sentence
     * @param typed    runs after every change that a person makes
     */
    public Field(Composite form, String name, String tip, Function<String, T> reading, Runnable typed) {
        this.name = name.replace("&", "");
        this.reading = reading;
        new Label(form, SWT.NONE).setText(name + ":");
        text = new Text(form, SWT.BORDER);
        text.setToolTipText(tip);
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).span(COLUMNS - 1, 1).applyTo(text);
        complaint = new Label(form, SWT.WRAP);
        complaint.setVisible(false);
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).span(COLUMNS, 1).exclude(true)
                .applyTo(complaint);
        text.addListener(SWT.Modify, event -> {
            judge();
            if (!showing) {
                typed.run();
            }
        });
    }

    /** A field for a colour; its chip shows the colour. */
    static Field<Optional<Lab>> colour(Composite form, String name, String tip, Function<String, Optional<Lab>> reading,
            Runnable typed) {
        Field<Optional<Lab>> field = new Field<>(form, name, tip, reading, typed);
        ((GridData) field.text.getLayoutData()).horizontalSpan = 1;
        field.chip = new Canvas(form, SWT.BORDER);
        field.chip.moveAbove(field.complaint);
        GridDataFactory.swtDefaults().align(SWT.FILL, SWT.CENTER).hint(CHIP, CHIP / 2).applyTo(field.chip);
        field.chip.addListener(SWT.Paint, event -> {
            Rectangle area = field.chip.getClientArea();
            field.known().flatMap(each -> each).ifPresent(lab -> {
                int rgb = Srgb.of(lab);
                event.gc.setBackground(new Color(rgb >> 16 & 0xff, rgb >> 8 & 0xff, rgb & 0xff));
                event.gc.fillRectangle(area);
            });
        });
        return field;
    }

    /** Its text. */
    public Text text() {
        return text;
    }

    /** Makes it wide enough for so many letters, whatever their size. */
    public void letters(int count) {
        GC gc = new GC(text);
        double letter = gc.getFontMetrics().getAverageCharacterWidth();
        gc.dispose();
        ((GridData) text.getLayoutData()).widthHint = (int) Math.ceil(letter * count);
    }

    /** Its words, without the mnemonic. */
    public String name() {
        return name;
    }

    /** What is wrong with the text; empty when it can be used. */
    public String complaint() {
        return said;
    }

    /** The first that is said below some fields; empty when all can be used. */
    public static String complaint(List<? extends Field<?>> fields) {
        return fields.stream().map(Field::complaint).filter(each -> !each.isEmpty()).findFirst().orElse("");
    }

    /** The value; empty while the text cannot be used. */
    public Optional<T> known() {
        try {
            return Optional.of(reading.apply(text.getText()));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** Shows a value in place of what is there, without telling of it. */
    public void show(String value) {
        if (!text.getText().equals(value)) {
            showing = true;
            text.setText(value);
            showing = false;
        }
        judge();
    }

    private void judge() {
        String now = "";
        try {
            reading.apply(text.getText());
        } catch (IllegalArgumentException e) {
            now = e.getMessage();
        }
        say(text.getEditable() ? now : "");
        if (chip != null) {
            chip.redraw();
        }
    }

    /** Puts a sentence below the field; none when empty. */
    public void say(String sentence) {
        if (!said.equals(sentence)) {
            said = sentence;
            complaint.setText(sentence.isEmpty() ? "" : "\u26A0 " + sentence.replace("&", "&&"));
            complaint.setVisible(!sentence.isEmpty());
            ((GridData) complaint.getLayoutData()).exclude = sentence.isEmpty();
            complaint.requestLayout();
        }
    }
}
