/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Plane areas from painted shapes that overlap, cross themselves and share edges: cut at their crossings once, on an
 * integer grid of 10 nm, then labelled face by face. Way in: {@link org.pollex.print.arrange.Arrangement}. Knows
 * shapes, clips and numbers as labels; inks, colours and designs do not belong here.
 */
package org.pollex.print.arrange;
