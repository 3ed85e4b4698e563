/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

/** A view of a bundle made elsewhere that does not work. */
public final class BrokenView extends ViewPart {

    @Override
    public void createPartControl(Composite parent) {
        throw new IllegalStateException("this view never opens");
    }

    @Override
    public void setFocus() {
        throw new IllegalStateException("this view never takes the focus");
    }
}
