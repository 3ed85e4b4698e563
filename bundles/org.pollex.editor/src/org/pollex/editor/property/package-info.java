/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: shows and changes what is selected, as fields.
 *
 * <p>Way in: {@link org.pollex.editor.property.DesignProperties}.
 *
 * <p>Does not belong: fields of the material, inks or job of their own kind.
 */
package org.pollex.editor.property;
