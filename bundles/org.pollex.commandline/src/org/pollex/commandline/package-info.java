/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * The suite without a window: words that make, check, place and show designs. Way in:
 * {@link org.pollex.commandline.Main#run}, or the application {@code org.pollex.commandline.application} of the
 * platform. No display is touched. What the words do lives in the packages below.
 */
package org.pollex.commandline;
