/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.app.help;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.jface.bindings.Binding;
import org.eclipse.jface.bindings.keys.KeyBinding;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.keys.IBindingService;
import org.pollex.editor.measure.Measure;
import org.pollex.editor.setting.Amount;
import org.pollex.markers.StudioSuite;
import org.pollex.rules.CheckEntry;

/** All pages of help: those written, one of all installed checks, one of all keys. */
public final class HelpPages {

    private static final String[] WRITTEN = {"start", "placing", "review", "pictures", "retone", "inks", "swatches",
        "safety"};

    private HelpPages() {
    }

    /** The pages in the order of reading. */
    public static List<HelpPage> all() {
        List<HelpPage> pages = new ArrayList<>();
        for (String name : WRITTEN) {
            pages.add(written(name));
        }
        pages.add(2, findings());
        pages.add(keys());
        return pages;
    }

    private static HelpPage written(String name) {
        try (InputStream in = HelpPages.class.getResourceAsStream("/help/" + name + ".md")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            int end = text.indexOf('\n');
            return new HelpPage(name, text.substring(2, end).strip(), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What every installed check means and what to do. */
    static HelpPage findings() {
        StringBuilder text = new StringBuilder("# What findings mean\n\n"
                + "**Findings** lists those of the design in front, **Problems** those of all saved designs of the "
                + "jobs. Choose **Remedies** in the menu of a problem to mend it, and others of its kind with it. A "
                + "design whose check was stopped says that it is not checked; it is checked with the next change."
                + "\n\n");
        for (CheckEntry check : StudioSuite.get().checks()) {
            text.append("## ").append(check.name()).append("\n\n").append(check.description().strip())
                    .append("\n\n");
        }
        return new HelpPage("findings", "What findings mean", text.toString());
    }

    /** The keys of the commands of the suite. */
    static HelpPage keys() {
        IBindingService bindings = PlatformUI.getWorkbench().getAdapter(IBindingService.class);
        StringBuilder text = new StringBuilder("# Keys\n\n");
        List<String> lines = new ArrayList<>();
        for (Binding each : bindings.getBindings()) {
            if (each instanceof KeyBinding && each.getParameterizedCommand() != null
                    && each.getParameterizedCommand().getId().startsWith("org.pollex.")) {
                try {
                    lines.add("* " + each.getParameterizedCommand().getName() + ": **"
                            + each.getTriggerSequence().format() + "**");
                } catch (org.eclipse.core.commands.common.NotDefinedException e) {
                    // a command that is gone has no key either
                }
            }
        }
        lines.stream().distinct().sorted().forEach(each -> text.append(each).append('\n'));
        text.append("\nIn the drawing: Ctrl and the wheel zoom, arrow keys move what is selected by "
                + Measure.show(Amount.STEP.value()) + " mm, with Shift by " + Measure.show(Amount.FAR_STEP.value())
                + " mm.\n");
        return new HelpPage("keys", "Keys", text.toString());
    }
}
