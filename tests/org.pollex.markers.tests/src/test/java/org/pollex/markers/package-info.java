/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: what can be said of findings on files without a workspace.
 *
 * <p>Way in: the test classes.
 *
 * <p>Does not belong: markers themselves, which the journeys see in a running workspace.
 */
package org.pollex.markers;
