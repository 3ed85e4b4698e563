/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.attack;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.util.concurrent.atomic.AtomicInteger;

/** Listens on a port of this machine and counts who calls. */
final class Listener implements AutoCloseable {

    private final ServerSocket socket = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
    private final AtomicInteger calls = new AtomicInteger();

    Listener() throws IOException {
        Thread thread = new Thread(this::accept, "listener");
        thread.setDaemon(true);
        thread.start();
    }

    private void accept() {
        while (true) {
            try {
                socket.accept().close();
                calls.incrementAndGet();
            } catch (IOException e) {
                return;
            }
        }
    }

    String address(String path) {
        return "http://127.0.0.1:" + socket.getLocalPort() + "/" + path;
    }

    void assertSilent() {
        assertEquals(0, calls.get(), "someone called");
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
