/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: the rules that the project sets itself, each as a test that fails with a sentence naming the file and the
 * cure.
 *
 * <p>Way in: {@code releng/verify} runs them with everything else; each class is one subject.
 *
 * <p>Does not belong: tests of what a bundle does; they are in {@code tests/}.
 */
package org.pollex.checks;
