/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.work;

/** Sentences of {@code org.pollex.making} that name an option of the command line, in words of the window. */
final class InWindow {

    private InWindow() {
    }

    static String words(String sentence) {
        return String.valueOf(sentence)
                .replace("add --largest to fit it to the safe zone", "have it placed as large as fits")
                .replace("choose another name, or replace it with --force", "choose another name")
                .replace("leave --back out", "take the art of the back away")
                .replace("leave --front out", "take the art of the front away");
    }
}
