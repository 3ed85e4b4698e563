/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

/**
 * What a file was when it was read or written, to tell later whether somebody changed it. The time of the last change
 * is no part of it: a copied or restored file with the same content is the same file.
 *
 * @param size    bytes; -1 when there was no file
 * @param sha256  lower-case hex; empty when there was no file
 */
public record Stamp(long size, String sha256) {

    /** No file. */
    static final Stamp ABSENT = new Stamp(-1, "");

    static Stamp of(byte[] bytes) {
        return new Stamp(bytes.length, Hashes.sha256(bytes));
    }
}
