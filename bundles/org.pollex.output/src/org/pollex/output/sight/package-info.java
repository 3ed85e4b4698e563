/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: what an eye still resolves of a print from some way off.
 *
 * <p>Way in: {@link org.pollex.output.sight.Sight}.
 *
 * <p>Does not belong: judging colours.
 */
package org.pollex.output.sight;
