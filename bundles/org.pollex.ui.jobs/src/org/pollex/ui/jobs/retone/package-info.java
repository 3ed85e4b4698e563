/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: re-toning in the window: the wizard that makes a sibling for another material, and what tells that the art a
 * sibling was made from changed.
 *
 * <p>Way in: {@link org.pollex.ui.jobs.retone.RetoneWizard}, {@link org.pollex.ui.jobs.retone.SourceWatch}.
 *
 * <p>Does not belong: how art is re-toned (print), how a sibling is made (making).
 */
package org.pollex.ui.jobs.retone;
