/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Pictures of a design on its material, as pixels. Way in: {@link org.pollex.output.picture.MaterialPicture}. Pages for
 * the client and files for the press do not belong here.
 */
package org.pollex.output.picture;
