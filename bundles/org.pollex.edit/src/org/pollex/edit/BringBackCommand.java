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
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Gives a design or a catalogue everything another one holds: unsaved work that was kept, or an earlier state. */
public final class BringBackCommand extends FeatureCommand {

    /**
     * @param root  what is changed
     * @param from  of the same kind, not changed; a copy of what it holds is taken
     */
    public <T extends EObject> BringBackCommand(String label, T root, T from) {
        super(label, root, values(EcoreUtil.copy(from)));
    }

    private static Map<EStructuralFeature, Object> values(EObject copy) {
        Map<EStructuralFeature, Object> values = new LinkedHashMap<>();
        for (EStructuralFeature feature : copy.eClass().getEAllStructuralFeatures()) {
            Object value = copy.eGet(feature);
            values.put(feature, value instanceof List<?> list ? new ArrayList<>(list) : value);
        }
        return values;
    }
}
