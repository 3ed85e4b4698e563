/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.pictures;

import java.awt.image.BufferedImage;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Scale;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.session.Known;
import org.pollex.model.job.Use;
import org.pollex.output.picture.PictureOptions;
import org.pollex.output.picture.WearPicture;
import org.pollex.print.wear.WearForecast;
import org.pollex.print.wear.WearRates;
import org.pollex.rules.CheckContext;
import org.pollex.rules.Measures;
import org.pollex.rules.Suite;
import org.pollex.rules.wear.Uses;

/** What is left of the print after hours of use, by the forecast of wear, with a slider for the hours. */
public final class WearView extends PictureView {

    /** Id of the view. */
    public static final String ID = "org.pollex.ui.pictures.wear";

    private static final int LONGEST = 200;
    private static final double MM_PER_INCH = 25.4;
    private static final double ROOM = 4;

    private volatile int hours = 20;
    private volatile Use use = Use.PRACTICE;
    private volatile Suite suite;
    private Label told;
    private Scale slider;

    @Override
    protected void controls(Composite bar) {
        GridLayoutFactory.swtDefaults().numColumns(5).applyTo(bar);
        new Label(bar, SWT.NONE).setText("&Hours:");
        slider = new Scale(bar, SWT.HORIZONTAL);
        slider.setMinimum(0);
        slider.setMaximum(LONGEST);
        slider.setPageIncrement(20);
        slider.setSelection(hours);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(slider);
        new Label(bar, SWT.NONE).setText("&Use:");
        Combo uses = new Combo(bar, SWT.READ_ONLY);
        for (Use each : Use.VALUES) {
            uses.add(each.getLiteral());
        }
        uses.select(Use.VALUES.indexOf(use));
        new Label(bar, SWT.NONE);
        told = new Label(bar, SWT.WRAP);
        GridDataFactory.fillDefaults().span(5, 1).grab(true, false).hint(60, SWT.DEFAULT).applyTo(told);
        told.setText("A model: nothing is forecast yet.");
        slider.addListener(SWT.Selection, event -> {
            hours = slider.getSelection();
            repaint();
        });
        uses.addListener(SWT.Selection, event -> {
            use = Use.VALUES.get(uses.getSelectionIndex());
            repaint();
        });
    }

    /** The slider for the hours. */
    public Scale slider() {
        return slider;
    }

    /** What the view says. */
    public String told() {
        return told.getText();
    }

    @Override
    protected void follow() {
        if (active() != null) {
            suite = active().session().map(DesignSession::suite).orElse(null);
        }
        super.follow();
    }

    @Override
    protected BufferedImage picture(Known known, Point size, int backdrop) {
        Suite now = suite;
        double wide = known.printed().item().faces().size() * (known.printed().item().width() + ROOM) + ROOM;
        double scale = Math.min(size.x / wide, size.y / (known.printed().item().height() + 2 * ROOM));
        if (now == null || scale <= 0.5) {
            return null;
        }
        int after = hours;
        Use how = use;
        CheckContext context = CheckContext.of(known.printed(), now.catalogues());
        WearRates rates = Uses.rates(context, how);
        double lost = WearForecast.of(known.printed(), rates).lost(after);
        String words = Measures.percent(lost) + " gone after " + after + " h of " + how.getLiteral() + " (a model)";
        told.getDisplay().asyncExec(() -> {
            if (!told.isDisposed()) {
                told.setText(words);
            }
        });
        return WearPicture.of(known.printed(), PictureOptions.of((int) (scale * MM_PER_INCH)).on(backdrop), rates,
                Uses.coat(context), after);
    }
}
