/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.action;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pollex.edit.Arrange;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.model.design.Side;
import org.pollex.model.store.ArtFile;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.StoreException;

/**
 * Marks on the clipboard: the design they come from, then a design of the same format that holds only them.
 *
 * @param from   path of the design they come from, for their art
 * @param marks  in painting order, contained in nothing
 */
public record Clip(Path from, List<Mark> marks) {

    private static final String HEAD = "pollex-marks ";

    public Clip {
        marks = List.copyOf(marks);
    }

    /**
     * The text for the clipboard.
     *
     * @throws StoreException when the marks cannot be written
     */
    public static String write(Path from, List<? extends Mark> marks) throws StoreException {
        Design design = DesignFactory.eINSTANCE.createDesign();
        Side side = DesignFactory.eINSTANCE.createSide();
        Layer layer = DesignFactory.eINSTANCE.createLayer();
        design.getSides().add(side);
        side.setName("front");
        side.getLayers().add(layer);
        marks.forEach(each -> layer.getMarks().add(Arrange.copy(each)));
        return HEAD + from.toUri() + "\n" + new String(ModelFiles.DESIGNS.write(design), StandardCharsets.UTF_8);
    }

    /** Whether a text of the clipboard holds marks. */
    public static boolean holds(String text) {
        return text != null && text.startsWith(HEAD) && text.indexOf('\n') > 0;
    }

    /**
     * Reads a text of the clipboard.
     *
     * @return empty when it holds no marks
     * @throws StoreException when it says that it does but is damaged
     */
    public static Optional<Clip> read(String text) throws StoreException {
        if (!holds(text)) {
            return Optional.empty();
        }
        int line = text.indexOf('\n');
        Path from;
        try {
            from = Path.of(java.net.URI.create(text.substring(HEAD.length(), line).strip()));
        } catch (IllegalArgumentException | java.nio.file.FileSystemNotFoundException e) {
            return Optional.empty();
        }
        Design design = ModelFiles.DESIGNS.readKeeping(new ByteArrayInputStream(
                text.substring(line + 1).getBytes(StandardCharsets.UTF_8)), "the clipboard");
        List<Mark> marks = new ArrayList<>();
        design.getSides().forEach(side -> side.getLayers().forEach(layer -> layer.getMarks()
                .forEach(each -> marks.add(Arrange.copy(each)))));
        return Optional.of(new Clip(from, marks));
    }

    /**
     * Brings the art of the marks to another design: a file that is not there is copied. Art that is missing at its
     * origin stays missing and shows a placeholder.
     *
     * @throws StoreException when a copy cannot be written
     */
    public void bringArt(Path to) throws StoreException {
        if (from.toAbsolutePath().getParent().equals(to.toAbsolutePath().getParent())) {
            return;
        }
        for (Mark mark : marks) {
            if (mark instanceof Placement placement && placement.getArt() != null) {
                Optional<Path> file = ArtFiles.inside(from, placement.getArt()).filter(java.nio.file.Files::exists);
                if (file.isPresent()) {
                    ArtFile adopted = ArtFiles.adopt(to, file.get());
                    placement.setArt(adopted.path());
                    placement.setSha256(adopted.sha256());
                }
            }
        }
    }
}
