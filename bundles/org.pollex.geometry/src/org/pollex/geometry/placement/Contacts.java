/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.placement;

import java.util.ArrayList;
import java.util.List;

/** Where a placed hull touches a zone: within a millionth of its size. */
final class Contacts {

    private static final double TOUCH = 1e-6;

    private Contacts() {
    }

    static List<Contact> of(ZoneEdges zone, TurnedHull hull, double cx, double cy, double scale) {
        List<Contact> contacts = new ArrayList<>();
        for (int e = 0; e < zone.count; e++) {
            int corner = hull.first(zone.angle[e]);
            int other = hull.second(zone.angle[e]);
            double support = zone.normalX[e] * hull.x[corner] + zone.normalY[e] * hull.y[corner];
            double room = zone.offset[e] - zone.normalX[e] * cx - zone.normalY[e] * cy - scale * support;
            if (Math.abs(room) > TOUCH * scale * support) {
                continue;
            }
            double a = way(zone, e, cx + scale * hull.x[corner], cy + scale * hull.y[corner]);
            double b = way(zone, e, cx + scale * hull.x[other], cy + scale * hull.y[other]);
            double slack = TOUCH * scale * support;
            double from = Math.max(Math.min(a, b), 0);
            double to = Math.min(Math.max(a, b), zone.length[e]);
            if (from <= to + slack) {
                double middle = Math.max(0, Math.min(zone.length[e], (from + to) / 2));
                contacts.add(new Contact(zone.x[e] + middle * zone.ux[e], zone.y[e] + middle * zone.uy[e],
                        zone.id[e]));
            }
        }
        for (int e : zone.reflex) {
            if (hull.gauge(zone.x[e] - cx, zone.y[e] - cy) <= scale * (1 + TOUCH) && isNew(contacts, zone, e)) {
                contacts.add(new Contact(zone.x[e], zone.y[e], zone.id[e]));
            }
        }
        return contacts;
    }

    private static boolean isNew(List<Contact> contacts, ZoneEdges zone, int e) {
        return contacts.stream()
                .noneMatch(contact -> Math.hypot(contact.x() - zone.x[e], contact.y() - zone.y[e]) < 1e-6);
    }

    private static double way(ZoneEdges zone, int e, double x, double y) {
        return (x - zone.x[e]) * zone.ux[e] + (y - zone.y[e]) * zone.uy[e];
    }
}
