/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.codegen;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.eclipse.emf.codegen.ecore.generator.Generator;
import org.eclipse.emf.codegen.ecore.generator.GeneratorAdapterFactory;
import org.eclipse.emf.codegen.ecore.genmodel.GenModel;
import org.eclipse.emf.codegen.ecore.genmodel.GenModelPackage;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenBaseGeneratorAdapter;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenModelGeneratorAdapterFactory;
import org.eclipse.emf.codegen.merge.java.JControlModel;
import org.eclipse.emf.common.util.BasicMonitor;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.plugin.EcorePlugin;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.util.Diagnostician;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.xmi.impl.EcoreResourceFactoryImpl;

/**
 * Generates the model code of one genmodel without a running Eclipse and without JDT.
 * <p>
 * Everything is first generated into an empty staging folder that stands in for the workspace. Then only
 * {@code src-gen} of the model bundle is compared with (--check) or mirrored to (--write) the bundle: new and changed
 * files are copied, stale files are deleted. plugin.xml, MANIFEST.MF and build.properties stay hand-written.
 */
public final class GenerateEmf {
    private GenerateEmf() {
    }

    public static void main(String[] args) throws IOException {
        if (args.length != 3 || !Set.of("--write", "--check").contains(args[0])) {
            throw new IllegalArgumentException("usage: --write|--check GENMODEL BUNDLES_DIR");
        }
        Path staging = Files.createTempDirectory("emf-gen");
        try {
            List<String> differences = run(args[0].equals("--write"), Path.of(args[1]), Path.of(args[2]), staging);
            differences.forEach(System.out::println);
            if (args[0].equals("--check") && !differences.isEmpty()) {
                throw new IllegalStateException(
                        differences.size() + " generated files are out of date, regenerate them");
            }
            System.out.println(
                    differences.isEmpty() ? "EMF code is up to date" : "EMF code updated: " + differences.size());
        } finally {
            delete(staging);
        }
    }

    /** Returns what differs ("A path", "M path", "D path"); with {@code write}, the files are brought in line. */
    public static List<String> run(boolean write, Path genModelFile, Path bundles, Path staging) throws IOException {
        GenModel genModel = generate(genModelFile, staging);
        List<String> differences = new ArrayList<>();
        for (String directory : List.of(genModel.getModelDirectory())) {
            String path = directory.substring(1);
            sync(write, staging.resolve(path), bundles.resolve(path), directory, differences);
        }
        return differences;
    }

    /** Generates everything into {@code staging}/bundle-name/... */
    static GenModel generate(Path genModelFile, Path staging) {
        // The generator writes Java files in the default charset when it runs outside of Eclipse (Java 17: depends on
        // the locale; start the JVM with -Dfile.encoding=UTF-8) and ends lines with the system property.
        if (!StandardCharsets.UTF_8.equals(Charset.defaultCharset())) {
            throw new IllegalStateException("start the JVM with -Dfile.encoding=UTF-8, not "
                    + Charset.defaultCharset());
        }
        String lineSeparator = System.setProperty("line.separator", "\n");
        try {
            GenModel genModel = load(genModelFile);
            // /bundle/src-gen/... is written as platform:/resource/bundle/src-gen/...; send that to the staging folder
            Map<String, URI> projects = new LinkedHashMap<>();
            for (String project : List.of(genModel.getModelProjectDirectory())) {
                String name = project.replaceFirst("^/", "");
                projects.put(name, URI.createFileURI(staging.toAbsolutePath().resolve(name) + "/"));
            }
            EcorePlugin.getPlatformResourceMap().putAll(projects);
            GeneratorAdapterFactory.Descriptor.Registry registry =
                    new GeneratorAdapterFactory.Descriptor.DelegatingRegistry(
                            GeneratorAdapterFactory.Descriptor.Registry.INSTANCE);
            registry.addDescriptor(GenModelPackage.eNS_URI, GenModelGeneratorAdapterFactory.DESCRIPTOR);
            Generator generator = new NoMergeGenerator(registry);
            try {
                generator.setInput(genModel);
                check(generator.generate(genModel, GenBaseGeneratorAdapter.MODEL_PROJECT_TYPE, new BasicMonitor()));
            } finally {
                generator.dispose();
                EcorePlugin.getPlatformResourceMap().keySet().removeAll(projects.keySet());
            }
            return genModel;
        } finally {
            System.setProperty("line.separator", lineSeparator);
        }
    }

