/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ArtSourceTest {

    @TempDir
    Path folder;

    private static String refusal(Path file, ReadLimits limits) {
        return assertThrows(ArtException.class, () -> ArtSource.of(file, limits)).getMessage();
    }

    @Test
    void theBytesOfAFileAreKept() throws Exception {
        Path file = Files.write(folder.resolve("Fähre.svg"), new byte[] {1, 2, 3});
        ArtSource source = ArtSource.of(file, ReadLimits.usual());
        assertArrayEquals(new byte[] {1, 2, 3}, source.bytes());
        assertEquals(file.toString(), source.name());
    }

    @Test
    void whatIsNoFileIsRefusedWithTheCure() throws Exception {
        Path missing = folder.resolve("lost.svg");
        assertEquals(missing + ": the file does not exist; check the name and the folder.",
                refusal(missing, ReadLimits.usual()));
        assertEquals(folder + ": this is a folder; name one art file inside it.",
                refusal(folder, ReadLimits.usual()));
        Path empty = Files.createFile(folder.resolve("empty.svg"));
        assertEquals(empty + ": the file is empty; ask the client to send it again.",
                refusal(empty, ReadLimits.usual()));
        Path long1 = Files.write(folder.resolve("long.svg"), new byte[11]);
        assertEquals(long1 + ": the file has 11 bytes, more than the 10 that art may have; simplify the art and export"
                + " it again.", refusal(long1, new ReadLimits(10, 1, 1, 1, 1, 1)));
    }
}
