/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.app.help;

/**
 * A page of help.
 *
 * @param name   by which other parts of the window ask for the page
 * @param title  of the page
 * @param text   in the part of Markdown that {@link HelpText} knows
 */
public record HelpPage(String name, String title, String text) {
}
