/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.util.function.Supplier;

/**
 * A contributed check: what people are told about it, who contributed it, and how to make it.
 *
 * @param id           stable id, lower-case words joined by hyphens
 * @param name         name for people
 * @param description  why it matters and what to do about a finding
 * @param contributor  name of the bundle it comes from
 * @param check        makes the check; called at most once for a suite, and may fail
 */
public record CheckEntry(String id, String name, String description, String contributor, Supplier<Check> check) {
}
