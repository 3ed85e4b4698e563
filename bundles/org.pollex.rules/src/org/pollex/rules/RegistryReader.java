/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.net.URL;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExtensionRegistry;
import org.pollex.print.item.ItemBuilder;

/** Reads the extension points of this bundle, one contribution after the other, sorted by bundle. */
final class RegistryReader {

    private static final String POINTS = "org.pollex.rules.";

    private final IExtensionRegistry registry;
    private final ResourceLocator files;

    RegistryReader(IExtensionRegistry registry, ResourceLocator files) {
        this.registry = registry;
        this.files = files;
    }

    void readInto(Contributions.Collector collector) {
        for (IConfigurationElement element : elements("catalogues")) {
            one(collector, element, "catalogue", () -> collector.with(catalogue(element)));
        }
        for (IConfigurationElement element : elements("families")) {
            one(collector, element, "family", () -> collector.with(new FamilyEntry(need(element, "id"),
                    bundle(element), () -> make(element, need(element, "class"), ItemBuilder.class))));
        }
        for (IConfigurationElement element : elements("checks")) {
            one(collector, element, "check", () -> collector.with(check(element)));
        }
    }

    private List<IConfigurationElement> elements(String point) {
        return Arrays.stream(registry.getConfigurationElementsFor(POINTS + point))
                .sorted(Comparator.comparing(RegistryReader::bundle)).toList();
    }

    private static String bundle(IConfigurationElement element) {
        return element.getContributor().getName();
    }

    private static void one(Contributions.Collector collector, IConfigurationElement element, String name,
            Runnable take) {
        if (!element.getName().equals(name)) {
            collector.problem(bundle(element), "element <" + element.getName() + "> stands where <" + name
                    + "> is expected; correct plugin.xml");
            return;
        }
        try {
            take.run();
        } catch (RuntimeException | LinkageError e) {
            collector.problem(bundle(element), e.getMessage());
        }
    }

    private static CheckEntry check(IConfigurationElement element) {
        String type = need(element, "class");
        return new CheckEntry(need(element, "id"), need(element, "name"), need(element, "description"),
                bundle(element), () -> make(element, type, Check.class));
    }

    private CatalogueEntry catalogue(IConfigurationElement element) {
        String bundle = bundle(element);
        String path = need(element, "resource");
        return new CatalogueEntry(bundle + "/" + path, bundle, () -> {
            URL address = files.find(bundle, path);
            return address.openStream();
        });
    }

    private static String need(IConfigurationElement element, String attribute) {
        String value = element.getAttribute(attribute);
        if (value == null || value.isBlank()) {
            throw new IllegalArgumentException("element <" + element.getName() + "> lacks the attribute " + attribute
                    + "; add it to plugin.xml");
        }
        return value;
    }

    private static <T> T make(IConfigurationElement element, String type, Class<T> wanted) {
        Object made;
        try {
            made = element.createExecutableExtension("class");
        } catch (CoreException e) {
            throw new IllegalStateException("class " + type + " cannot be made", e);
        }
        if (!wanted.isInstance(made)) {
            throw new IllegalStateException("class " + type + " is no " + wanted.getSimpleName());
        }
        return wanted.cast(made);
    }
}
