/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * A page to draw on in millimetres, as plain PDF: shapes, text in embedded fonts, pictures. Way in:
 * {@link org.pollex.output.page.Sheet}. What is drawn on it does not belong here.
 */
package org.pollex.output.page;
