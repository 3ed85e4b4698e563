/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.report;

/**
 * What a report says about a check.
 *
 * @param id           of the check
 * @param name         for people
 * @param description  why it matters and what to do
 */
public record RuleText(String id, String name, String description) {
}
