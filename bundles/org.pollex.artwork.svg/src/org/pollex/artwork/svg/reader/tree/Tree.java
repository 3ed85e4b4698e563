/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.tree;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A file as a tree.
 *
 * @param root    root element
 * @param ids     elements by id, the first one where an id repeats
 * @param styles  text of all style elements whose type is CSS, in order
 */
public record Tree(Node root, Map<String, Node> ids, List<Node> styles) {

    /** The element that a local reference such as {@code #name} means. */
    public Optional<Node> target(String reference) {
        return reference.startsWith("#") ? Optional.ofNullable(ids.get(reference.substring(1))) : Optional.empty();
    }
}
