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

import java.nio.file.Path;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IPageLayout;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignPages;
import org.pollex.editor.session.DesignSession;
import org.pollex.model.design.Mark;
import org.pollex.model.design.TextLine;

/** A designer types numbers with units, words and inks into the properties. */
class PropertiesTest {

    @TempDir
    Path folder;

    private DesignEditor editor;
    private DesignSession session;
    private DesignPages pages;

    @BeforeEach
    void open() throws Exception {
        editor = Window.design(Samples.ferry(folder, "typed"), IPageLayout.ID_PROP_SHEET);
        session = editor.getAdapter(DesignSession.class);
        pages = editor.getAdapter(DesignPages.class);
    }

    @AfterEach
    void close() {
        Window.closeEditors();
    }

    private Mark mark(int side, int index) {
        return session.design().getSides().get(side).getLayers().get(0).getMarks().get(index);
    }

    /** The control behind a label in the same form. */
    private static <T extends Control> T field(String label, Class<T> type) {
        Label found = FindingsViewTest.find(Window.window().getShell(), Label.class,
                each -> each.isVisible() && each.getText().equals(label + ":"));
        assertNotNull(found, "no field " + label);
        Composite form = found.getParent();
        return type.cast(form.getChildren()[java.util.Arrays.asList(form.getChildren()).indexOf(found) + 1]);
    }

    private static void type(String label, String value) {
        Text text = field(label, Text.class);
        text.setText(value);
        text.notifyListeners(SWT.DefaultSelection, new Event());
        Window.idle();
    }

    @Test
    void placeAndSizeByNumbersWithUnits() throws Exception {
        pages.select(List.of(mark(0, 0)));
        Window.idle();
        type("x, mm", "3/8in");
        assertEquals(9.525, mark(0, 0).getX(), 1e-9);
        type("x, mm", "2*1.5+0,25");
        assertEquals(3.25, mark(0, 0).getX(), 1e-9);
        double width = Double.parseDouble(field("Width, mm", Text.class).getText());
        type("Width, mm", "50%");
        assertEquals(0.5, mark(0, 0).getScale(), 1e-3);
        assertEquals(width / 2, Double.parseDouble(field("Width, mm", Text.class).getText()), 0.01);
        Picture.take(Window.display(), "properties-mark");
        type("Turn, degrees", "abc");
        assertEquals(0, mark(0, 0).getTurn());
        assertNotNull(FindingsViewTest.find(Window.window().getShell(), Label.class, each -> each.isVisible()
                && each.getText().contains("such as 45")), "nothing says what is wrong");
        session.history().undo();
        session.history().undo();
        session.history().undo();
        assertEquals(0, mark(0, 0).getX());
        assertEquals("0", field("x, mm", Text.class).getText());
    }

    /** Made in a wide window, the fields end within the view when it gets narrower. */
    @Test
    void fieldsKeepToTheWidthOfTheView() throws Exception {
        pages.select(List.of());
        Window.idle();
        Window.window().getShell().setSize(1000, 700);
        Window.idle();
        try {
            Combo material = field("Material", Combo.class);
            Composite view = material.getParent();
            while (!(view instanceof ScrolledComposite)) {
                view = view.getParent();
            }
            int right = view.toDisplay(view.getClientArea().width, 0).x;
            Picture.take(Window.display(), "properties-narrow");
            for (Control each : Widgets.all(view, Control.class)) {
                if (each instanceof Combo || each instanceof Text) {
                    int end = each.getParent().toDisplay(each.getBounds().x + each.getBounds().width, 0).x;
                    assertTrue(end <= right, each + " ends at " + end + ", the view at " + right);
                }
            }
            // nor are the numbers below the drawing cut
            GC gc = new GC(view);
            List<CLabel> numbers = Widgets.all(Window.window().getShell(), CLabel.class).stream()
                    .filter(each -> each.isVisible() && each.getText().endsWith(" mm")).toList();
            numbers.forEach(each -> assertTrue(gc.textExtent(each.getText()).x <= each.getSize().x, each.getText()));
            gc.dispose();
            assertTrue(numbers.size() >= 3, numbers.size() + " numbers");
        } finally {
            Window.fill();
        }
    }

    @Test
    void wordsOfALine() throws Exception {
        pages.show("back");
        pages.select(List.of(mark(1, 0)));
        Window.idle();
        type("Words", "Lamp Rock Ferries");
        assertEquals("Lamp Rock Ferries", ((TextLine) mark(1, 0)).getText());
        type("Size, mm", "9pt");
        assertEquals(3.175, ((TextLine) mark(1, 0)).getSize(), 1e-6);
        Window.until("the print follows", session::fresh);
        Window.idle();
        Picture.take(Window.display(), "properties-text");
    }

    @Test
    void materialAndInksOfTheDesign() throws Exception {
        pages.select(List.of());
        Window.idle();
        Combo material = field("Material", Combo.class);
        material.select(material.indexOf("Solid black"));
        material.notifyListeners(SWT.Selection, new Event());
        assertEquals("solid-black", session.design().getMaterial());
        Button white = FindingsViewTest.find(Window.window().getShell(), Button.class,
                each -> each.isVisible() && each.getText().equals("White"));
        white.setSelection(true);
        white.notifyListeners(SWT.Selection, new Event());
        assertEquals(List.of("navy"), session.design().getInks(), "a method of one ink took two");
        Button navy = FindingsViewTest.find(Window.window().getShell(), Button.class,
                each -> each.isVisible() && each.getText().equals("Navy"));
        navy.setSelection(false);
        navy.notifyListeners(SWT.Selection, new Event());
        white.setSelection(true);
        white.notifyListeners(SWT.Selection, new Event());
        assertEquals(List.of("white"), session.design().getInks());
        Window.until("the print follows", session::fresh);
        Window.idle();
        assertTrue(FindingsViewTest.find(Window.window().getShell(), Button.class,
                each -> each.isVisible() && each.getText().equals("White")).getSelection(), "the ink is not ticked");
        ImageData picture = Picture.take(Window.display(), "properties-design");
        assertTrue(dark(picture, "White") > dark(picture, "Navy") + 20, "the tick of a ticked box is not seen");
        assertTrue(editor.isDirty());
    }

    /** How many dark pixels the box before these words has. */
    private static int dark(ImageData picture, String words) {
        Button button = FindingsViewTest.find(Window.window().getShell(), Button.class,
                each -> each.isVisible() && each.getText().equals(words));
        int side = button.getSize().y;
        org.eclipse.swt.graphics.Point at = button.toDisplay(0, 0);
        int dark = 0;
        for (int x = 0; x < side; x++) {
            for (int y = 0; y < side; y++) {
                RGB rgb = picture.palette.getRGB(picture.getPixel(at.x + x, at.y + y));
                dark += rgb.red + rgb.green + rgb.blue < 300 ? 1 : 0;
            }
        }
        return dark;
    }
}
