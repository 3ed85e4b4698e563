/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * How long a print lasts.
 *
 * <p>Purpose: a forecast of what share of a print is worn off after hours of use, by Archard's law over the wear field
 * of the family. Way in: {@link org.pollex.print.wear.WearForecast}. It is a model: only its rate can be calibrated,
 * from one worn sample. Does not belong here: findings, and pictures.
 */
package org.pollex.print.wear;
