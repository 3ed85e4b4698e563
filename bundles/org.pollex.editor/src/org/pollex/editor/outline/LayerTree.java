/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.outline;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.pollex.editor.session.DesignSession;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Side;
import org.pollex.print.item.ItemException;
import org.pollex.print.item.ItemFace;

/** Which lines does the tree have? Faces in the order of the pages, below them what lies on top first. */
final class LayerTree implements ITreeContentProvider {

    private DesignSession session;

    /** Shows another session. */
    void show(DesignSession shown) {
        session = shown;
    }

    @Override
    public Object[] getElements(Object input) {
        return faces(session).toArray();
    }

    /** Faces of the item, and sides of the design that it does not have. */
    static List<Face> faces(DesignSession session) {
        Set<String> names = new LinkedHashSet<>();
        try {
            session.suite().item(session.design().getProduct()).faces().stream().map(ItemFace::name)
                    .forEach(names::add);
        } catch (ItemException e) {
            // the editor says that the product is not known; its sides can still be worked on
        }
        session.design().getSides().stream().map(Side::getName).filter(Objects::nonNull).forEach(names::add);
        return names.stream().map(Face::new).toList();
    }

    @Override
    public Object[] getChildren(Object element) {
        if (element instanceof Face face) {
            return topFirst(face.side(session.design()).map(Side::getLayers).map(List::copyOf).orElse(List.of()));
        }
        return element instanceof Layer layer ? topFirst(layer.getMarks()) : new Object[0];
    }

    private static Object[] topFirst(List<?> list) {
        List<Object> turned = new ArrayList<>(list);
        java.util.Collections.reverse(turned);
        return turned.toArray();
    }

    @Override
    public Object getParent(Object element) {
        if (element instanceof Mark mark) {
            return mark.eContainer();
        }
        return element instanceof Layer layer ? Face.of(layer).orElse(null) : null;
    }

    @Override
    public boolean hasChildren(Object element) {
        return getChildren(element).length > 0;
    }
}
