/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.limits;

import org.pollex.artwork.ArtException;
import org.pollex.artwork.ReadLimits;

/** Counts what one reading spends and refuses the file when a limit is passed. One object per reading, one thread. */
public final class Budget {

    private static final int CLOCK_EVERY = 64;

    private final String file;
    private final ReadLimits limits;
    private final long end;
    private long elements;
    private long segments;
    private long pixels;
    private long effort;
    private int depth;

    /** A fresh budget; its clock starts now. */
    public Budget(String file, ReadLimits limits) {
        this.file = file;
        this.limits = limits;
        this.end = System.nanoTime() + limits.millis() * 1_000_000L;
    }

    /** Name of the file, for messages. */
    public String file() {
        return file;
    }

    /** One element is visited. */
    public void element() throws ArtException {
        if (++elements > limits.elements()) {
            throw new ArtException(file, "the art draws more than " + limits.elements()
                    + " elements once its repeats are counted; simplify it and export it again");
        }
        if (elements % CLOCK_EVERY == 0) {
            clock();
        }
    }

    /** Path segments are added. */
    public void segments(long count) throws ArtException {
        segments += count;
        if (segments > limits.segments()) {
            throw new ArtException(file, "the art has more than " + limits.segments()
                    + " path segments once dashes and repeats are counted; simplify it and export it again");
        }
        effort(count);
    }

    /** A picture is about to be decoded. */
    public void pixels(long count) throws ArtException {
        pixels += count;
        if (pixels > limits.pixels()) {
            throw new ArtException(file, "its pictures have more than " + limits.pixels()
                    + " pixels; make them smaller and export the art again");
        }
    }

    /** Small steps that only need the clock looked at now and then. */
    public void effort(long steps) throws ArtException {
        effort += steps;
        if (effort > 20_000) {
            effort = 0;
            clock();
        }
    }

    /** One level deeper, through groups or references. */
    public void enter() throws ArtException {
        if (++depth > limits.depth()) {
            throw new ArtException(file, "elements are nested more than " + limits.depth()
                    + " deep once references are followed; ungroup the art and export it again");
        }
    }

    /** One level up. */
    public void leave() {
        depth--;
    }

    /** Refuses when the time is over. */
    public void clock() throws ArtException {
        if (System.nanoTime() - end > 0) {
            throw new ArtException(file, "reading takes longer than " + limits.millis()
                    + " ms; simplify the art and export it again");
        }
    }

    /** Refuses the file for another measure. */
    public ArtException tooHeavy(String what) {
        return new ArtException(file, what + "; simplify the art and export it again");
    }
}
