/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import java.nio.file.Path;
import org.eclipse.emf.ecore.EObject;

/**
 * A model together with the file that it came from or went to, as that file was then.
 *
 * @param path    the file
 * @param model   the model, free to be edited
 * @param stamp   what the file was; compared with the disk before the next save
 * @param format  format that the file was written in; when older than the current one, the model was migrated in
 *                memory and the file is rewritten by the next save
 */
public record Opened<T extends EObject>(Path path, T model, Stamp stamp, int format) {
}
