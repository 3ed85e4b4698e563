/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Findings that an art director waives: how a finding is known again after small changes, and which findings of a run
 * are waived. Way in: {@link org.pollex.rules.waiver.Waivers}. Who may waive, and where jobs are kept, does not belong
 * here.
 */
package org.pollex.rules.waiver;
