/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Which version of the suite is running. What a call needs from the outside is in {@code org.pollex.making.session}.
 */
package org.pollex.commandline.session;
