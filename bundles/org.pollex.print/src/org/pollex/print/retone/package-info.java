/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: the sibling of a piece of art for a ground of the other lightness, in which light stays light and dark
 * stays dark. Ways in: {@link org.pollex.print.retone.OneLightInk} for one ink and for the lines that several need,
 * {@link org.pollex.print.retone.KeptApart} for which of several inks a colour takes so that parts stay apart,
 * {@link org.pollex.print.retone.InkRepair} for lines and gaps of several. Does not belong: files, designs, which inks
 * there are.
 */
package org.pollex.print.retone;
