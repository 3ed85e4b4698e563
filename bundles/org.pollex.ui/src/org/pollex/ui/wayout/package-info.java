/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Ways out of findings that ask the person first, contributed by whoever has one: where they are listed nothing is
 * known of those who bring them. {@link org.pollex.ui.wayout.WaysOut} is the way in. Remedies that need no question do
 * not belong here; they are fixes of the finding itself.
 */
package org.pollex.ui.wayout;
