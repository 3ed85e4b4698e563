/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: columns of the list of problems that say of a finding on which side it is, what was measured against which
 * limit, and by which check.
 *
 * <p>Way in: the bundle's {@code plugin.xml} names the classes as fields of markers, with the attribute each shows.
 *
 * <p>Does not belong: what puts markers on files.
 */
package org.pollex.app.problem;
