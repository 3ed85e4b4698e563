/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.job;

import java.time.LocalDate;
import java.util.Optional;
import org.pollex.model.job.Job;
import org.pollex.model.job.Use;

/**
 * What a studio writes down about a job.
 *
 * @param title     what it is called
 * @param client    who ordered it
 * @param use       what the items are for
 * @param quantity  items in all; 0 when not known
 * @param due       day on which the items must be there
 * @param note      anything else; may be empty
 */
public record JobFacts(String title, String client, Use use, int quantity, Optional<LocalDate> due, String note) {

    public JobFacts {
        if (quantity < 0) {
            throw new IllegalArgumentException("A job cannot be for " + quantity + " items.");
        }
    }

    /** Those of a job. */
    public static JobFacts of(Job job) {
        return new JobFacts(text(job.getName()), text(job.getClient()), job.getUse(), Math.max(0, job.getQuantity()),
                Optional.ofNullable(job.getDue()), text(job.getNote()));
    }

    void into(Job job) {
        job.setName(title.strip());
        job.setClient(client.isBlank() ? null : client.strip());
        job.setUse(use);
        job.setQuantity(quantity);
        job.setDue(due.orElse(null));
        job.setNote(note.isBlank() ? null : note.strip());
    }

    private static String text(String value) {
        return value == null ? "" : value;
    }
}
