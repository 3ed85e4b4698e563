/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.side;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.EditDomain;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.MouseWheelHandler;
import org.eclipse.gef.editparts.ZoomManager;
import org.eclipse.gef.ui.parts.GraphicalViewerKeyHandler;
import org.eclipse.gef.ui.parts.ScrollingGraphicalViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.locationtech.jts.geom.Envelope;
import org.pollex.edit.Pose;
import org.pollex.editor.figure.ItemFigure;
import org.pollex.editor.figure.ItemLook;
import org.pollex.editor.figure.MarkLook;
import org.pollex.editor.guide.GuideDrag;
import org.pollex.editor.guide.GuideLines;
import org.pollex.editor.guide.Guides;
import org.pollex.editor.guide.RulerDrag;
import org.pollex.editor.part.DesignPartFactory;
import org.pollex.editor.part.MarkPart;
import org.pollex.editor.part.SidePart;
import org.pollex.editor.part.SideScene;
import org.pollex.editor.session.DesignPages.PointerListener;
import org.pollex.editor.session.Known;
import org.pollex.editor.setting.Amount;
import org.pollex.editor.setting.Choices;
import org.pollex.editor.setting.LengthUnit;
import org.pollex.editor.snap.Snapper;
import org.pollex.editor.view.CrispRoot;
import org.pollex.editor.view.CrispViewer;
import org.pollex.editor.view.GridFigure;
import org.pollex.editor.view.RulerCanvas;
import org.pollex.editor.view.Scale;
import org.pollex.editor.view.SmallDamage;
import org.pollex.editor.view.WheelZoom;
import org.pollex.editor.view.Zoom;
import org.pollex.editor.work.Session;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Side;
import org.pollex.print.SeenPrint;
import org.pollex.print.stock.Stock;

/** One face of the item with its marks, between rulers. */
public final class SidePage implements SideScene {

    private static final int LEAST_WIDTH = 50;
    private static final int AROUND = Scale.um(5);
    private static final double REVEAL_SHARE = 8;
    private static final double REVEAL_LEAST = 1.5;

    private final Session session;
    private final String face;
    private final Composite area;
    private final Composite footer;
    private final CrispRoot root = new CrispRoot();
    private final ScrollingGraphicalViewer viewer = new CrispViewer();
    private final ItemFigure.ZonesFigure zones = new ItemFigure.ZonesFigure(() -> root.getZoomManager().getZoom());
    private final GridFigure grid = new GridFigure(() -> root.getZoomManager().getZoom());
    private final GuideLines guideLines;
    private final SnapLines snapLines;
    private final GuideDrag guideDrag;
    private final List<Control> rulers;
    private final List<PointerListener> pointers;
    private final List<PreviewListener> previews = new ArrayList<>();
    private ItemLook item;
    private double fitted = Scale.PX_UM;
    private Mark previewed;
    private boolean freely;

    /** Hears of gestures while they last. */
    public interface PreviewListener {

        /** A mark is shown at another pose; null when the gesture ended. */
        void previewing(SidePage page, Mark mark, Pose pose);
    }

    /** A page for a face; it lives as long as {@code parent}. */
    public SidePage(Composite parent, Session session, String face, EditDomain domain, List<PointerListener> pointers) {
        this.session = session;
        this.face = face;
        this.pointers = pointers;
        item = FaceLook.of(session, face, Optional.empty());
        Guides guides = new Guides(session, face);
        guideLines = new GuideLines(guides, () -> root.getZoomManager().getZoom());
        snapLines = new SnapLines(() -> root.getZoomManager().getZoom(),
                () -> guideLines.isVisible() ? guides.lines() : List.of());
        area = new Composite(parent, SWT.NONE);
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.horizontalSpacing = 0;
        layout.verticalSpacing = 0;
        area.setLayout(layout);
        Label corner = new Label(area, SWT.NONE);
        corner.setLayoutData(new GridData(RulerCanvas.THICKNESS, RulerCanvas.THICKNESS));
        viewer.setRootEditPart(root);
        Composite top = new Composite(area, SWT.NONE);
        Composite left = new Composite(area, SWT.NONE);
        FigureCanvas canvas = (FigureCanvas) viewer.createControl(area);
        SmallDamage.install(canvas);
        guideDrag = new GuideDrag(guides, guideLines, canvas, root.getZoomManager(), () -> SnapLines.edges(item),
                () -> Shown.GUIDES.set(true));
        RulerDrag.from(ruler(top, true), canvas, true, guideDrag);
        RulerDrag.from(ruler(left, false), canvas, false, guideDrag);
        canvas.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        footer = new Composite(area, SWT.NONE);
        footer.setLayoutData(new GridData(SWT.FILL, SWT.BOTTOM, true, false, 2, 1));
        viewer.setEditPartFactory(new DesignPartFactory(this));
        viewer.setKeyHandler(new GraphicalViewerKeyHandler(viewer));
        viewer.setProperty(MouseWheelHandler.KeyGenerator.getKey(SWT.MOD1), new WheelZoom(root.getZoomManager()));
        domain.addViewer(viewer);
        viewer.setContents(this);
        root.findings().add(grid);
        root.findings().add(zones);
        root.findings().add(guideLines);
        root.findings().add(snapLines);
        showZones();
        rulers = List.of(corner, top, left);
        Runnable following = Shown.follow(this::show);
        Runnable grids = Choices.follow(Set.of(Amount.GRID_STEP.key(), LengthUnit.KEY), grid::repaint);
        area.addDisposeListener(event -> {
            following.run();
            grids.run();
            zones.disposePaths();
        });
        canvas.addListener(SWT.MouseMove, this::pointed);
        canvas.addListener(SWT.MouseExit, event -> pointers.forEach(PointerListener::left));
        canvas.getAccessible().addAccessibleListener(new org.eclipse.swt.accessibility.AccessibleAdapter() {
            @Override
            public void getName(org.eclipse.swt.accessibility.AccessibleEvent event) {
                event.result = "Drawing of the " + face;
            }
        });
        canvas.addListener(SWT.Resize, event -> resized(canvas));
    }

