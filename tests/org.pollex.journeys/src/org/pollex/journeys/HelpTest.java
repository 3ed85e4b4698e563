/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.List;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.pollex.app.help.HelpPage;
import org.pollex.app.help.HelpPages;
import org.pollex.app.help.HelpText;
import org.pollex.app.help.HelpView;
import org.pollex.markers.StudioSuite;
import org.pollex.rules.CheckEntry;

/** A user looks something up. */
class HelpTest {

    private HelpView view;

    @BeforeEach
    void open() throws Exception {
        Window.fill();
        view = (HelpView) Window.page().showView(HelpView.ID);
        Window.page().setPartState(Window.page().findViewReference(HelpView.ID), IWorkbenchPage.STATE_MAXIMIZED);
    }

    @AfterEach
    void close() {
        Window.page().setPartState(Window.page().findViewReference(HelpView.ID), IWorkbenchPage.STATE_RESTORED);
        Window.page().hideView(view);
    }

    @Test
    void theKeyOpensThePageAboutTheViewInFront() throws Exception {
        close();
        Window.page().activate(Window.page().showView("org.pollex.ui.review.findings"));
        Window.window().getService(IHandlerService.class).executeCommand("org.pollex.app.openHelp", null);
        Window.idle();
        view = (HelpView) Window.page().findView(HelpView.ID);
        assertTrue(view.shown().startsWith("What findings mean"), view.shown());
        Window.page().activate(Window.page().showView("org.pollex.ui.pictures.loupe"));
        Window.window().getService(IHandlerService.class).executeCommand("org.pollex.app.openHelp", null);
        Window.idle();
        assertTrue(view.shown().startsWith("Pictures and outputs"), view.shown());
    }

    @Test
    void everyInstalledCheckIsExplained() {
        String all = String.join("\n", HelpPages.all().stream().map(HelpPage::text).toList());
        java.util.List<CheckEntry> checks = StudioSuite.get().checks();
        assertTrue(checks.size() >= 14, checks.size() + " checks");
        for (CheckEntry check : checks) {
            assertTrue(all.contains("## " + check.name()) && all.contains(check.description().strip()), check.id());
        }
    }

    @Test
    void searchingFindsThePage() throws Exception {
        Text search = FindingsViewTest.find(Window.window().getShell(), Text.class,
                each -> (each.getStyle() & SWT.SEARCH) != 0 && each.isVisible());
        search.setText("solvent");
        Window.idle();
        List titles = FindingsViewTest.find(Window.window().getShell(), List.class, each -> each.isVisible());
        assertTrue(java.util.Arrays.asList(titles.getItems()).contains("Working safely"));
        titles.select(titles.indexOf("Working safely"));
        titles.notifyListeners(SWT.Selection, new Event());
        assertTrue(view.shown().contains("safety data sheet"), view.shown());
        search.setText("");
        titles.select(2);
        titles.notifyListeners(SWT.Selection, new Event());
        Window.idle();
        Picture.take(Window.display(), "help");
        assertTrue(view.shown().contains("Thin lines break up"), view.shown());
    }

    @Test
    void linksLeadToPagesAndPicturesAreThere() throws Exception {
        java.util.Set<String> names = HelpPages.all().stream().map(HelpPage::name)
                .collect(java.util.stream.Collectors.toSet());
        int links = 0;
        for (HelpPage page : HelpPages.all()) {
            for (HelpText.Run each : HelpText.of(page.text()).runs()) {
                if (each.kind() == HelpText.Kind.LINK) {
                    assertTrue(names.contains(each.target()), page.name() + " leads to " + each.target());
                    links++;
                } else if (each.kind() == HelpText.Kind.PICTURE) {
                    assertNotNull(HelpView.class.getResource("/help/" + each.target()), each.target());
                }
            }
        }
        assertTrue(links >= 8, links + " links");
        List titles = FindingsViewTest.find(Window.window().getShell(), List.class, each -> each.isVisible());
        titles.select(0);
        titles.notifyListeners(SWT.Selection, new Event());
        StyledText text = FindingsViewTest.find(Window.window().getShell(), StyledText.class, each -> each.isVisible());
        text.setFocus();
        text.traverse(SWT.TRAVERSE_TAB_NEXT);
        assertEquals("Placing art", text.getSelectionText());
        text.traverse(SWT.TRAVERSE_TAB_NEXT);
        assertEquals("Findings", text.getSelectionText());
        text.traverse(SWT.TRAVERSE_TAB_PREVIOUS);
        assertEquals("Placing art", text.getSelectionText());
        Event enter = new Event();
        enter.keyCode = SWT.CR;
        text.notifyListeners(SWT.KeyDown, enter);
        assertTrue(view.shown().startsWith("Placing art"), view.shown());
        Window.idle();
        Picture.take(Window.display(), "help-picture");
        assertEquals(1, java.util.Arrays.stream(text.getStyleRanges()).filter(each -> each.metrics != null).count());
    }
}
