/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: makes jobs and designs from what a user chose: product, material, inks, art.
 *
 * <p>Way in: used by the command line and the workbench alike.
 *
 * <p>Does not belong: words of the command line, windows.
 */
package org.pollex.making;
