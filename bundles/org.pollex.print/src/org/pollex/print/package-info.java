/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * A design as it will be printed: per side, areas of ink in mm that do not overlap. Rules, pictures and plates all read
 * {@link org.pollex.print.Printed}; what is checked is what is printed. Way in: {@link org.pollex.print.DesignPrinter}.
 */
package org.pollex.print;