    /** The item stays fitted while the user has not zoomed. */
    private void resized(FigureCanvas canvas) {
        if (canvas.getClientArea().width > LEAST_WIDTH && root.getZoomManager().getZoom() == fitted) {
            canvas.getDisplay().asyncExec(() -> {
                if (!canvas.isDisposed() && root.getZoomManager().getZoom() == fitted) {
                    fit();
                }
            });
        }
    }

    private Control ruler(Composite holder, boolean across) {
        holder.setLayout(new org.eclipse.swt.layout.FillLayout());
        GridData data = across ? new GridData(SWT.FILL, SWT.FILL, true, false)
                : new GridData(SWT.FILL, SWT.FILL, false, true);
        data.widthHint = across ? SWT.DEFAULT : RulerCanvas.THICKNESS;
        data.heightHint = across ? RulerCanvas.THICKNESS : SWT.DEFAULT;
        holder.setLayoutData(data);
        return new RulerCanvas(holder, across, root.getZoomManager());
    }

    private void show(Shown what, boolean on) {
        switch (what) {
            case GRID -> grid.setVisible(on);
            case GUIDES -> guideLines.setVisible(on);
            case SAFE -> zones.set(ItemFigure.ZoneShown.SAFE, on);
            case WEAR -> zones.set(ItemFigure.ZoneShown.WEAR, on);
            case RIM -> zones.set(ItemFigure.ZoneShown.RIM, on);
            case RULERS -> {
                for (Control each : rulers) {
                    ((GridData) each.getLayoutData()).exclude = !on;
                    each.setVisible(on);
                }
                ((GridLayout) area.getLayout()).numColumns = on ? 2 : 1;
                ((GridData) footer.getLayoutData()).horizontalSpan = on ? 2 : 1;
                area.layout();
            }
            case LIVE -> { /* asked for when a gesture begins */ }
            default -> throw new IllegalStateException(what.toString());
        }
    }

    private void pointed(Event event) {
        freely = (event.stateMask & SWT.ALT) != 0;
        Point view = root.getZoomManager().getViewport().getViewLocation();
        double pixels = root.getZoomManager().getZoom() * Scale.UM;
        double x = (view.x + event.x) / pixels;
        double y = (view.y + event.y) / pixels;
        pointers.forEach(each -> each.over(face, x, y));
    }

    private void showZones() {
        zones.show(item);
        Rectangle around = ItemFigure.box(item.area().getEnvelopeInternal()).expand(AROUND, AROUND);
        grid.setBounds(around);
        guideLines.setBounds(around);
    }

    /** The whole page. */
    public Control control() {
        return area;
    }

    /** Room below the drawing. */
    public Composite footer() {
        return footer;
    }

    /** The viewer with the drawing. */
    public ScrollingGraphicalViewer viewer() {
        return viewer;
    }

    /** The root, with the layer for findings and the zoom. */
    public CrispRoot root() {
        return root;
    }

    /** Gestures with the guides of the face. */
    public GuideDrag guideDrag() {
        return guideDrag;
    }

    /** The zones drawn over the item. */
    public ItemFigure.ZonesFigure zones() {
        return zones;
    }

    /** Adds a listener to gestures. */
    public void add(PreviewListener listener) {
        previews.add(listener);
    }

