/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.findings;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;

/**
 * Draws the sentence of a finding in as many lines as its column and the height of a row allow; what still does not
 * fit ends in three dots. A tree by itself clips it after one line.
 */
final class WrappedSentences {

    private static final int GAP = 6;

    private final Tree tree;
    private final TextLayout layout;

    WrappedSentences(Tree tree) {
        this.tree = tree;
        this.layout = new TextLayout(tree.getDisplay());
        tree.addListener(SWT.EraseItem, event -> {
            if (ours(event)) {
                event.detail &= ~SWT.FOREGROUND;
            }
        });
        tree.addListener(SWT.PaintItem, this::paint);
        tree.addListener(SWT.Dispose, event -> layout.dispose());
    }

    private static boolean ours(Event event) {
        return event.index == 0 && event.item instanceof TreeItem item && item.getData() != null;
    }

    private void paint(Event event) {
        if (!ours(event)) {
            return;
        }
        TreeItem item = (TreeItem) event.item;
        Rectangle cell = item.getBounds(0);
        Image image = item.getImage(0);
        // the words over a side have no picture and need not leave room for one
        int x = item.getData() instanceof FindingGroup ? item.getImageBounds(0).x : item.getTextBounds(0).x;
        if (image != null) {
            Rectangle box = item.getImageBounds(0);
            event.gc.drawImage(image, box.x, cell.y + (cell.height - image.getBounds().height) / 2);
            x = Math.max(x, box.x + image.getBounds().width + GAP);
        }
        int right = tree.getColumn(0).getWidth();
        int width = right - x - GAP;
        if (width > 0) {
            layout.setFont(tree.getFont());
            layout.setWidth(width);
            layout.setText(fitting(item.getText(0), cell.height));
            int height = layout.getBounds().height;
            layout.draw(event.gc, x, cell.y + Math.max(0, (cell.height - height) / 2));
        }
    }

    /** The text, shortened at a word until it is no higher than the row. */
    private String fitting(String text, int height) {
        layout.setText(text);
        int lines = Math.max(1, height / Math.max(1, layout.getLineBounds(0).height));
        if (layout.getLineCount() <= lines) {
            return text;
        }
        int end = layout.getLineOffsets()[lines];
        String shorter = text.substring(0, end).stripTrailing();
        while (true) {
            String dotted = shorter + "\u2026";
            layout.setText(dotted);
            int space = shorter.lastIndexOf(' ');
            if (layout.getLineCount() <= lines || space <= 0) {
                return dotted;
            }
            shorter = shorter.substring(0, space);
        }
    }
}
