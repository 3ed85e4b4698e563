/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: files made from a design at the press of a menu: picture, proof, report of findings.
 *
 * <p>Way in: the handlers of the commands that this bundle contributes.
 *
 * <p>Does not belong: what is in the files.
 */
package org.pollex.ui.pictures.output;
