/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import java.nio.file.Path;

/**
 * The file on disk is not the one that was opened: somebody else saved, removed or created it meanwhile. Nothing was
 * written. Ask the person, then either open the file again or call {@link ModelStore#replace}.
 */
public class ChangedOnDiskException extends StoreException {

    private static final long serialVersionUID = 1L;

    ChangedOnDiskException(Path file, String what) {
        super(Reason.CHANGED_ON_DISK, file, what, null);
    }
}
