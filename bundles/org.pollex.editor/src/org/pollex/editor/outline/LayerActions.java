/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.outline;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.ui.actions.ActionRegistry;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.contexts.IContextService;
import org.pollex.editor.action.Changes;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;

/** What can be done with lines of the tree: in its toolbar, its menu, and by keys while it has the focus. */
final class LayerActions {

    private static final String OWN = "org.pollex.editor.";

    private final LayersPage page;
    private final TreeViewer viewer;
    private final Map<String, Entry> entries = new LinkedHashMap<>();

    LayerActions(LayersPage page, TreeViewer viewer) {
        this.page = page;
        this.viewer = viewer;
        entry("add-layer", "New layer", "add-layer", OWN + "add-layer", this::addLayer);
        entry("rename", "Rename", "", "org.eclipse.ui.edit.rename", this::rename);
        change("hide", "Hide or show", "hide", OWN + "hide", LayerChanges::hide);
        change("lock", "Lock or unlock", "lock", OWN + "lock", LayerChanges::lock);
        change("up", "Move up", "up", OWN + "forward", lines -> LayerChanges.step(lines, true));
        change("down", "Move down", "down", OWN + "backward", lines -> LayerChanges.step(lines, false));
        entry("delete", "Delete", "remove", "org.eclipse.ui.edit.delete", this::delete);
        toolbar();
        keys();
        MenuManager menu = new MenuManager();
        menu.setRemoveAllWhenShown(true);
        menu.addMenuListener(this::fill);
        viewer.getTree().setMenu(menu.createContextMenu(viewer.getTree()));
        viewer.getTree().addDisposeListener(event -> menu.dispose());
        update();
    }

    /** Gives what to do, or nothing while it cannot be done. */
    private interface Doing {
        Optional<Runnable> now();
    }

    /** An action that asks each time whether it can be done; not while a name is typed. */
    private final class Entry extends Action {

        private final Doing doing;

        Entry(String words, String icon, String command, Doing doing) {
            super(words);
            this.doing = doing;
            setToolTipText(words);
            setActionDefinitionId(command);
            if (!icon.isEmpty()) {
                setImageDescriptor(Thumbs.icon(icon));
            }
        }

        private Optional<Runnable> possible() {
            return page.open() && !viewer.isCellEditorActive() ? doing.now() : Optional.empty();
        }

        void update() {
            setEnabled(possible().isPresent());
        }

        @Override
        public void run() {
            possible().ifPresent(Runnable::run);
        }
    }

    private void entry(String name, String words, String icon, String command, Doing doing) {
        entries.put(name, new Entry(words, icon, command, doing));
    }

    private void change(String name, String words, String icon, String command,
            Function<List<?>, Optional<Command>> change) {
        entry(name, words, icon, command, () -> change.apply(page.selected()).map(each -> () -> page.run(each)));
    }

    private Optional<Runnable> addLayer() {
        return Optional.of(() -> {
            Face face = page.face();
            Optional<Layer> above = page.selected().stream().findFirst().map(each -> each instanceof Mark mark
                    ? mark.eContainer() : each).filter(Layer.class::isInstance).map(Layer.class::cast);
            page.session().ifPresent(session -> {
                Layer layer = Changes.newLayer(session.design(), face.name());
                page.run(Changes.addLayer(session.design(), face.name(), layer, above));
                if (layer.eContainer() != null) {
                    page.select(List.of(layer));
                    page.rename(layer);
                }
            });
        });
    }

    private Optional<Runnable> rename() {
        List<Object> lines = page.selected();
        return lines.size() == 1 && !(lines.get(0) instanceof Face) ? Optional.of(() -> page.rename(lines.get(0)))
                : Optional.empty();
    }

    private Optional<Runnable> delete() {
        List<Object> lines = page.selected();
        return LayerChanges.delete(lines).map(each -> () -> {
            Optional<Object> beside = beside(lines);
            page.run(each);
            beside.ifPresent(line -> page.select(List.of(line)));
        });
    }

    /** The line that takes the place of those that go: the next below, above, or what they are in. */
    private Optional<Object> beside(List<Object> lines) {
        LayerTree tree = (LayerTree) viewer.getContentProvider();
        Object last = lines.get(lines.size() - 1);
        Object parent = tree.getParent(last);
        if (parent == null) {
            return Optional.empty();
        }
        List<Object> all = new ArrayList<>(List.of(tree.getChildren(parent)));
        int at = all.indexOf(last);
        List<Object> nearest = new ArrayList<>(all.subList(at, all.size()));
        List<Object> above = new ArrayList<>(all.subList(0, at));
        java.util.Collections.reverse(above);
        nearest.addAll(above);
        nearest.removeAll(lines);
        return Optional.of(nearest.isEmpty() ? parent : nearest.get(0));
    }

    /** Greys what cannot be done now. */
    void update() {
        entries.values().forEach(Entry::update);
    }

    private void toolbar() {
        IToolBarManager bar = page.getSite().getActionBars().getToolBarManager();
        for (String name : new String[] {"add-layer", "up", "down", "hide", "lock", "delete"}) {
            bar.add(entries.get(name));
        }
    }

    private void keys() {
        IActionBars bars = page.getSite().getActionBars();
        ActionRegistry history = page.editor().getAdapter(ActionRegistry.class);
        for (ActionFactory each : new ActionFactory[] {ActionFactory.UNDO, ActionFactory.REDO}) {
            bars.setGlobalActionHandler(each.getId(), history.getAction(each.getId()));
        }
        bars.setGlobalActionHandler(ActionFactory.DELETE.getId(), entries.get("delete"));
        bars.setGlobalActionHandler(ActionFactory.RENAME.getId(), entries.get("rename"));
        // the handlers of a page in a book are never asked; those of its bars are, under the command they name
        for (String name : new String[] {"add-layer", "hide", "lock", "up", "down"}) {
            Entry entry = entries.get(name);
            bars.setGlobalActionHandler(entry.getActionDefinitionId(), entry);
        }
        bars.updateActionBars();
        page.getSite().getService(IContextService.class).activateContext(OWN + "layers");
    }

    private void fill(IMenuManager menu) {
        update();
        List<Object> lines = page.selected();
        menu.add(entries.get("add-layer"));
        menu.add(entries.get("rename"));
        MenuManager layers = new MenuManager("Move to &layer", OWN + "layers.move");
        page.session().ifPresent(session -> LayerTree.faces(session).forEach(face -> face.side(session.design())
                .ifPresent(side -> {
                    for (int i = side.getLayers().size() - 1; i >= 0; i--) {
                        layers.add(moving(face, side.getLayers().get(i), lines));
                    }
                })));
        menu.add(layers);
        menu.add(new Separator());
        menu.add(entries.get("up"));
        menu.add(entries.get("down"));
        menu.add(new Separator());
        menu.add(entries.get("hide"));
        menu.add(entries.get("lock"));
        menu.add(new Separator());
        menu.add(entries.get("delete"));
    }

    private Action moving(Face face, Layer layer, List<Object> lines) {
        Optional<Command> move = LayerChanges.into(lines, layer, layer.getMarks().size());
        Action action = new Action((LayerWords.name(face) + ": " + LayerWords.name(layer)).replace("&", "&&")) {
            @Override
            public void run() {
                move.ifPresent(page::run);
            }
        };
        action.setEnabled(page.open() && move.isPresent());
        return action;
    }
}
