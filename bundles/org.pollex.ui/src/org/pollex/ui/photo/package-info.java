/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Photographs in the window: read in the background, fitted into a control, marked with the mouse. What is done with
 * the marks belongs to whoever asks for them.
 */
package org.pollex.ui.photo;
