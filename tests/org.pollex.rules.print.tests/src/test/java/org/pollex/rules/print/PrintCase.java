/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.pollex.model.catalogue.Catalogue;
import org.pollex.model.catalogue.CatalogueFactory;
import org.pollex.model.catalogue.Entry;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.Setting;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.store.Catalogues;
import org.pollex.print.PressSettings;
import org.pollex.print.Printed;
import org.pollex.print.PrintedSide;
import org.pollex.print.item.Item;
import org.pollex.rules.Check;
import org.pollex.rules.Suite;

/**
 * A case of a check, read from a text file. Lines starting with # are sentences for people. Others are a word and its
 * words:
 *
 * <pre>
 * product|material|method ID        what it is printed on and how
 * inks ID...                        inks of the design
 * limit NAME VALUE                  changes a limit of the method
 * setting KEY VALUE                 changes a threshold
 * side NAME                         begins a side; the words of {@link CaseSide} describe it
 * checks ID...                      checks to run; their findings must be exactly the expected ones
 * expect SEVERITY CHECK KIND [measured=N] [limit=N] [unit=U] [side=S] [region=R] [at=X,Y] [fix=ID] [says="..."]
 * </pre>
 */
final class PrintCase {

    private static final Pattern WORD = Pattern.compile("(\\w+)=(\"[^\"]*\"|\\S+)");

    /** An expected finding. */
    record Expected(String line, String severity, String check, String kind, Map<String, String> facts) {
    }

    private final Map<String, String> words = new LinkedHashMap<>();
    private final Map<String, Double> limits = new LinkedHashMap<>();
    private final Catalogue own = CatalogueFactory.eINSTANCE.createCatalogue();
    private final List<CaseSide> sides = new ArrayList<>();
    private final List<Expected> expected = new ArrayList<>();

    private PrintCase() {
        words.put("product", "standard-pick");
        words.put("material", "solid-white");
        words.put("method", "pad-one-colour");
        words.put("inks", "black");
    }

    static PrintCase read(Path file) throws IOException {
        PrintCase read = new PrintCase();
        for (String line : Files.readAllLines(file)) {
            if (!line.isBlank() && !line.startsWith("#")) {
                int space = line.indexOf(' ');
                read.line(line.substring(0, space), line.substring(space + 1).strip());
            }
        }
        return read;
    }

    private void line(String word, String rest) {
        switch (word) {
            case "limit" -> limits.put(rest.split(" ")[0], Double.parseDouble(rest.split(" ")[1]));
            case "setting" -> {
                Setting setting = CatalogueFactory.eINSTANCE.createSetting();
                setting.setKey(rest.split(" ")[0]);
                setting.setValue(Double.parseDouble(rest.split(" ")[1]));
                own.getSettings().add(setting);
            }
            case "side" -> sides.add(new CaseSide(rest));
            case "expect" -> expected.add(expected(rest));
            case "product", "material", "method", "inks", "checks" -> words.put(word, rest);
            default -> sides.get(sides.size() - 1).line(word, rest);
        }
    }

    private static Expected expected(String rest) {
        String[] parts = rest.split(" ", 4);
        Map<String, String> facts = new LinkedHashMap<>();
        Matcher matcher = WORD.matcher(parts.length > 3 ? parts[3] : "");
        while (matcher.find()) {
            facts.put(matcher.group(1), matcher.group(2).replace("\"", ""));
        }
        return new Expected(rest, parts[0], parts[1], parts[2].equals("-") ? "" : parts[2], facts);
    }

    List<String> checks() {
        return List.of(words.get("checks").split(" "));
    }

    List<Expected> expected() {
        return expected;
    }

    /** The catalogues with the changes of the case on top. */
    Catalogues catalogues(Suite suite) {
        return suite.catalogues().with(own);
    }

    Printed printed(Suite suite) throws Exception {
        Catalogues all = suite.catalogues();
        Item item = suite.item(words.get("product"));
        var method = EcoreUtil.copy(all.method(words.get("method")).orElseThrow());
        limits.forEach((name, value) -> set(method, name, value));
        List<String> inks = List.of(words.get("inks").split(" "));
        Design design = DesignFactory.eINSTANCE.createDesign();
        design.setProduct(words.get("product"));
        design.setMaterial(words.get("material"));
        design.setMethod(words.get("method"));
        design.getInks().addAll(inks);
        List<PrintedSide> printed = new ArrayList<>();
        for (CaseSide side : sides) {
            printed.add(side.printed(item.face(side.name()).orElseThrow()));
        }
        Material material = all.material(words.get("material")).orElseThrow();
        return new Printed(design, item, material, method,
                inks.stream().filter(ink -> !ink.equals("process")).map(ink -> all.ink(ink).orElseThrow()).toList(),
                suite.white(), PressSettings.of(catalogues(suite), method, method, material), printed);
    }

    private static void set(Entry entry, String name, double value) {
        EAttribute attribute = (EAttribute) entry.eClass().getEStructuralFeature(name);
        if (attribute.getEAttributeType().getName().equals("EBoolean")) {
            entry.eSet(attribute, value != 0);
            return;
        }
        entry.eSet(attribute, EcoreUtil.createFromString(attribute.getEAttributeType(),
                attribute.getEAttributeType().getName().equals("EInt") ? String.valueOf((int) value)
                        : String.valueOf(value)));
    }

    /** Makes a check by its id, as the suite would. */
    static Check check(Suite suite, String id) {
        return suite.checks().stream().filter(entry -> entry.id().equals(id)).findFirst().orElseThrow().check().get();
    }
}
