/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: the first page: from an empty studio to a job in one click.
 *
 * <p>Way in: {@link org.pollex.ui.jobs.welcome.WelcomePage#show}.
 *
 * <p>Does not belong: help texts.
 */
package org.pollex.ui.jobs.welcome;
