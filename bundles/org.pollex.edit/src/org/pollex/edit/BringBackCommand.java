/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.pollex.model.design.Design;

/** Gives a design everything another one holds: unsaved work that was kept, or an earlier state. */
public final class BringBackCommand extends FeatureCommand {

    /** @param from not changed; a copy of what it holds is taken */
    public BringBackCommand(String label, Design design, Design from) {
        super(label, design, values(EcoreUtil.copy(from)));
    }

    private static Map<EStructuralFeature, Object> values(Design copy) {
        Map<EStructuralFeature, Object> values = new LinkedHashMap<>();
        for (EStructuralFeature feature : copy.eClass().getEAllStructuralFeatures()) {
            Object value = copy.eGet(feature);
            values.put(feature, value instanceof List<?> list ? new ArrayList<>(list) : value);
        }
        return values;
    }
}
