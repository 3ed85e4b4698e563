/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * The item as geometry: outline, zones and wear field of every printed face. Families build it from a product of the
 * catalogue; print, rules and pictures read it.
 */
package org.pollex.print.item;
