/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.pictures;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Scale;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.session.Known;
import org.pollex.model.job.Use;
import org.pollex.model.store.StoreException;
import org.pollex.output.picture.PictureOptions;
import org.pollex.output.picture.WearPicture;
import org.pollex.print.Printed;
import org.pollex.print.wear.WearForecast;
import org.pollex.print.wear.WearRates;
import org.pollex.rules.CheckContext;
import org.pollex.rules.Measures;
import org.pollex.rules.Suite;
import org.pollex.rules.wear.Calibration;
import org.pollex.rules.wear.Uses;

/** What is left of the print after hours of use, by the forecast of wear, with a slider for the hours. */
public final class WearView extends PictureView {

    /** Id of the view. */
    public static final String ID = "org.pollex.ui.pictures.wear";

    private static final int LONGEST = 200;
    private static final double MM_PER_INCH = 25.4;
    private static final double ROOM = 4;

    private record Measured(Known known, PictureOptions options, WearForecast forecast, WearPicture picture) {
    }

    private volatile int hours = 20;
    private volatile Use use = Use.PRACTICE;
    private volatile Suite suite;
    private volatile Path file;
    private Measured kept;
    private int times;
    private Label told;
    private Scale slider;
    private Button calibrate;

    @Override
    protected void controls(Composite bar) {
        GridLayoutFactory.swtDefaults().numColumns(4).applyTo(bar);
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
        told = new Label(bar, SWT.WRAP);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(60, SWT.DEFAULT)
                .align(SWT.FILL, SWT.CENTER).applyTo(told);
        calibrate = new Button(bar, SWT.PUSH);
        calibrate.setText("&Calibrate\u2026");
        calibrate.setToolTipText("Find the rate of wear by one worn sample");
        GridDataFactory.fillDefaults().span(2, 1).align(SWT.END, SWT.BEGINNING).applyTo(calibrate);
        calibrate.addListener(SWT.Selection, event -> calibrate());
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

    private void calibrate() {
        Optional<Known> known = active().known();
        Optional<DesignSession> session = active().session();
        if (known.isEmpty() || session.isEmpty() || known.get().printed().sides().isEmpty()) {
            told.setText("Open a design that prints something to calibrate its forecast.");
            return;
        }
        Path file = session.get().file();
        Printed printed = known.get().printed();
        CheckContext context = CheckContext.of(printed, near(session.get().suite(), file).catalogues());
        WearSampleDialog dialog = new WearSampleDialog(getSite().getShell(), context, file,
                Calibration.file(file.toAbsolutePath().getParent(), SampleFiles.root(file)));
        if (dialog.open() == Window.OK) {
            SampleFiles.keep(dialog.catalogue(), printed.material(), dialog.found().rate(), dialog.note(),
                    getSite().getShell(), this::repaint);
        }
    }

    /** The suite with what was calibrated since the design was opened. */
    private static Suite near(Suite suite, Path file) {
        try {
            return suite.near(file.toAbsolutePath().getParent());
        } catch (StoreException e) {
            ILog.of(WearView.class).warn(e.getMessage(), e);
            return suite;
        }
    }

    /** The button that asks for a worn sample. */
    public Button calibration() {
        return calibrate;
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
            file = active().session().map(DesignSession::file).orElse(null);
            if (suite == null) {
                forget();
            }
        }
        super.follow();
    }

    @Override
    protected BufferedImage picture(Known known, Point size, int backdrop) {
        Suite now = suite;
        Path path = file;
        double wide = known.printed().item().faces().size() * (known.printed().item().width() + ROOM) + ROOM;
        double scale = Math.min(size.x / wide, size.y / (known.printed().item().height() + 2 * ROOM));
        if (now == null || path == null || scale <= 0.5) {
            return null;
        }
        int after = hours;
        Use how = use;
        CheckContext context = CheckContext.of(known.printed(), near(now, path).catalogues());
        WearRates rates = Uses.rates(context, how);
        Measured print = measured(known, PictureOptions.of((int) (scale * MM_PER_INCH)).on(backdrop), rates);
        double lost = print.forecast.with(rates).lost(after);
        String words = Measures.percent(lost) + " gone after " + after + " h of " + how.getLiteral() + " ("
                + Calibration.words(Calibration.of(context)) + ")";
        told.getDisplay().asyncExec(() -> {
            if (!told.isDisposed()) {
                told.setText(words);
                told.requestLayout();
            }
        });
        return print.picture.after(rates, Uses.coat(context), after);
    }

    /** What does not depend on hours and use; measured again only when the print or the view is another. */
    private synchronized Measured measured(Known known, PictureOptions options, WearRates rates) {
        boolean samePrint = kept != null && kept.known == known;
        if (!samePrint || !kept.options.equals(options)) {
            kept = new Measured(known, options, samePrint ? kept.forecast
                    : WearForecast.of(known.printed(), rates), new WearPicture(known.printed(), options));
            times++;
        }
        return kept;
    }

    private synchronized void forget() {
        kept = null;
    }

    /** How often a print was measured and drawn anew; a step of the slider does neither. */
    public synchronized int measured() {
        return times;
    }
}
