/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.desk;

import org.pollex.model.job.Job;

/**
 * A job with one of its designs.
 *
 * @param job     the job
 * @param design  path of the design, relative to the job, with forward slashes
 */
public record FoundJob(Job job, String design) {
}
