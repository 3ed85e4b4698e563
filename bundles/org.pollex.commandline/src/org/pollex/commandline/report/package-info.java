/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * What a call says of the findings of many designs: a summary for people, JUnit XML for build servers. Finding them
 * does not belong here.
 */
package org.pollex.commandline.report;
