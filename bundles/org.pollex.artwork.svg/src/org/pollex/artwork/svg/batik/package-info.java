/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Reads through Batik what the reader of the common subset leaves: the cleaned tree is put into the words Batik knows,
 * Batik builds its graphics nodes, and these are walked into art. Runs in a process of its own, since Batik bounds
 * neither time nor memory.
 * Way in: {@link org.pollex.artwork.svg.batik.BatikReader}. What is safe is decided at the gate, not here.
 */
package org.pollex.artwork.svg.batik;
