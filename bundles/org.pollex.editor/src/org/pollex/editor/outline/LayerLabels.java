/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.outline;

import org.eclipse.jface.viewers.CellLabelProvider;
import org.eclipse.jface.viewers.ViewerCell;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.RGB;
import org.pollex.editor.work.Session;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;

/** Pictures and words of the lines: the name, then signs for hidden and locked, which a click changes. */
final class LayerLabels extends CellLabelProvider {

    /** Column of the name. */
    static final int NAME = 0;
    /** Column of the eye. */
    static final int HIDDEN = 1;
    /** Column of the padlock. */
    static final int LOCKED = 2;

    private final Thumbs thumbs;
    private Session session;

    LayerLabels(Thumbs thumbs) {
        this.thumbs = thumbs;
    }

    /** Shows marks of another session. */
    void show(Session shown) {
        session = shown;
        thumbs.forget();
    }

    @Override
    public void update(ViewerCell cell) {
        Object element = cell.getElement();
        cell.setForeground(dim(element) ? faint(cell) : null);
        switch (cell.getColumnIndex()) {
            case NAME -> {
                cell.setText(LayerWords.line(element));
                cell.setImage(picture(element));
            }
            case HIDDEN -> cell.setImage(element instanceof Face ? null
                    : thumbs.image(LayerWords.hidden(element) ? "eye-off" : "eye"));
            case LOCKED -> cell.setImage(element instanceof Face ? null
                    : thumbs.image(LayerWords.locked(element) ? "locked" : "unlocked"));
            default -> throw new IllegalStateException("There is no column " + cell.getColumnIndex() + ".");
        }
    }

    private Image picture(Object element) {
        return element instanceof Mark mark ? thumbs.of(session, mark)
                : thumbs.image(element instanceof Layer ? "layer" : "side");
    }

    private static boolean dim(Object element) {
        return LayerWords.hidden(element) || element instanceof Mark mark && LayerWords.hidden(mark.eContainer());
    }

    /** Between the colours of words and of what they stand on, in a light window and a dark one. */
    private static Color faint(ViewerCell cell) {
        RGB words = cell.getControl().getForeground().getRGB();
        RGB ground = cell.getControl().getBackground().getRGB();
        return new Color((words.red * 3 + ground.red * 2) / 5, (words.green * 3 + ground.green * 2) / 5,
                (words.blue * 3 + ground.blue * 2) / 5);
    }

    @Override
    public String getToolTipText(Object element) {
        return LayerWords.about(element);
    }
}
