/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.jar.Manifest;
import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.core.runtime.RegistryFactory;
import org.eclipse.core.runtime.spi.RegistryContributor;
import org.eclipse.core.runtime.spi.RegistryStrategy;

/**
 * An extension registry without OSGi: every {@code plugin.xml} on the class path contributes under the symbolic name of
 * the manifest beside it, so that the files which the platform reads stay the only declaration.
 *
 * @param registry  the registry
 * @param places    addresses of the bundles' root folders by symbolic name
 */
record ClassPathRegistry(IExtensionRegistry registry, Map<String, URL> places) implements ResourceLocator {

    private static final String DECLARATION = "plugin.xml";

    static ClassPathRegistry read(ClassLoader loader, Contributions.Collector problems) {
        Object key = new Object();
        IExtensionRegistry registry;
        List<URL> files;
        try {
            registry = RegistryFactory.createRegistry(new Loading(loader), key, key);
            files = Collections.list(loader.getResources(DECLARATION));
        } catch (Exception e) {
            throw new IllegalStateException("No extension registry can be set up on this class path.", e);
        }
        Map<String, URL> places = new HashMap<>();
        for (URL file : files) {
            try {
                add(registry, key, file, places);
            } catch (IOException e) {
                problems.problem(file.toString(), "it cannot be read (" + e.getMessage() + "); mend the jar");
            }
        }
        return new ClassPathRegistry(registry, places);
    }

    private static void add(IExtensionRegistry registry, Object key, URL file, Map<String, URL> places)
            throws IOException {
        URL root = new URL(file, ".");
        String name;
        try (InputStream in = new URL(root, "META-INF/MANIFEST.MF").openStream()) {
            name = new Manifest(in).getMainAttributes().getValue("Bundle-SymbolicName");
        }
        if (name == null) {
            return;
        }
        String id = name.split(";")[0].trim();
        if (places.putIfAbsent(id, root) == null) {
            try (InputStream in = file.openStream()) {
                registry.addContribution(in, new RegistryContributor(id, id, null, null), false, file.toString(), null,
                        key);
            }
        }
    }

    @Override
    public URL find(String contributor, String path) throws IOException {
        URL root = places.get(contributor);
        if (root == null) {
            throw new IOException("bundle " + contributor + " is not on the class path");
        }
        return new URL(root, path);
    }

    /** Makes classes with the loader that found the declarations, and keeps quiet about foreign extension points. */
    private static final class Loading extends RegistryStrategy {

        private final ClassLoader loader;

        Loading(ClassLoader loader) {
            super(new File[0], null);
            this.loader = loader;
        }

        @Override
        public Object createExecutableExtension(RegistryContributor contributor, String className,
                String overridden) throws org.eclipse.core.runtime.CoreException {
            try {
                return Class.forName(className, true, loader).getDeclaredConstructor().newInstance();
            } catch (ReflectiveOperationException | LinkageError e) {
                throw new org.eclipse.core.runtime.CoreException(org.eclipse.core.runtime.Status.error(
                        "class " + className + " cannot be made", e));
            }
        }
    }
}
