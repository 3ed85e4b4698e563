/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

/**
 * Something wrong in a catalogue that still loads.
 *
 * @param catalogue  name of the catalogue, empty when it has none
 * @param entry      what is wrong, such as {@code product "small-pick"}
 * @param message    one sentence with the cure
 */
public record CatalogueProblem(String catalogue, String entry, String message) {
}
