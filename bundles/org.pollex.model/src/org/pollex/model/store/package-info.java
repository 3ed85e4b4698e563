/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Opens and saves the files that hold models. The way in is {@link org.pollex.model.store.ModelFiles}; errors are
 * {@link org.pollex.model.store.StoreException}s, whose message is one sentence for the person at the desk.
 * {@link org.pollex.model.store.Catalogues} looks entries up in the built-in catalogues and a studio's own over them;
 * {@link org.pollex.model.store.ArtFiles} brings a client's art beside a design and finds it again.
 *
 * <p><b>Format.</b> A file is EMF XMI in UTF-8 with the root Design, Job or Catalogue and a {@code format} number, now
 * 1. Older files are carried on by migrations when they are opened; {@code FormatZero} tells what the drafts before
 * format 1 looked like. A newer file is refused. Content that the format does not know is refused and never dropped;
 * comments are no content and are not kept. Files are not trusted: no document type, no entity, no link into another
 * file is followed, and size and depth are bounded.
 *
 * <p><b>Beside a file</b> saving keeps {@code .NAME.last}, the state before the last save, and for a moment
 * {@code .NAME.….saving}. What a killed process leaves of the second is removed by the next save.
 *
 * <p>What does not belong here: what values mean for print, and the reading of art.
 */
package org.pollex.model.store;
