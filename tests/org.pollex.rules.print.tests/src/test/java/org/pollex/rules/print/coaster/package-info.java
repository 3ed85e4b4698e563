/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * A family that lives in these tests only: what a bundle with a new family holds, and nothing outside it. Its
 * declaration and catalogue are in the folder {@code coaster} of the test resources.
 */
package org.pollex.rules.print.coaster;
