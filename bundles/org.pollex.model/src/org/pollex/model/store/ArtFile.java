/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

/**
 * A file of art as a placement names it.
 *
 * @param path    relative to the folder of the design, forward slashes
 * @param sha256  of its bytes, lower-case hex
 */
public record ArtFile(String path, String sha256) {
}
