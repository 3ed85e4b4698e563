/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

/** Rewrites the elements of a file from one format to the next, in memory; the file itself is left as it is. */
interface Migration {

    /**
     * @param root  root element, rewritten in place
     * @throws Stuck when an old value has no meaning
     */
    void apply(XmlElement root) throws Stuck;

    /** An old value that cannot be carried over. The message names the attribute and what it must be. */
    final class Stuck extends Exception {

        private static final long serialVersionUID = 1L;
        private final int line;

        Stuck(XmlElement element, String what) {
            super("<" + element.name() + "> " + what);
            this.line = element.line();
        }

        int line() {
            return line;
        }
    }
}
