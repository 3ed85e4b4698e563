/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import java.nio.file.Path;

/**
 * A file that cannot be read, understood or written. The message is one sentence for the person at the desk: the file,
 * the place in it, and the cure. It holds no line breaks, whatever the file or its name hold.
 */
public class StoreException extends Exception {

    private static final long serialVersionUID = 1L;

    /** What is wrong, for code that reacts to it. */
    public enum Reason {
        /** There is no such file. */
        MISSING,
        /** A folder, a device or a name of the wrong kind. */
        NOT_A_FILE,
        /** The system refuses to read it. */
        UNREADABLE,
        /** Larger, deeper or with more elements than any honest file. */
        TOO_LARGE,
        /** Empty, binary, cut short, or no longer XML. */
        DAMAGED,
        /** Holds something that a model file never holds, such as a document type with entities. */
        FORBIDDEN,
        /** A whole file of another kind. */
        WRONG_KIND,
        /** Written by a newer version. */
        NEWER,
        /** Holds elements or attributes that its format does not know. */
        UNKNOWN_CONTENT,
        /** A value that its attribute cannot take. */
        BAD_VALUE,
        /** The file on disk is not the one that was opened. */
        CHANGED_ON_DISK,
        /** It cannot be written; what was there before is untouched. */
        NOT_WRITTEN
    }

    private final Reason reason;
    private final String file;

    /**
     * @param file     path or name of the file, with which the message begins
     * @param what     what is wrong, where, and the cure: the rest of the sentence with its full stop
     */
    public StoreException(Reason reason, String file, String what) {
        this(reason, file, what, null);
    }

    StoreException(Reason reason, String file, String what, Throwable cause) {
        super(Quoted.clean(file) + ": " + Quoted.clean(what), cause);
        this.reason = reason;
        this.file = file;
    }

    StoreException(Reason reason, Path file, String what, Throwable cause) {
        this(reason, file.toString(), what, cause);
    }

    /** What is wrong. */
    public Reason reason() {
        return reason;
    }

    /** Path or name of the file. */
    public String file() {
        return file;
    }
}
