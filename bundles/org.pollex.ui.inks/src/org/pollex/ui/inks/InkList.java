/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.inks;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.colour.film.FilmModel;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.InkKind;
import org.pollex.model.store.EntryNames;
import org.pollex.print.Drawdown;
import org.pollex.print.PrintedTones;

/** The inks of the file, then those from elsewhere; a chip shows each over the white and the black of a card. */
final class InkList {

    private static final int WIDTH = 34;
    private static final int HEIGHT = 18;

    private final Table table;
    private final List<Image> images = new ArrayList<>();
    private List<Ink> inks = List.of();

    /** @param chosen runs when another ink is chosen by the user */
    InkList(Composite parent, Runnable chosen, Consumer<Ink> opened) {
        table = new Table(parent, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        table.setHeaderVisible(true);
        column("Ink", 150);
        column("Contrast", 76);
        column("Kept in", 110);
        column("Kind", 70);
        table.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = "Inks";
            }
        });
        table.addListener(SWT.Selection, event -> chosen.run());
        table.addListener(SWT.DefaultSelection, event -> opened.accept(selected()));
        table.addDisposeListener(event -> images.forEach(Image::dispose));
    }

    private void column(String title, int width) {
        TableColumn column = new TableColumn(table, SWT.NONE);
        column.setText(title);
        column.setWidth(width);
    }

    Table table() {
        return table;
    }

    /** The chosen ink; null when there is none. */
    Ink selected() {
        int index = table.getSelectionIndex();
        return index < 0 ? null : inks.get(index);
    }

    /** Shows the inks of a book and chooses one of them, or the one in the same place when that is gone. */
    void show(InkBook book, Ink choose) {
        int place = Math.max(0, table.getSelectionIndex());
        List<Ink> all = new ArrayList<>(book.own());
        all.addAll(book.others());
        table.setRedraw(false);
        if (table.getItemCount() > all.size()) {
            table.setItemCount(all.size());
        }
        List<Image> old = new ArrayList<>(images);
        images.clear();
        inks = List.copyOf(all);
        for (int i = 0; i < all.size(); i++) {
            TableItem item = i < table.getItemCount() ? table.getItem(i) : new TableItem(table, SWT.NONE);
            fill(item, all.get(i), book);
        }
        old.forEach(Image::dispose);
        int index = all.indexOf(choose);
        if (!all.isEmpty()) {
            table.setSelection(index >= 0 ? index : Math.min(place, all.size() - 1));
        }
        table.setRedraw(true);
    }

    private void fill(TableItem item, Ink ink, InkBook book) {
        Image chip = chip(ink);
        images.add(chip);
        Drawdown drawdown = Drawdown.of(ink);
        item.setImage(0, chip);
        item.setText(new String[] {EntryNames.of(ink),
            drawdown.known() ? String.format(Locale.ROOT, "%.2f%s", drawdown.opacity(),
                    drawdown.doubtful() ? " \u26A0" : "") : "-",
            book.place(ink), kind(ink.getKind())});
    }

    private static String kind(InkKind kind) {
        return kind == InkKind.PROCESS ? "process" : kind == InkKind.WHITE ? "white" : "spot";
    }

    private Image chip(Ink ink) {
        Image image = new Image(table.getDisplay(), WIDTH, HEIGHT);
        GC gc = new GC(image);
        int half = WIDTH / 2;
        paint(gc, FilmModel.WHITE_CARD, 0, 0, half, HEIGHT);
        paint(gc, FilmModel.BLACK_CARD, half, 0, WIDTH - half, HEIGHT);
        if (ink.getLab() != null) {
            paint(gc, PrintedTones.over(ink, FilmModel.WHITE_CARD), 3, 3, half - 3, HEIGHT - 6);
            paint(gc, PrintedTones.over(ink, FilmModel.BLACK_CARD), half, 3, WIDTH - half - 3, HEIGHT - 6);
        }
        gc.dispose();
        return image;
    }

    private static void paint(GC gc, Lab colour, int x, int y, int width, int height) {
        int rgb = Srgb.of(colour);
        gc.setBackground(new Color(rgb >> 16 & 0xff, rgb >> 8 & 0xff, rgb & 0xff));
        gc.fillRectangle(x, y, width, height);
    }
}
