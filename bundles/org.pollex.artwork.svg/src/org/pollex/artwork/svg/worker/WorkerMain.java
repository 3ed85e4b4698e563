/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.worker;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;

import org.pollex.artwork.Art;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtSource;
import org.pollex.artwork.BeyondReaderException;
import org.pollex.artwork.ReadLimits;

/**
 * The separate process: reads requests from its standard input and answers on its standard output, one after the
 * other, until the input ends. Ends itself when memory is short, since nothing can be relied upon then.
 */
public final class WorkerMain {

    static final int ART = 0;
    static final int REFUSED = 1;
    static final int BEYOND = 2;
    static final int READY = 7;
    /** How the process ends when memory is short; the Java runtime's own choice too. */
    static final int OUT_OF_MEMORY = 3;

    private static final long STACK = 32L << 20;

    private WorkerMain() {
    }

    /** Runs until the input ends. */
    public static void main(String[] args) throws InterruptedException {
        PrintStream quiet = new PrintStream(new FileOutputStream(FileDescriptor.err), true);
        System.setOut(quiet);
        Thread thread = new Thread(null, WorkerMain::serve, "art", STACK);
        thread.start();
        thread.join();
    }

    private static void serve() {
        DataInputStream in = new DataInputStream(new BufferedInputStream(new FileInputStream(FileDescriptor.in)));
        DataOutputStream out = new DataOutputStream(new FileOutputStream(FileDescriptor.out));
        try {
            out.writeByte(READY);
            out.flush();
            while (true) {
                byte[] answer = answer(in);
                out.writeInt(answer.length);
                out.write(answer);
                out.flush();
            }
        } catch (EOFException e) {
            Runtime.getRuntime().halt(0);
        } catch (OutOfMemoryError e) {
            Runtime.getRuntime().halt(OUT_OF_MEMORY);
        } catch (Throwable e) {
            Runtime.getRuntime().halt(1);
        }
    }

    private static byte[] answer(DataInputStream in) throws IOException {
        String name = ArtWire.text(in);
        ReadLimits limits = new ReadLimits(in.readLong(), in.readInt(), in.readInt(), in.readInt(), in.readLong(),
                in.readInt());
        byte[] bytes = in.readNBytes(in.readInt());
        ByteArrayOutputStream kept = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(kept);
        try {
            Art art = WorkerReading.read(new ArtSource(name, bytes), limits);
            out.writeByte(ART);
            ArtWire.write(art, out);
        } catch (BeyondReaderException e) {
            out.writeByte(BEYOND);
            ArtWire.text(e.feature(), out);
        } catch (ArtException e) {
            refuse(e.getMessage(), out);
        } catch (StackOverflowError e) {
            kept.reset();
            refuse(name + ": the art is nested too deep; ungroup it and export it again.", out);
        } catch (RuntimeException | LinkageError e) {
            kept.reset();
            refuse(name + ": the art cannot be understood (" + e.getClass().getSimpleName()
                    + "); open it in a drawing program and export it again.", out);
        }
        return kept.toByteArray();
    }

    private static void refuse(String message, DataOutputStream out) throws IOException {
        out.writeByte(REFUSED);
        ArtWire.text(message, out);
    }
}
