/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.action;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.FileDialog;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.pollex.edit.Arrange;
import org.pollex.editor.side.Shown;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Mark;
import org.pollex.model.design.PlainShape;
import org.pollex.model.design.Placement;
import org.pollex.model.design.ShapeKind;
import org.pollex.model.design.TextLine;
import org.pollex.model.store.StoreException;
import org.pollex.print.item.ItemException;
import org.pollex.print.item.ItemFace;

/** What acts ask and fetch: files, words, the clipboard. */
final class Dialogs {

    private static final double TEXT_SIZE = 3;
    private static final double SHAPE_SIZE = 4;
    private static final double PASTE_SHIFT = 1;
    /** How far beside the item a guide may lie and is still seen, mm. */
    private static final double GUIDE_REACH = 5;

    private Dialogs() {
    }

    static void placeArt(Workplace at) {
        FileDialog dialog = artDialog(at, SWT.OPEN | SWT.MULTI, "Place art");
        if (dialog.open() != null) {
            Path folder = Path.of(dialog.getFilterPath());
            Coordinate middle = middle(at);
            new ArtIn(at).place(Arrays.stream(dialog.getFileNames()).map(folder::resolve).toList(), middle.x,
                    middle.y);
        }
    }

    static void replaceArt(Workplace at, Placement placement) {
        String chosen = artDialog(at, SWT.OPEN, "Replace art").open();
        if (chosen != null) {
            new ArtIn(at).replace(placement, Path.of(chosen));
        }
    }

    private static FileDialog artDialog(Workplace at, int style, String title) {
        FileDialog dialog = new FileDialog(at.shell(), style);
        dialog.setText(title);
        List<String> endings = new ArrayList<>();
        at.session().suite().readers().fileExtensions().forEach(each -> endings.add("*." + each));
        dialog.setFilterExtensions(new String[] {String.join(";", endings), "*"});
        dialog.setFilterNames(new String[] {"Art (" + String.join(", ", endings) + ")", "All files"});
        return dialog;
    }

    private static Coordinate middle(Workplace at) {
        return at.face().filter(each -> !each.safe().isEmpty())
                .map(each -> each.safe().getCentroid().getCoordinate()).orElse(new Coordinate(0, 0));
    }

    static void addText(Workplace at) {
        InputDialog dialog = new InputDialog(at.shell(), "Add text line", "Words of the line:", "",
                words -> words.isBlank() ? "" : null);
        if (dialog.open() == InputDialog.OK) {
            TextLine line = DesignFactory.eINSTANCE.createTextLine();
            line.setText(dialog.getValue().strip());
            line.setName(line.getText());
            line.setSize(TEXT_SIZE);
            line.setInk(at.ink());
            added(at, line, "Add text line");
        }
    }

    static void addShape(Workplace at, ShapeKind kind) {
        PlainShape shape = DesignFactory.eINSTANCE.createPlainShape();
        shape.setKind(kind);
        shape.setName(kind == ShapeKind.RECTANGLE ? "Rectangle" : "Ellipse");
        shape.setWidth(SHAPE_SIZE);
        shape.setHeight(SHAPE_SIZE);
        shape.setInk(at.ink());
        added(at, shape, "Add shape");
    }

    private static void added(Workplace at, Mark mark, String label) {
        Coordinate middle = middle(at);
        mark.setX(middle.x);
        mark.setY(middle.y);
        at.session().run(Changes.add(at.session().design(), at.pages().face(), List.of(mark), label));
        at.pages().select(List.of(mark));
    }

    static void group(Workplace at) {
        InputDialog dialog = new InputDialog(at.shell(), "Group into layer", "Name of the new layer:", "Group",
                name -> name.isBlank() ? "" : null);
        if (dialog.open() == InputDialog.OK) {
            List<Mark> marks = at.free();
            at.session().run(Arrange.group(marks, dialog.getValue().strip()));
            at.pages().select(marks);
        }
    }

