/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.batik;

import java.util.IdentityHashMap;
import java.util.Map;

import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.GVTBuilder;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.GraphicsNode;
import org.w3c.dom.Element;

/** Builds graphics nodes and remembers which element each came from, which a static context does not. */
final class MappedBuilder extends GVTBuilder {

    /** Name of the attribute that carries how messages call an element. */
    static final String WHERE = "data-where";

    private final Map<GraphicsNode, Element> elements = new IdentityHashMap<>();

    Map<GraphicsNode, Element> elements() {
        return elements;
    }

    @Override
    public GraphicsNode build(BridgeContext context, Element element) {
        GraphicsNode node = super.build(context, element);
        if (node != null) {
            elements.put(node, element);
        }
        return node;
    }

    @Override
    protected void buildGraphicsNode(BridgeContext context, Element element, CompositeGraphicsNode parent) {
        int before = parent.getChildren().size();
        super.buildGraphicsNode(context, element, parent);
        for (int i = before; i < parent.getChildren().size(); i++) {
            elements.put((GraphicsNode) parent.getChildren().get(i), element);
        }
    }
}
