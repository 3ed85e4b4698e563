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
import java.util.Objects;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * Gives features of one object new values. A feature that was unset before is unset again by undo, so that a file does
 * not gain attributes by a change that was taken back.
 */
abstract class FeatureCommand extends ModelCommand {

    private final EObject target;
    private final Map<EStructuralFeature, Object> values;
    private final Map<EStructuralFeature, Object> old = new LinkedHashMap<>();

    FeatureCommand(String label, EObject target, Map<EStructuralFeature, Object> values) {
        super(label);
        this.target = Objects.requireNonNull(target);
        this.values = new LinkedHashMap<>(values);
        for (EStructuralFeature feature : values.keySet()) {
            if (target.eClass().getFeatureID(feature) < 0) {
                throw new IllegalArgumentException(target.eClass().getName() + " has no feature " + feature.getName());
            }
        }
    }

    @Override
    protected final void keep() {
        old.clear();
        for (EStructuralFeature feature : values.keySet()) {
            old.put(feature, target.eIsSet(feature) ? copy(target.eGet(feature)) : null);
        }
    }

    @Override
    public final void redo() {
        values.forEach((feature, value) -> target.eSet(feature, value));
    }

    @Override
    public final void undo() {
        old.forEach((feature, value) -> {
            if (value == null) {
                target.eUnset(feature);
            } else {
                target.eSet(feature, value);
            }
        });
    }

    private static Object copy(Object value) {
        return value instanceof List<?> list ? new ArrayList<>(list) : value;
    }
}
