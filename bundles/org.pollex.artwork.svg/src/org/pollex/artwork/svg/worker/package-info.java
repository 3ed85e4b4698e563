/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Reads heavy or risky art in a separate Java process with a bound on memory and a deadline, so that whatever slips
 * through every other check takes down that process and not the suite.
 * Way in: {@link org.pollex.artwork.svg.worker.SeparateReader}. How art is read does not belong here.
 */
package org.pollex.artwork.svg.worker;
