/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: journeys through the whole product, in a real window, as a user would go them.
 *
 * <p>Way in: each test class is one journey; every journey leaves a picture in the module's target folder.
 *
 * <p>Does not belong: anything that can be tested without a window.
 */
package org.pollex.journeys;
