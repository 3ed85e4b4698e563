/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.app.look.Appearance;
import org.pollex.colour.Contrast;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignSession;
import org.pollex.markers.FindingMarkers;
import org.pollex.markers.StudioProject;
import org.pollex.ui.pictures.RankView;
import org.pollex.ui.pictures.WearView;

/** Every view of ours in the dark: its words stand out from what is behind them, and a picture to look at. */
class DarkViewsTest {

    /** WCAG 2.1, 1.4.3: text against its background. */
    private static final double TEXT = 4.5;

    @TempDir
    Path folder;

    private StudioProject studio;
    private IFolder link;

    @AfterEach
    void close() throws Exception {
        Window.closeEditors();
        Appearance.SYSTEM.choose();
        studio.remove(link, new NullProgressMonitor());
        PlatformUI.getWorkbench().showPerspective("org.pollex.app.making", Window.window());
        Window.page().resetPerspective();
        Window.idle();
    }

    @Test
    void everyViewIsReadInTheDark() throws Exception {
        Window.fill();
        Appearance.DARK.choose();
        Window.idle();
        Path file = Samples.ferry(folder, "night");
        studio = StudioProject.open(new NullProgressMonitor());
        link = studio.add(folder, new NullProgressMonitor());
        DesignEditor editor = (DesignEditor) Window.open(file);
        DesignSession session = editor.getAdapter(DesignSession.class);
        Window.until("the print is there", session::fresh);
        Window.until("the file is checked", () -> !FindingMarkers.of(link.getFile("night.design")).isEmpty());
        List<String> faint = new ArrayList<>();
        Set<Control> words = new HashSet<>();
        for (String id : List.of("org.pollex.ui.jobs.tree", "org.pollex.ui.review.findings",
                "org.pollex.ui.review.desk", "org.pollex.app.problem.list", "org.pollex.ui.pictures.mockup",
                "org.pollex.ui.pictures.truesize", "org.pollex.ui.pictures.loupe", "org.pollex.ui.pictures.afar",
                "org.pollex.ui.pictures.wear", "org.pollex.ui.pictures.rank",
                "org.pollex.app.help", "org.eclipse.ui.views.PropertySheet",
                "org.eclipse.ui.views.ContentOutline")) {
            IViewPart view = Window.page().showView(id, null, IWorkbenchPage.VIEW_VISIBLE);
            if (view instanceof RankView rank) {
                Window.until("the ranking is there", 60_000, () -> rank.table().getItemCount() > 100);
            } else if (view instanceof WearView wear) {
                Window.until("the forecast is painted", wear::painted);
            }
            Window.idle();
            Picture.take(Window.display(), "dark-" + id.substring(id.lastIndexOf('.') + 1));
            for (Control each : controls(Window.window().getShell())) {
                words.add(each);
                faint(each).ifPresent(said -> faint.add(id + ": " + said));
            }
        }
        assertTrue(words.size() > 30, "words looked at: " + words.size());
        assertEquals(List.of(), faint);
    }

    /** Words below a control that do not stand out from what is behind them. */
    static List<String> faintBelow(Control below) {
        return controls(below).stream().flatMap(each -> faint(each).stream()).toList();
    }

    private static Optional<String> faint(Control words) {
        double ratio = Contrast.ratio(rgb(words.getForeground().getRGB()), rgb(words.getBackground().getRGB()));
        return ratio < TEXT ? Optional.of(words + " " + ratio) : Optional.empty();
    }

    /** What shows words below a control now. */
    private static List<Control> controls(Control below) {
        List<Control> found = new ArrayList<>();
        for (Control each : Widgets.all(below, Control.class)) {
            boolean words = each instanceof Label label && !label.getText().isBlank() || each instanceof CLabel
                    || each instanceof Link || each instanceof Text || each instanceof StyledText
                    || each instanceof Combo || each instanceof Tree
                    || each instanceof Button button && !button.getText().isBlank();
            if (words && each.isVisible() && each.isEnabled()) {
                found.add(each);
            }
        }
        return found;
    }

    private static int rgb(RGB colour) {
        return colour.red << 16 | colour.green << 8 | colour.blue;
    }
}
