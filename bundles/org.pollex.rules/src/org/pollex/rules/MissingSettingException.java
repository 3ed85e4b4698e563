/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.util.List;

/** A check asks for a threshold that no catalogue gives. The message names the key and the catalogues read. */
public final class MissingSettingException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    MissingSettingException(String key, List<String> catalogues) {
        super("setting \"" + key + "\" is missing; add it to the settings of a catalogue (read: "
                + (catalogues.isEmpty() ? "none" : String.join(", ", catalogues)) + ")");
    }
}
