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
    private Object drawn = "";

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

    /** One element is visited; its text form names it if the file is refused. */
    public void element(Object element) throws ArtException {
        drawn = element;
        element();
    }

    /** One more visit of what is being drawn. */
    public void element() throws ArtException {
        if (++elements > limits.elements()) {
            throw tooHeavy("the art draws more than " + limits.elements() + " elements once its repeats are counted");
        }
        if (elements % CLOCK_EVERY == 0) {
            clock();
        }
    }

    /** Path segments are added. */
    public void segments(long count) throws ArtException {
        segments += count;
        if (segments > limits.segments()) {
            throw tooHeavy("the art has more than " + limits.segments()
                    + " path segments once dashes and repeats are counted");
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
            throw tooHeavy("elements are nested more than " + limits.depth() + " deep once references are followed");
        }
    }

    /** One level up. */
    public void leave() {
        depth--;
    }

    /** Refuses when the time is over. */
    public void clock() throws ArtException {
        if (System.nanoTime() - end > 0) {
            throw tooHeavy("reading takes longer than " + limits.millis() + " ms");
        }
    }

    /** Refuses the file for some measure, naming the element that was reached. */
    public ArtException tooHeavy(String what) {
        String at = drawn.toString();
        return new ArtException(file, what + (at.isEmpty() ? "" : ", reached at " + at)
                + "; simplify the art and export it again");
    }
}
