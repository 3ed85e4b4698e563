/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * The words of the command line: what each takes, and how it ends. A word reads its options and hands over; the work
 * itself does not belong here.
 */
package org.pollex.commandline.word;
