/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.codegen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The committed model code is what the genmodel gives. */
class EmfInSyncTest {
    @TempDir
    Path staging;

    @Test
    void committedCodeIsWhatTheGenmodelGives() throws Exception {
        Path bundles = Path.of(System.getProperty("bundles.dir"));
        Path genModel = bundles.resolve("org.pollex.model/model/pollex.genmodel");
        assertEquals(List.of(), GenerateEmf.run(false, genModel, bundles, staging),
                "src-gen is out of date, run: ./mvnw -q -pl releng/codegen -Pgenerate process-classes");
    }
}
