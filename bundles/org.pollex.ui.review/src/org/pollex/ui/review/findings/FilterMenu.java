/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.findings;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IMenuCreator;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.ToolItem;
import org.pollex.rules.Severity;

/** Check marks for what is listed: severities, sides, checks, waived findings. */
final class FilterMenu {

    private final FindingFilter filter;
    private final Supplier<List<Found>> all;
    private final Function<String, String> checkName;
    private final Runnable changed;
    private final Runnable everything;

    /**
     * @param all         what could be listed
     * @param checkName   the name of a check by its id
     * @param changed     is run after a mark was set or taken off
     * @param everything  lists all again
     */
    FilterMenu(FindingFilter filter, Supplier<List<Found>> all, Function<String, String> checkName,
            Runnable changed, Runnable everything) {
        this.filter = filter;
        this.all = all;
        this.checkName = checkName;
        this.changed = changed;
        this.everything = everything;
    }

    /** The menu, its lines made anew whenever it opens. */
    MenuManager manager(String title) {
        MenuManager menu = new MenuManager(title);
        menu.setRemoveAllWhenShown(true);
        menu.addMenuListener(this::fill);
        return menu;
    }

    private void fill(IMenuManager menu) {
        for (Severity each : Severity.values()) {
            String words = switch (each) {
                case ERROR -> "&Errors";
                case WARNING -> "&Warnings";
                default -> "&Notes";
            };
            menu.add(new Mark(words, filter.shows(each), on -> filter.show(each, on)));
        }
        menu.add(new Mark("Wai&ved findings", filter.showsWaived(), filter::showWaived));
        menu.add(new Separator());
        for (String side : sides()) {
            menu.add(new Mark(FindingGroup.side(side), filter.showsSide(side), on -> filter.showSide(side, on)));
        }
        menu.add(new Separator());
        MenuManager checks = new MenuManager("&Checks");
        for (String check : checks()) {
            checks.add(new Mark(checkName.apply(check).replace("&", "&&"), filter.showsCheck(check),
                    on -> filter.showCheck(check, on)));
        }
        menu.add(checks);
        menu.add(new Separator());
        menu.add(new Action("Show ever&ything") {
            @Override
            public void run() {
                everything.run();
            }
        });
    }

    private Collection<String> sides() {
        Set<String> sides = new LinkedHashSet<>();
        all.get().forEach(each -> sides.add(each.finding().side()));
        return sides;
    }

    private Collection<String> checks() {
        return all.get().stream().map(each -> each.finding().check()).distinct()
                .sorted(Comparator.comparing(checkName)).toList();
    }

    /** A button of a tool bar that opens the menu. */
    IAction button(Control owner) {
        return new Button(owner);
    }

    private final class Mark extends Action {

        private final Consumer<Boolean> set;

        Mark(String words, boolean on, Consumer<Boolean> set) {
            super(words, IAction.AS_CHECK_BOX);
            this.set = set;
            setChecked(on);
        }

        @Override
        public void run() {
            set.accept(isChecked());
            changed.run();
        }
    }

    private final class Button extends Action implements IMenuCreator {

        private final MenuManager menu = manager("Show");

        Button(Control owner) {
            super("Show", IAction.AS_DROP_DOWN_MENU);
            setToolTipText("Which findings are listed");
            setMenuCreator(this);
            owner.addDisposeListener(event -> menu.dispose());
        }

        @Override
        public void runWithEvent(Event event) {
            if (event.widget instanceof ToolItem item) {
                Menu shown = getMenu(item.getParent());
                Rectangle box = item.getBounds();
                shown.setLocation(item.getParent().toDisplay(box.x, box.y + box.height));
                shown.setVisible(true);
            }
        }

        @Override
        public Menu getMenu(Control parent) {
            return menu.getMenu() == null || menu.getMenu().isDisposed() ? menu.createContextMenu(parent)
                    : menu.getMenu();
        }

        @Override
        public Menu getMenu(Menu parent) {
            return null;
        }

        @Override
        public void dispose() {
            menu.dispose();
        }
    }
}
