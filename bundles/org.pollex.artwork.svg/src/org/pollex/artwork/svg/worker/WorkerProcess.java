/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.worker;

import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

import org.pollex.artwork.ArtSource;
import org.pollex.artwork.ReadLimits;

/** One separate process. Used by one thread at a time; once it failed it is not used again. */
final class WorkerProcess {

    private static final int START_SECONDS = 60;
    private static final int LARGEST_ANSWER = 512 << 20;

    private final Process process;
    private final DataInputStream in;
    private final DataOutputStream out;
    private final ScheduledExecutorService clock;

    /** Why an answer did not come. */
    enum End { TIME, MEMORY, BROKEN }

    /** No answer came; the process is gone. */
    static final class EndedException extends Exception {

        private static final long serialVersionUID = 1L;
        private final End end;

        EndedException(End end) {
            this.end = end;
        }

        End end() {
            return end;
        }
    }

    /**
     * Starts a process and waits until it is ready.
     *
     * @param megabytes  most memory for its objects
     */
    WorkerProcess(String classPath, int megabytes, ScheduledExecutorService clock)
            throws IOException, EndedException {
        this.clock = clock;
        String java = Path.of(System.getProperty("java.home"), "bin",
                File.separatorChar == '\\' ? "java.exe" : "java").toString();
        ProcessBuilder builder = new ProcessBuilder(List.of(java, "-Xmx" + megabytes + "m", "-Xss2m",
                "-XX:+UseSerialGC", "-XX:+ExitOnOutOfMemoryError", "-XX:-UsePerfData", "-Xshare:auto",
                "-Djava.awt.headless=true", "-Dfile.encoding=UTF-8", "-cp", classPath, WorkerMain.class.getName()));
        Map<String, String> environment = builder.environment();
        environment.remove("JAVA_TOOL_OPTIONS");
        environment.remove("JDK_JAVA_OPTIONS");
        environment.remove("_JAVA_OPTIONS");
        environment.remove("CLASSPATH");
        builder.redirectError(ProcessBuilder.Redirect.DISCARD);
        process = builder.start();
        in = new DataInputStream(process.getInputStream());
        out = new DataOutputStream(new BufferedOutputStream(process.getOutputStream()));
        AtomicBoolean late = new AtomicBoolean();
        ScheduledFuture<?> alarm = alarm(TimeUnit.SECONDS.toMillis(START_SECONDS), late);
        try {
            if (in.readByte() != WorkerMain.READY) {
                throw new IOException("not ready");
            }
        } catch (IOException e) {
            throw ended(late);
        } finally {
            alarm.cancel(false);
        }
    }

    /** Sends a file and waits for the answer until the limit on time. */
    byte[] ask(ArtSource source, ReadLimits limits) throws EndedException {
        AtomicBoolean late = new AtomicBoolean();
        ScheduledFuture<?> alarm = alarm(limits.millis(), late);
        try {
            ArtWire.text(source.name(), out);
            out.writeLong(limits.bytes());
            out.writeInt(limits.elements());
            out.writeInt(limits.depth());
            out.writeInt(limits.segments());
            out.writeLong(limits.pixels());
            out.writeInt(limits.millis());
            out.writeInt(source.bytes().length);
            out.write(source.bytes());
            out.flush();
            int length = in.readInt();
            if (length < 1 || length > LARGEST_ANSWER) {
                throw new IOException("wrong length");
            }
            byte[] answer = in.readNBytes(length);
            if (answer.length < length) {
                throw new IOException("cut off");
            }
            return answer;
        } catch (IOException e) {
            throw ended(late);
        } finally {
            alarm.cancel(false);
        }
    }

    private ScheduledFuture<?> alarm(long millis, AtomicBoolean late) {
        return clock.schedule(() -> {
            late.set(true);
            process.destroyForcibly();
        }, millis, TimeUnit.MILLISECONDS);
    }

    private EndedException ended(AtomicBoolean late) {
        if (late.get()) {
            close();
            return new EndedException(End.TIME);
        }
        try {
            boolean over = process.waitFor(2, TimeUnit.SECONDS);
            if (over && process.exitValue() == WorkerMain.OUT_OF_MEMORY) {
                return new EndedException(End.MEMORY);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        close();
        return new EndedException(End.BROKEN);
    }

    boolean alive() {
        return process.isAlive();
    }

    long pid() {
        return process.pid();
    }

    void close() {
        process.destroyForcibly();
    }
}
