/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * What the bare item looks like.
 *
 * <p>Purpose: the pattern of a material, place by place: flecks, patches, swirls, made from a seed or taken from a
 * photograph. Way in: {@link org.pollex.print.stock.Stock}. Does not belong here: ink on it, and how it is judged.
 */
package org.pollex.print.stock;
