/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: the colours in which the editor marks things on an item, in one place.
 *
 * <p>Way in: {@link org.pollex.editor.look.Look}. Colours of the surface around the item follow light and dark and
 * stand in the style sheets of this bundle, {@code css/light.css} and {@code css/dark.css}.
 *
 * <p>Does not belong: colours of materials and inks, which are data of the catalogues.
 */
package org.pollex.editor.look;
