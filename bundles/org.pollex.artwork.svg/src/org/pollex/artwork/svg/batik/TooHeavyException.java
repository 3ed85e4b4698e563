/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.batik;

/** Carries a refusal out of Batik's painting, where no checked exception passes. The message is a reason. */
final class TooHeavyException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    TooHeavyException(String reason) {
        super(reason);
    }
}
