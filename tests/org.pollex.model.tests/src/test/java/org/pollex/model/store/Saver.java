/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import java.nio.file.Path;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Side;
import org.pollex.model.design.TextLine;

/** The process that is killed: saves numbered states of a design one after the other. */
public final class Saver {

    private Saver() {
    }

    /**
     * Opens a file and saves the next states, a dot for each.
     *
     * @param words  the file; {@code once} to end after one
     */
    public static void main(String[] words) throws Exception {
        Path file = Path.of(words[0]);
        Opened<Design> opened = ModelFiles.DESIGNS.open(file);
        int number = number(opened.model());
        do {
            number++;
            opened = ModelFiles.DESIGNS.save(new Opened<>(file, state(number), opened.stamp(), opened.format()));
            System.out.write('.');
            System.out.flush();
        } while (words.length == 1);
    }

    /** A design of some kilobytes whose every part depends on the number. */
    static Design state(int number) {
        Design design = DesignFactory.eINSTANCE.createDesign();
        design.setName("state " + number);
        Side side = DesignFactory.eINSTANCE.createSide();
        side.setName("front");
        design.getSides().add(side);
        Layer layer = DesignFactory.eINSTANCE.createLayer();
        side.getLayers().add(layer);
        for (int i = 0; i < 20 + number % 30; i++) {
            TextLine line = DesignFactory.eINSTANCE.createTextLine();
            line.setText("line " + i + " of state " + number + " " + "~".repeat(number % 97));
            line.setX(number + i / 8.0);
            layer.getMarks().add(line);
        }
        return design;
    }

    /** The number of a state. */
    static int number(Design design) {
        return Integer.parseInt(design.getName().substring("state ".length()));
    }
}
