/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.app.help;

import java.util.List;

/**
 * A page of help.
 *
 * @param name   by which other parts of the window ask for the page
 * @param title  of the page
 * @param text   in a small part of Markdown: headings, lists, bold, tables are not used
 */
public record HelpPage(String name, String title, String text) {

    /** Paragraphs, headings and list items of the page. */
    public List<String> lines() {
        return text.lines().toList();
    }
}
