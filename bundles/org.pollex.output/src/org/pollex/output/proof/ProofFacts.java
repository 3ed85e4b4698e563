/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.proof;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;

/**
 * What a proof says about the job round a design. Empty text is left out.
 *
 * @param client    who ordered
 * @param job       name of the job
 * @param revision  number of the revision; empty before the first
 * @param date      day of the proof
 * @param quantity  pieces ordered, when known
 * @param art       names of the art files, in the order of the design
 */
public record ProofFacts(String client, String job, OptionalInt revision, LocalDate date, OptionalInt quantity,
        List<String> art) {

    public ProofFacts {
        art = List.copyOf(art);
    }

    /** A proof of a design that belongs to no job. */
    public static ProofFacts of(LocalDate date, List<String> art) {
        return new ProofFacts("", "", OptionalInt.empty(), date, OptionalInt.empty(), art);
    }
}
