/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Values that model files keep as one attribute, such as {@link org.pollex.model.LabColour}. The models themselves are
 * in the packages below, their files in {@link org.pollex.model.store}. Colour computation does not belong here.
 */
package org.pollex.model;
