/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.session;

/** A call that cannot be carried out. The message is one line: the file or word, what is wrong, the cure. */
public final class Refusal extends Exception {

    private static final long serialVersionUID = 1L;

    private final ExitCode code;

    public Refusal(ExitCode code, String sentence) {
        this(code, sentence, null);
    }

    public Refusal(ExitCode code, String sentence, Throwable cause) {
        super(oneLine(sentence), cause);
        this.code = code;
    }

    /** What the call ends with. */
    public ExitCode code() {
        return code;
    }

    /** Words or options that make no sense. */
    public static Refusal wrongUse(String sentence) {
        return new Refusal(ExitCode.WRONG_USE, sentence);
    }

    /** The text without line breaks and other control characters, whatever a file or its name hold. */
    public static String oneLine(String text) {
        return text.replaceAll("\\p{Cntrl}+", " ").strip();
    }
}
