/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.page;

import java.util.Locale;
import org.eclipse.gef.editparts.ZoomListener;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.jface.action.StatusLineContributionItem;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.part.EditorActionBarContributor;
import org.pollex.editor.session.DesignPages.PointerListener;
import org.pollex.editor.setting.LengthUnit;
import org.pollex.editor.view.Scale;

/**
 * Hands undo and redo of the window to the editor that is in front, and tells in the status line
 * where the pointer is and how far the drawing is enlarged.
 */
public final class DesignContributor extends EditorActionBarContributor implements PointerListener, ZoomListener {

    private static final ActionFactory[] SHARED = {ActionFactory.UNDO, ActionFactory.REDO};
    private static final int PLACE_WIDTH = 26;
    private static final int ZOOM_WIDTH = 12;

    private final StatusLineContributionItem place = new StatusLineContributionItem("org.pollex.editor.place",
            PLACE_WIDTH);
    private final StatusLineContributionItem zoom = new StatusLineContributionItem("org.pollex.editor.zoom",
            ZOOM_WIDTH);
    private SideTabs followed;

    @Override
    public void contributeToStatusLine(IStatusLineManager line) {
        line.add(place);
        line.add(zoom);
    }

    @Override
    public void setActiveEditor(IEditorPart editor) {
        IActionBars bars = getActionBars();
        for (ActionFactory factory : SHARED) {
            IAction action = editor instanceof DesignEditor design ? design.action(factory.getId()) : null;
            bars.setGlobalActionHandler(factory.getId(), action);
        }
        bars.updateActionBars();
        follow(editor instanceof DesignEditor design ? design.tabs() : null);
    }

    private void follow(SideTabs tabs) {
        unfollow();
        followed = tabs;
        left();
        zoom.setText("");
        if (tabs != null) {
            tabs.add((PointerListener) this);
            tabs.add((ZoomListener) this);
            if (tabs.page() != null) {
                zoomChanged(tabs.page().root().getZoomManager().getZoom());
            }
        }
    }

    private void unfollow() {
        if (followed != null) {
            followed.remove((PointerListener) this);
            followed.remove((ZoomListener) this);
            followed = null;
        }
    }

    @Override
    public void over(String face, double x, double y) {
        LengthUnit unit = LengthUnit.chosen();
        String form = unit == LengthUnit.MM ? "x %.2f  y %.2f %s" : "x %.3f  y %.3f %s";
        place.setText(String.format(Locale.ROOT, form, x / unit.millimetres() + 0.0, y / unit.millimetres() + 0.0,
                unit.label()));
    }

    @Override
    public void left() {
        place.setText("");
    }

    @Override
    public void zoomChanged(double value) {
        zoom.setText(Math.round(value / Scale.PX_UM * 100) + " %");
    }

    @Override
    public void dispose() {
        unfollow();
        super.dispose();
    }
}
