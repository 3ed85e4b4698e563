/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.action;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IEditorPart;
import org.locationtech.jts.geom.Envelope;
import org.pollex.edit.Arrange;
import org.pollex.edit.Pose;
import org.pollex.editor.guide.Guides;
import org.pollex.editor.session.DesignPages;
import org.pollex.editor.snap.Boxes;
import org.pollex.editor.work.Session;
import org.pollex.model.design.Guide;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Side;
import org.pollex.print.item.ItemException;
import org.pollex.print.item.ItemFace;

/**
 * The open design that an act works on, with what is selected in it.
 *
 * @param guides those of the face in front
 */
public record Workplace(Shell shell, Session session, DesignPages pages, Guides guides) {

    /** The workplace of an editor; empty when it shows no design. */
    public static Optional<Workplace> of(IEditorPart editor) {
        Session session = editor == null ? null : editor.getAdapter(Session.class);
        DesignPages pages = editor == null ? null : editor.getAdapter(DesignPages.class);
        Guides guides = editor == null ? null : editor.getAdapter(Guides.class);
        return session == null || pages == null || guides == null ? Optional.empty()
                : Optional.of(new Workplace(editor.getSite().getShell(), session, pages, guides));
    }

    /** The guide that keys move and remove: the one chosen, while no mark is selected and the design is open. */
    Optional<Guide> guide() {
        return open() && selected().isEmpty() ? guides.chosen() : Optional.empty();
    }

    /** Whether the design may be changed. */
    boolean open() {
        return session.locked().isEmpty();
    }

    /** All marks selected. */
    List<Mark> selected() {
        return pages.selected();
    }

    /** The marks selected that may be changed. */
    List<Mark> free() {
        return open() ? selected().stream().filter(each -> !held(each)).toList() : List.of();
    }

    static boolean held(Mark mark) {
        return mark.isLocked() || mark.eContainer() instanceof Layer layer && layer.isLocked();
    }

    /** The side shown; empty while nothing was ever put on it. */
    Optional<Side> side() {
        return session.design().getSides().stream().filter(each -> pages.face().equals(each.getName())).findFirst();
    }

    /** Box of what a mark prints, mm on the item; empty while that is not known. */
    Envelope box(Mark mark) {
        Envelope box = Boxes.of(session.look(mark).hull(), Pose.of(mark));
        return box.isNull() ? new Envelope(mark.getX(), mark.getX(), mark.getY(), mark.getY()) : box;
    }

    List<Arrange.Boxed> boxed(List<Mark> marks) {
        return marks.stream().map(each -> new Arrange.Boxed(each, box(each))).toList();
    }

    /** Box of several marks. */
    Envelope around(List<Mark> marks) {
        Envelope box = new Envelope();
        marks.forEach(each -> box.expandToInclude(box(each)));
        return box;
    }

    /** The face shown; empty when the catalogue does not know the product. */
    Optional<ItemFace> face() {
        try {
            return session.suite().item(session.design().getProduct()).face(pages.face());
        } catch (ItemException e) {
            return Optional.empty();
        }
    }

    /** The first ink of the design; empty when none is chosen. */
    String ink() {
        return session.design().getInks().isEmpty() ? "" : session.design().getInks().get(0);
    }
}