    static void addGuide(Workplace at) {
        Envelope within = at.face().map(each -> each.area().getEnvelopeInternal()).map(Envelope::new)
                .orElse(new Envelope(-GUIDE_REACH, GUIDE_REACH, -GUIDE_REACH, GUIDE_REACH));
        within.expandBy(GUIDE_REACH);
        GuideDialog dialog = new GuideDialog(at.shell(), within);
        if (dialog.open() == GuideDialog.OK) {
            Shown.GUIDES.set(true);
            at.pages().select(List.of());
            at.guides().add(dialog.upright(), dialog.at());
        }
    }

    /** The face after the one shown; empty when the item has only one. */
    static Optional<String> otherFace(Workplace at) {
        try {
            List<String> faces = at.session().suite().item(at.session().design().getProduct()).faces().stream()
                    .map(ItemFace::name).toList();
            int now = faces.indexOf(at.pages().face());
            return faces.size() < 2 || now < 0 ? Optional.empty() : Optional.of(faces.get((now + 1) % faces.size()));
        } catch (ItemException e) {
            return Optional.empty();
        }
    }

    static boolean copy(Workplace at) {
        Clipboard clipboard = new Clipboard(at.shell().getDisplay());
        try {
            String text = Clip.write(at.session().file(), inOrder(at));
            clipboard.setContents(new Object[] {text}, new Transfer[] {TextTransfer.getInstance()});
            return true;
        } catch (StoreException e) {
            MessageDialog.openError(at.shell(), "Not copied", e.getMessage());
            return false;
        } finally {
            clipboard.dispose();
        }
    }

    private static List<Mark> inOrder(Workplace at) {
        List<Mark> selected = at.selected();
        return at.side().map(side -> side.getLayers().stream().flatMap(layer -> layer.getMarks().stream())
                .filter(selected::contains).toList()).orElse(selected);
    }

    static void paste(Workplace at) {
        Clipboard clipboard = new Clipboard(at.shell().getDisplay());
        Object text = clipboard.getContents(TextTransfer.getInstance());
        clipboard.dispose();
        try {
            Optional<Clip> clip = Clip.read((String) text);
            clip.ifPresentOrElse(each -> paste(at, each), () -> MessageDialog.openInformation(at.shell(),
                    "Nothing to paste", "The clipboard holds no marks; copy some in a design first."));
        } catch (StoreException e) {
            MessageDialog.openError(at.shell(), "Not pasted", e.getMessage());
        }
    }

    private static void paste(Workplace at, Clip clip) {
        String face = at.pages().face();
        Job.create("Pasting", (ICoreRunnable) monitor -> {
            String trouble = "";
            try {
                clip.bringArt(at.session().file());
            } catch (StoreException e) {
                trouble = e.getMessage();
            }
            String told = trouble;
            at.shell().getDisplay().asyncExec(() -> {
                if (at.shell().isDisposed()) {
                    return;
                }
                if (told.isEmpty()) {
                    pasted(at, clip, face);
                } else {
                    MessageDialog.openError(at.shell(), "Not pasted", told);
                }
            });
        }).schedule();
    }

    private static void pasted(Workplace at, Clip clip, String face) {
        List<Mark> there = at.session().design().getSides().stream().filter(each -> face.equals(each.getName()))
                .flatMap(side -> side.getLayers().stream()).flatMap(layer -> layer.getMarks().stream()).toList();
        for (Mark mark : clip.marks()) {
            while (there.stream().anyMatch(each -> each.getX() == mark.getX() && each.getY() == mark.getY())) {
                mark.setX(mark.getX() + PASTE_SHIFT);
                mark.setY(mark.getY() + PASTE_SHIFT);
            }
        }
        at.session().run(Changes.add(at.session().design(), face, clip.marks(), "Paste"));
        if (face.equals(at.pages().face())) {
            at.pages().select(clip.marks());
        }
    }
}
