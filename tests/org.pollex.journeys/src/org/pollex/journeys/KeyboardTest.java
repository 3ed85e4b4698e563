/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.eclipse.core.commands.Command;
import org.eclipse.core.commands.common.NotDefinedException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.bindings.Binding;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.keys.IBindingService;
import org.junit.jupiter.api.Test;

/** Someone who works without a mouse: is every command told about and reached, and does every key mean one thing? */
class KeyboardTest {

    private static List<Command> ours() {
        ICommandService service = Window.window().getService(ICommandService.class);
        List<Command> ours = new ArrayList<>();
        for (Command each : service.getDefinedCommands()) {
            if (each.getId().startsWith("org.pollex.")) {
                ours.add(each);
            }
        }
        assertTrue(ours.size() > 8, "only " + ours.size() + " commands");
        return ours;
    }

    private static Set<String> handled() {
        Set<String> handled = new HashSet<>();
        for (IConfigurationElement each : Platform.getExtensionRegistry()
                .getConfigurationElementsFor("org.eclipse.ui.handlers")) {
            handled.add(each.getAttribute("commandId"));
        }
        for (IConfigurationElement each : Platform.getExtensionRegistry()
                .getConfigurationElementsFor("org.eclipse.ui.commands")) {
            if (each.getAttribute("defaultHandler") != null || each.getChildren("defaultHandler").length > 0) {
                handled.add(each.getAttribute("id"));
            }
        }
        return handled;
    }

    @Test
    void everyCommandHasWordsAndAHandler() throws NotDefinedException {
        Set<String> handled = handled();
        List<String> wrong = new ArrayList<>();
        for (Command each : ours()) {
            if (each.getName().isBlank() || each.getDescription() == null || each.getDescription().isBlank()) {
                wrong.add(each.getId() + " has no name or description");
            }
            if (!handled.contains(each.getId())) {
                wrong.add(each.getId() + " does nothing");
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void noKeyMeansTwoThings() {
        IBindingService service = Window.window().getService(IBindingService.class);
        assertEquals("org.pollex.app.keys", service.getActiveScheme().getId());
        Map<String, Set<String>> meanings = new HashMap<>();
        Set<String> first = new HashSet<>();
        for (Binding each : service.getBindings()) {
            if (each.getParameterizedCommand() == null) {
                continue;
            }
            String key = each.getContextId() + " " + each.getTriggerSequence().format();
            // a key of the scheme of the product hides those of the platform's scheme
            if (each.getSchemeId().equals("org.pollex.app.keys") && first.add(key)) {
                meanings.remove(key);
            }
            if (!first.contains(key) || each.getSchemeId().equals("org.pollex.app.keys")) {
                meanings.computeIfAbsent(key, any -> new HashSet<>()).add(each.getParameterizedCommand().getId());
            }
        }
        List<String> wrong = new ArrayList<>();
        meanings.forEach((key, commands) -> {
            if (commands.size() > 1 && commands.stream().anyMatch(each -> each.startsWith("org.pollex."))) {
                wrong.add(key + " means " + commands);
            }
        });
        assertEquals(List.of(), wrong);
    }

    @Test
    void everyMenuIsReachedByALetterOfItsOwn() {
        Menu bar = Window.window().getShell().getMenuBar();
        Set<Character> letters = new HashSet<>();
        List<String> wrong = new ArrayList<>();
        for (MenuItem each : bar.getItems()) {
            String text = each.getText();
            int mark = text.indexOf('&');
            if (mark < 0 || !letters.add(Character.toLowerCase(text.charAt(mark + 1)))) {
                wrong.add(text);
            }
        }
        assertEquals(List.of(), wrong, "menus of the window without a letter of their own");
    }

    @Test
    void noMenuIsEmptyAndEveryEntryHasWords() {
        List<String> wrong = new ArrayList<>();
        for (MenuItem each : Window.window().getShell().getMenuBar().getItems()) {
            walk(each, each.getText(), wrong);
        }
        assertEquals(List.of(), wrong);
    }

    private static void walk(MenuItem item, String path, List<String> wrong) {
        if (item.getMenu() == null) {
            return;
        }
        item.getMenu().notifyListeners(SWT.Show, new Event());
        boolean something = false;
        for (MenuItem each : item.getMenu().getItems()) {
            if ((each.getStyle() & SWT.SEPARATOR) != 0) {
                continue;
            }
            something = true;
            if (each.getText().isBlank()) {
                wrong.add(path + " has an entry without words");
            }
            walk(each, path + " > " + each.getText(), wrong);
        }
        if (!something) {
            wrong.add(path + " is empty");
        }
        item.getMenu().notifyListeners(SWT.Hide, new Event());
    }
}
