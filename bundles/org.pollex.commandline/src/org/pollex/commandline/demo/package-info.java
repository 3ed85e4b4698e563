/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Runs the sample job through with the same steps that a studio takes, and tells of it. The job itself is in
 * {@code org.pollex.making.sample}.
 */
package org.pollex.commandline.demo;
