/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.wizard;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.Status;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.pollex.ui.ScreenImages;
import org.pollex.ui.jobs.work.Work;

/** Rows of a table with pictures that are drawn in the background; the pictures go with the table. */
public final class PictureRows {

    private final Table table;
    private final List<Image> images = new ArrayList<>();
    private int round;

    /** Draws into the rows of a table. */
    public PictureRows(Table table) {
        this.table = table;
        table.addDisposeListener(event -> drop());
    }

    /** Takes all rows and pictures away. */
    public void clear() {
        round++;
        table.removeAll();
        drop();
    }

    private void drop() {
        images.forEach(Image::dispose);
        images.clear();
    }

    /** Draws a picture for each row, in their order. */
    public void draw(List<Supplier<Optional<BufferedImage>>> pictures) {
        int mine = ++round;
        Job job = Job.create("Drawing pictures", monitor -> {
            for (int i = 0; i < pictures.size() && mine == round; i++) {
                int row = i;
                pictures.get(i).get().ifPresent(picture -> Work.later(() -> set(mine, row, picture)));
            }
            return Status.OK_STATUS;
        });
        job.setSystem(true);
        job.schedule();
    }

    private void set(int mine, int row, BufferedImage picture) {
        if (mine != round || table.isDisposed() || row >= table.getItemCount()) {
            return;
        }
        Image image = ScreenImages.image(table.getDisplay(), picture);
        images.add(image);
        TableItem item = table.getItem(row);
        Image before = item.getImage(0);
        item.setImage(0, image);
        if (images.remove(before)) {
            before.dispose();
        }
        if (row == 0 && table.getColumnCount() > 0) {
            table.getColumn(0).pack();
        }
    }

    /** Asks for a thing when it is first wanted, by the one thread that draws. */
    public static <T> Supplier<T> once(Supplier<T> maker) {
        List<T> made = new ArrayList<>(1);
        return () -> {
            if (made.isEmpty()) {
                made.add(maker.get());
            }
            return made.get(0);
        };
    }
}
