/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * What every picture of an item shares, whether it is drawn on pixels or on a page: the colours that the print will
 * have, shapes from geometry, and the look of the zones. Pixels and pages themselves do not belong here.
 */
package org.pollex.output.drawing;
