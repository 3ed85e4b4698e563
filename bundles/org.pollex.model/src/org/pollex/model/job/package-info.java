/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * One order of one client, as generated from {@code model/job.ecore}: its designs, revisions with their sign-offs, and
 * the findings that were waived. Start at {@link org.pollex.model.job.Job}; make objects with
 * {@link org.pollex.model.job.JobFactory}. Designs are named by path relative to the job. No behaviour belongs here.
 */
package org.pollex.model.job;
