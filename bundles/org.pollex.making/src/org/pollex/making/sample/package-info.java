/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: the sample job, an invented ferry line with three designs drawn for this project.
 *
 * <p>Way in: {@link org.pollex.making.sample.SampleJob}.
 *
 * <p>Does not belong: real clients.
 */
package org.pollex.making.sample;
