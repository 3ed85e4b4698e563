/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour.cgats;

import org.pollex.colour.Lab;

/**
 * One measured sample.
 *
 * @param name    its name, else its id, as the file has it; never blank, at most {@value #NAME_MOST} characters
 * @param colour  its colour for D50 and the 2 degree observer; L* 0 to 100
 * @param line    line of the file, from 1
 */
public record MeasuredSample(String name, Lab colour, int line) {

    static final int NAME_MOST = 200;
}
