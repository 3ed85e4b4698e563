/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.io.IOException;
import java.net.URL;

/** Finds a file of a contributing bundle. */
interface ResourceLocator {

    /** Inside a running platform, by its own scheme for files of bundles. */
    ResourceLocator PLATFORM = (contributor, path) -> new URL("platform:/plugin/" + contributor + "/" + path);

    /** Address of a file; that it exists is not checked. */
    URL find(String contributor, String path) throws IOException;
}
