/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.property;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.DoubleSupplier;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.pollex.editor.measure.Measure;
import org.pollex.editor.measure.MeasureException;
import org.pollex.editor.setting.LengthUnit;

/** Rows of a label and a field. A field gives its value when Enter is pressed or it is left; Escape takes it back. */
final class Form {

    /** Takes what was typed. */
    interface Taking {
        void take(double value);
    }

    private final Composite area;
    private final Consumer<String> trouble;
    private final List<Runnable> refreshes = new java.util.ArrayList<>();
    private boolean enabled = true;

    /** @param trouble takes one sentence when a value cannot be used; empty when all is well again */
    Form(Composite parent, Consumer<String> trouble) {
        this.trouble = trouble;
        area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).applyTo(area);
    }

    Composite area() {
        return area;
    }

    /** Whether anything may be changed; said before rows are added. */
    void enable(boolean on) {
        enabled = on;
    }

    /** Shows all values as they are now; a field that is being typed in keeps its text. */
    void refresh() {
        refreshes.forEach(Runnable::run);
    }

    void heading(String words) {
        Label label = new Label(area, SWT.NONE);
        label.setText(words.replace("&", "&&"));
        label.setFont(org.eclipse.jface.resource.JFaceResources.getFontRegistry().getBold(
                org.eclipse.jface.resource.JFaceResources.DEFAULT_FONT));
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(label);
    }

    /**
     * A number.
     *
     * @param name    with ", mm" where it is a length; the unit that was chosen takes its place
     * @param present the value now; lengths in mm
     * @param taking  takes the value; lengths in mm
     */
    Text number(String name, Measure.Kind kind, DoubleSupplier present, Taking taking) {
        Text[] made = new Text[1];
        LengthUnit unit = kind == Measure.Kind.LENGTH ? LengthUnit.chosen() : LengthUnit.MM;
        String label = name.replace(", mm", ", " + unit.label());
        made[0] = text(label, () -> unit.show(present.getAsDouble()), typed -> {
            try {
                taking.take(Measure.read(typed, kind, present.getAsDouble(), unit.millimetres()));
                trouble.accept("");
            } catch (MeasureException | IllegalArgumentException e) {
                trouble.accept(e.getMessage());
            }
        });
        made[0].setToolTipText(kind == Measure.Kind.LENGTH
                ? (unit == LengthUnit.MM ? "Millimetres" : "Inches")
                        + "; 3/8in, 4mm, 2*1.5+0.25 and 40% are understood." : "A number or a sum; 40% of it too.");
        return made[0];
    }

    Text text(String name, java.util.function.Supplier<String> present, Consumer<String> taking) {
        label(name);
        Text text = new Text(area, SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, false).hint(70, SWT.DEFAULT).applyTo(text);
        text.setEnabled(enabled);
        text.setText(present.get());
        boolean[] typing = {false};
        Runnable take = () -> {
            if (typing[0]) {
                typing[0] = false;
                taking.accept(text.getText());
                if (!text.isDisposed()) {
                    text.setText(present.get());
                    typing[0] = false;
                }
            }
        };
        text.addListener(SWT.Modify, event -> typing[0] = text.isFocusControl() || typing[0]);
        text.addListener(SWT.DefaultSelection, event -> {
            typing[0] = true;
            take.run();
        });
        text.addListener(SWT.FocusOut, event -> take.run());
        text.addListener(SWT.Traverse, event -> {
            if (event.detail == SWT.TRAVERSE_ESCAPE) {
                text.setText(present.get());
                typing[0] = false;
                event.doit = false;
            }
        });
        refreshes.add(() -> {
            if (!typing[0] && !text.isDisposed() && !text.getText().equals(present.get())) {
                text.setText(present.get());
                typing[0] = false;
            }
        });
        return text;
    }

    Button check(String name, java.util.function.BooleanSupplier present, Consumer<Boolean> taking) {
        Button button = new Button(area, SWT.CHECK);
        button.setText(name);
        GridDataFactory.fillDefaults().span(2, 1).applyTo(button);
        button.setEnabled(enabled);
        button.setSelection(present.getAsBoolean());
        button.addListener(SWT.Selection, event -> taking.accept(button.getSelection()));
        refreshes.add(() -> {
            if (!button.isDisposed()) {
                button.setSelection(present.getAsBoolean());
            }
        });
        return button;
    }

    /**
     * A choice.
     *
     * @param names   as the user reads them
     * @param present which one holds now; below 0 for none
     */
    Combo choice(String name, List<String> names, java.util.function.IntSupplier present, Consumer<Integer> taking) {
        label(name);
        Combo combo = new Combo(area, SWT.READ_ONLY);
        GridDataFactory.fillDefaults().grab(true, false).hint(70, SWT.DEFAULT).applyTo(combo);
        combo.setItems(names.toArray(String[]::new));
        combo.setEnabled(enabled);
        select(combo, present.getAsInt());
        combo.addListener(SWT.Selection, event -> taking.accept(combo.getSelectionIndex()));
        refreshes.add(() -> {
            if (!combo.isDisposed()) {
                select(combo, present.getAsInt());
            }
        });
        return combo;
    }

    private static void select(Combo combo, int index) {
        if (index < 0) {
            combo.deselectAll();
        } else {
            combo.select(index);
        }
    }

    private void label(String name) {
        Label label = new Label(area, SWT.NONE);
        label.setText(name + ":");
    }
}
