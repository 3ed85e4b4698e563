/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.placement;

import java.util.List;

/**
 * The largest placement found: the art's point p comes to lie at scale * R(turn) * p + (dx, dy).
 *
 * @param scale      the factor by which the art is scaled about its own origin, above 0
 * @param dx         where its origin comes to lie, mm
 * @param dy         where its origin comes to lie, mm
 * @param turn       degrees clockwise on screen, in [-180, 180]
 * @param contacts   where the art's hull touches the zone
 * @param certified  whether no placement at this turn is larger than {@code upperBound}, by proof
 * @param upperBound a scale that nothing at this turn exceeds; equal to {@code scale} where the answer is exact
 */
public record Fit(double scale, double dx, double dy, double turn, List<Contact> contacts, boolean certified,
        double upperBound) {

    /** Copies the list. */
    public Fit {
        contacts = List.copyOf(contacts);
    }
}
