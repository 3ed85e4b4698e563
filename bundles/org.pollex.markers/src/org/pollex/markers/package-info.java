/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: findings on the files of the workspace, and the builder that keeps them true.
 *
 * <p>Way in: the studio project and the marker type declared here.
 *
 * <p>Does not belong: anything with a window.
 */
package org.pollex.markers;
