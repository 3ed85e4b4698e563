/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: how a design will look: at true size, under the loupe, on its material, from afar;
 * and the files made from it.
 *
 * <p>Way in: the extensions of this bundle.
 *
 * <p>Does not belong: what another view could use; that is in org.pollex.ui.
 */
package org.pollex.ui.pictures;
