/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Rates of wear as the catalogues have them.
 *
 * <p>Purpose: what a forecast of wear needs, from the settings. Way in: {@link org.pollex.rules.wear.Uses}. Does not
 * belong here: the forecast itself.
 */
package org.pollex.rules.wear;
