/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.view;

import org.eclipse.draw2d.FreeformLayer;
import org.eclipse.draw2d.Layer;
import org.eclipse.draw2d.LayeredPane;
import org.eclipse.draw2d.FreeformLayeredPane;
import org.eclipse.draw2d.ScalableFreeformLayeredPane;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.editparts.ScalableFreeformRootEditPart;

/**
 * Root part whose figures count in micrometres and draw crisp from 50 to 3200 %. The scroll range is the contents with
 * a margin round them.
 */
public final class CrispRoot extends ScalableFreeformRootEditPart {

    /** Layer above the art that holds findings and readouts; drawn, never hit. */
    public static final String FINDINGS_LAYER = "Pollex findings";

    private static final int MARGIN = Scale.um(8);

    /** A root at 100 %. */
    public CrispRoot() {
        getZoomManager().setZoomLevels(Scale.levels());
        getZoomManager().setUIMultiplier(1 / Scale.PX_UM);
        getZoomManager().setZoom(Scale.PX_UM);
    }

    @Override
    protected ScalableFreeformLayeredPane createScaledLayers() {
        ScalableFreeformLayeredPane pane = new CrispPane();
        pane.add(getPrintableLayers(), PRINTABLE_LAYERS);
        pane.add(new UnhitLayer(), FINDINGS_LAYER);
        return pane;
    }

    @Override
    protected LayeredPane createPrintableLayers() {
        FreeformLayeredPane pane = new FreeformLayeredPane();
        pane.add(new MarginLayer(), PRIMARY_LAYER);
        return pane;
    }

    /** The layer for findings. */
    public Layer findings() {
        return (Layer) getLayer(FINDINGS_LAYER);
    }

    private static final class MarginLayer extends FreeformLayer {
        @Override
        public Rectangle getFreeformExtent() {
            return super.getFreeformExtent().getCopy().expand(MARGIN, MARGIN);
        }
    }

    private static final class UnhitLayer extends FreeformLayer {
        UnhitLayer() {
            setEnabled(false);
        }

        @Override
        public boolean containsPoint(int x, int y) {
            return false;
        }
    }
}
