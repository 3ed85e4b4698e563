/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.io.IOException;
import java.io.InputStream;

/**
 * A contributed catalogue file.
 *
 * @param name         what to call it in messages: bundle and path
 * @param contributor  name of the bundle it comes from
 * @param content      opens the file
 */
public record CatalogueEntry(String name, String contributor, Content content) {

    /** Opens the content of a file. */
    @FunctionalInterface
    public interface Content {

        /** A fresh stream that the caller closes. */
        InputStream open() throws IOException;
    }
}