    /** Shows the whole item. */
    public void fit() {
        Rectangle box = ItemFigure.box(item.area().getEnvelopeInternal());
        Zoom.fit(root.getZoomManager(), box.getCopy().expand(Scale.um(1), Scale.um(1)));
        fitted = root.getZoomManager().getZoom();
    }

    /** Zooms about the middle of the window. */
    public void zoom(double factor) {
        ZoomManager manager = root.getZoomManager();
        Rectangle client = manager.getViewport().getClientArea();
        Zoom.about(manager, factor, new Point(client.width / 2, client.height / 2));
    }

    /** Shows a place (mm) enlarged, with something around it. */
    public void reveal(Envelope place) {
        double size = Math.max(REVEAL_LEAST, Math.max(place.getWidth(), place.getHeight()));
        double whole = Math.max(item.area().getEnvelopeInternal().getWidth(), size);
        Envelope around = new Envelope(place.centre());
        around.expandBy(Math.min(whole, size * REVEAL_SHARE) / 2);
        Zoom.fit(root.getZoomManager(), ItemFigure.box(around));
    }

    /** Marks selected. */
    public List<Mark> selected() {
        List<Mark> marks = new ArrayList<>();
        for (Object part : viewer.getSelectedEditParts()) {
            if (part instanceof MarkPart mark) {
                marks.add(mark.mark());
            }
        }
        return marks;
    }

    /** Selects marks. */
    public void select(List<? extends Mark> marks) {
        viewer.deselectAll();
        for (Mark mark : marks) {
            EditPart part = (EditPart) viewer.getEditPartRegistry().get(mark);
            if (part != null) {
                viewer.appendSelection(part);
            }
        }
    }

    /** Shows the model as it is now; the exact print only while it is of this model. */
    public void refresh() {
        ItemLook now = FaceLook.of(session, face, Optional.of(item));
        SidePart part = (SidePart) viewer.getContents();
        if (now.area() != item.area() || now.edge() != item.edge() || !now.material().equals(item.material())
                || !now.surface().equals(item.surface())) {
            item = now;
            showZones();
        }
        part.refreshAll();
        guideLines.repaint();
        showPrint();
    }

    /** Takes a print that was made. */
    public void known(Known known) {
        SeenPrint seen = known.printed().seen();
        // on a pattern the picture of the surface has what shows through
        ((ItemFigure) ((SidePart) viewer.getContents()).getFigure()).print(Stock.patterned(known.printed().material())
                ? List.of() : MarkLook.Area.of(seen.behind(face)), MarkLook.Area.of(seen.own(face)));
        if (previewed == null && item.surface().isPresent()) {
            refresh();
        } else {
            showPrint();
        }
    }

    private void showPrint() {
        boolean exact = previewed == null && session.fresh();
        SidePart part = (SidePart) viewer.getContents();
        ((ItemFigure) part.getFigure()).showPrint(exact);
        for (Object child : part.getChildren()) {
            if (child instanceof MarkPart mark) {
                mark.markFigure().setGhost(exact && session.look(mark.mark()).trouble().isEmpty());
            }
        }
    }

    @Override
    public String face() {
        return face;
    }

    @Override
    public ItemLook item() {
        return item;
    }

    @Override
    public List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        for (Side side : session.design().getSides()) {
            if (face.equals(side.getName())) {
                for (Layer layer : side.getLayers()) {
                    if (!layer.isHidden()) {
                        layer.getMarks().stream().filter(each -> !each.isHidden()).forEach(marks::add);
                    }
                }
            }
        }
        return marks;
    }

    @Override
    public MarkLook look(Mark mark) {
        return session.look(mark);
    }

    @Override
    public boolean locked(Mark mark) {
        return mark.isLocked() || session.locked().isPresent()
                || mark.eContainer() instanceof Layer layer && layer.isLocked();
    }

    @Override
    public void previewing(Mark mark, Pose pose) {
        Mark now = pose == null ? null : mark;
        if (now == null) {
            snapLines.end();
        } else {
            snapLines.show(ItemFigure.box(item.area().getEnvelopeInternal()).expand(AROUND, AROUND));
        }
        if (now != previewed) {
            previewed = now;
            showPrint();
        }
        previews.forEach(each -> each.previewing(this, mark, pose));
    }

    /** The lines the moved mark keeps to now; none when no gesture lasts. */
    public List<Snapper.Line> snapLines() {
        return snapLines.shown();
    }

    @Override
    public Pose snap(Mark mark, Pose wished) {
        return freely || viewer.getSelectedEditParts().size() > 1 ? wished : snapLines.snap(this, mark, wished);
    }
}
