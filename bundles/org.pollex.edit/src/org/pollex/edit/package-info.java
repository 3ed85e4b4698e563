/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Commands over the model: every change a person can make to a design or to the inks of a catalogue, with undo. A
 * command takes all it needs in its constructor, keeps the old state when it is executed, and never runs a computation
 * of its own; placing, checking and drawing do not belong here. Way in: the command classes, and
 * {@link org.pollex.edit.Arrange} for changes of several marks at once.
 */
package org.pollex.edit;
