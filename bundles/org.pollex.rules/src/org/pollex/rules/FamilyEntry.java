/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.util.function.Supplier;
import org.pollex.print.item.ItemBuilder;

/**
 * A contributed family: who contributed it and how to make the builder of its items. Name and description are those of
 * the family's entry in the catalogue.
 *
 * @param id           id of the family in the catalogue
 * @param contributor  name of the bundle it comes from
 * @param builder      makes the builder; called at most once for a suite, and may fail
 */
public record FamilyEntry(String id, String contributor, Supplier<ItemBuilder> builder) {
}
