/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Figures: the item with its zones, marks as they will print, findings at their walls. They draw plain values and know
 * neither the model nor edit parts.
 */
package org.pollex.editor.figure;
