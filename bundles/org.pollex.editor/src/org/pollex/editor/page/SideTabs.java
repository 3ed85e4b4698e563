/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.eclipse.gef.EditDomain;
import org.eclipse.gef.editparts.ZoomListener;
import org.eclipse.jface.viewers.ISelectionProvider;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.locationtech.jts.geom.Envelope;
import org.pollex.editor.live.show.LiveFindings;
import org.pollex.editor.session.DesignPages;
import org.pollex.editor.session.Known;
import org.pollex.editor.side.SidePage;
import org.pollex.editor.work.Session;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Side;
import org.pollex.print.item.ItemException;
import org.pollex.print.item.ItemFace;

/** The pages of one design behind tabs, one for each face of its item; made anew when the item gets other faces. */
final class SideTabs implements DesignPages {

    private final EditDomain domain;
    private final Map<String, SidePage> pages = new LinkedHashMap<>();
    private final Map<String, LiveFindings> live = new LinkedHashMap<>();
    private final List<PointerListener> pointers = new CopyOnWriteArrayList<>();
    private final List<ZoomListener> zooms = new CopyOnWriteArrayList<>();
    private final PageSelection selection = new PageSelection();
    private Consumer<SidePage> equip = page -> { };
    private Session session;
    private CTabFolder tabs;

    SideTabs(EditDomain domain) {
        this.domain = domain;
    }

    /** Gives every page made from now on something more, such as a menu. */
    void equip(Consumer<SidePage> more) {
        equip = more;
    }

    /** Makes the pages of a session. */
    void create(Composite parent, Session shown) {
        session = shown;
        tabs = new CTabFolder(parent, SWT.BOTTOM | SWT.FLAT);
        tabs.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        tabs.addListener(SWT.Selection, event -> front());
        fill();
    }

    private void fill() {
        for (String face : faces()) {
            SidePage page = new SidePage(tabs, session, face, domain, pointers);
            page.root().getZoomManager().addZoomListener(zoom -> zooms.forEach(each -> each.zoomChanged(zoom)));
            pages.put(face, page);
            equip.accept(page);
            live.put(face, new LiveFindings(page, session));
            CTabItem tab = new CTabItem(tabs, SWT.NONE);
            tab.setText(" " + Character.toUpperCase(face.charAt(0)) + face.substring(1) + " ");
            tab.setControl(page.control());
            tab.setData(face);
        }
        tabs.setSelection(0);
        front();
    }

    private void front() {
        selection.show(page());
        if (page() != null) {
            zooms.forEach(each -> each.zoomChanged(page().root().getZoomManager().getZoom()));
        }
    }

    private List<String> faces() {
        try {
            return session.suite().item(session.design().getProduct()).faces().stream().map(ItemFace::name).toList();
        } catch (ItemException e) {
            // the print says what is wrong; the marks of the sides still show
            List<String> names = session.design().getSides().stream().map(Side::getName)
                    .filter(name -> name != null && !name.isBlank()).distinct().toList();
            return names.isEmpty() ? List.of("front") : names;
        }
    }

    /** The model changed. */
    void refresh() {
        if (tabs.isDisposed()) {
            return;
        }
        if (!faces().equals(new ArrayList<>(pages.keySet()))) {
            String before = face();
            empty();
            fill();
            show(before);
        }
        pages.values().forEach(SidePage::refresh);
    }

    void known(Known known) {
        pages.values().forEach(page -> page.known(known));
    }

    private void empty() {
        selection.show(null);
        for (SidePage page : pages.values()) {
            if (!page.control().isDisposed()) {
                domain.removeViewer(page.viewer());
            }
        }
        pages.clear();
        live.clear();
        if (!tabs.isDisposed()) {
            for (CTabItem tab : tabs.getItems()) {
                tab.getControl().dispose();
                tab.dispose();
            }
        }
    }

    /** Takes all pages away. */
    void close() {
        if (tabs != null) {
            empty();
            tabs.dispose();
        }
    }

    /** The page in front; null when there is none. */
    SidePage page() {
        return pages.get(face());
    }

    /** The findings over the page in front; null when there is none. */
    LiveFindings live() {
        return live.get(face());
    }

    List<SidePage> all() {
        return List.copyOf(pages.values());
    }

    ISelectionProvider selection() {
        return selection;
    }

    /** Hears of the zoom of the page in front. */
    void add(ZoomListener listener) {
        zooms.add(listener);
    }

    void remove(ZoomListener listener) {
        zooms.remove(listener);
    }

    @Override
    public String face() {
        return tabs == null || tabs.isDisposed() || tabs.getSelection() == null ? ""
                : (String) tabs.getSelection().getData();
    }

    @Override
    public void show(String face) {
        if (tabs == null || tabs.isDisposed()) {
            return;
        }
        for (CTabItem tab : tabs.getItems()) {
            if (face.equals(tab.getData()) && tabs.getSelection() != tab) {
                tabs.setSelection(tab);
                front();
            }
        }
    }

    @Override
    public void reveal(String face, Envelope place) {
        show(face);
        if (page() != null && !place.isNull()) {
            page().reveal(place);
        }
    }

    @Override
    public List<Mark> selected() {
        return page() == null ? List.of() : page().selected();
    }

    @Override
    public void select(List<? extends Mark> marks) {
        if (page() != null) {
            page().select(marks);
        }
    }

    @Override
    public void add(PointerListener listener) {
        pointers.add(listener);
    }

    @Override
    public void remove(PointerListener listener) {
        pointers.remove(listener);
    }
}
