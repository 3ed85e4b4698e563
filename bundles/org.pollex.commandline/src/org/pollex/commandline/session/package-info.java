/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * What every word of the command line needs from the outside: streams, folder, date, exit codes, files that are written
 * whole or not at all. Designs and findings do not belong here.
 */
package org.pollex.commandline.session;