    private static GenModel load(Path genModelFile) {
        GenModelPackage.eINSTANCE.eClass(); // registers genmodel and Ecore in the global package registry
        ResourceSet resourceSet = new ResourceSetImpl();
        Map<String, Object> factories = resourceSet.getResourceFactoryRegistry().getExtensionToFactoryMap();
        factories.put("ecore", new EcoreResourceFactoryImpl());
        factories.put("genmodel", new EcoreResourceFactoryImpl());
        URI uri = URI.createFileURI(genModelFile.toAbsolutePath().normalize().toString());
        Resource resource = resourceSet.getResource(uri, true);
        EcoreUtil.resolveAll(resourceSet);
        resourceSet.getResources().forEach(each -> {
            if (!each.getErrors().isEmpty()) {
                throw new IllegalStateException(each.getURI() + ": " + each.getErrors());
            }
        });
        GenModel genModel = (GenModel)resource.getContents().get(0);
        genModel.getGenPackages().forEach(each -> check(Diagnostician.INSTANCE.validate(each.getEcorePackage())));
        genModel.reconcile(); // adds the GenClasses, GenFeatures... that the ecore has and the genmodel file lacks
        genModel.setCanGenerate(true);
        genModel.setUpdateClasspath(false);
        return genModel;
    }

    private static void check(Diagnostic diagnostic) {
        if (diagnostic.getSeverity() >= Diagnostic.ERROR) {
            throw new IllegalStateException(diagnostic.toString() + diagnostic.getChildren(),
                    diagnostic.getException());
        }
    }

    private static void sync(boolean write, Path from, Path to, String label, List<String> differences)
            throws IOException {
        Map<String, Path> generated = files(from);
        Map<String, Path> existing = files(to);
        Set<String> all = new TreeSet<>(generated.keySet());
        all.addAll(existing.keySet());
        for (String name : all) {
            Path source = generated.get(name);
            Path target = to.resolve(name);
            if (source == null) {
                differences.add("D " + label + "/" + name);
                if (write) {
                    Files.delete(target);
                }
            } else if (!existing.containsKey(name) || !same(source, target)) {
                differences.add((existing.containsKey(name) ? "M " : "A ") + label + "/" + name);
                if (write) {
                    Files.createDirectories(target.getParent());
                    Files.write(target, Files.readAllBytes(source));
                }
            }
        }
    }

    /** Ignores CRs, so that a checkout with core.autocrlf on Windows counts as in sync. */
    private static boolean same(Path left, Path right) throws IOException {
        return Arrays.equals(Files.readAllBytes(left), Files.readAllBytes(right))
                || Files.readString(left).replace("\r", "").equals(Files.readString(right).replace("\r", ""));
    }

    private static Map<String, Path> files(Path root) throws IOException {
        Map<String, Path> result = new TreeMap<>();
        if (Files.isDirectory(root)) {
            try (Stream<Path> paths = Files.walk(root)) {
                paths.filter(Files::isRegularFile).forEach(each -> result.put(root.relativize(each).toString()
                        .replace('\\', '/'), each));
            }
        }
        return result;
    }

    private static void delete(Path root) throws IOException {
        Files.walkFileTree(root, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Files.delete(file);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path directory, IOException exception) throws IOException {
                Files.delete(directory);
                return FileVisitResult.CONTINUE;
            }
        });
    }

    /** Does not merge with existing files, so that JDT is not needed; K&R braces and a fixed indentation. */
    private static final class NoMergeGenerator extends Generator {
        private final JControlModel noMerge = new JControlModel() {
            @Override
            public boolean canMerge() {
                return false;
            }
        };

        NoMergeGenerator(GeneratorAdapterFactory.Descriptor.Registry registry) {
            super(registry);
            noMerge.setLeadingTabReplacement("    ");
            noMerge.setConvertToStandardBraceStyle(true);
        }

        @Override
        public JControlModel getJControlModel() {
            return noMerge;
        }
    }
}
