/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * The client's proof: one page that shows a design at true size, enlarged with its zones and on its material, and says
 * in plain words what it is and what was found. Way in: {@link org.pollex.output.proof.ProofPdf}. Press files do not
 * belong here.
 */
package org.pollex.output.proof;
