/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Makes and changes designs for the words: a new design from art, art placed as large as it goes. Reading options does
 * not belong here.
 */
package org.pollex.commandline.making;
