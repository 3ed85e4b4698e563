/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Checks and what they find. A check is a declaration in an extension and a stateless class; the engine names none of
 * them. Way in: {@link org.pollex.rules.Suite}. Checks themselves, markers and screens do not belong here.
 */
package org.pollex.rules;
