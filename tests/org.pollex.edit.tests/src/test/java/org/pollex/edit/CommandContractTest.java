/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.Modifier;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.gef.commands.Command;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.pollex.model.LabColour;
import org.pollex.model.catalogue.Catalogue;
import org.pollex.model.catalogue.CatalogueFactory;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.InkKind;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Layer;
import org.pollex.model.design.PlainShape;
import org.pollex.model.design.Placement;
import org.pollex.model.design.ShapeKind;
import org.pollex.model.design.Side;
import org.pollex.model.design.TextLine;

/** Every command: execute changes the model, undo gives the same bytes as before, redo the same as after. */
class CommandContractTest {

    static Map<Class<?>, Function<Design, Command>> cases() {
        Map<Class<?>, Function<Design, Command>> cases = new LinkedHashMap<>();
        cases.put(PlaceMarkCommand.class, d -> new PlaceMarkCommand("Move", Designs.mark(d, "m2"),
                Pose.of(Designs.mark(d, "m2")).moved(1, 0).turnedAbout(30, 0, 0).scaledAbout(2, 0, 0)));
        cases.put(SetMarkStateCommand.class, d -> new SetMarkStateCommand(Designs.mark(d, "m2"), true, true));
        cases.put(RenameMarkCommand.class, d -> new RenameMarkCommand(Designs.mark(d, "m2"), "Moon"));
        cases.put(SetOverprintCommand.class, d -> new SetOverprintCommand(Designs.mark(d, "m2"), true));
        cases.put(SetLayerStateCommand.class, d -> new SetLayerStateCommand(layer(d, 0), true, false));
        cases.put(RenameLayerCommand.class, d -> new RenameLayerCommand(layer(d, 0), "Stars"));
        cases.put(RenameDesignCommand.class, d -> new RenameDesignCommand(d, "Other"));
        cases.put(LeaveOutCommand.class, d -> new LeaveOutCommand((Placement) Designs.mark(d, "m1"), 0.2));
        cases.put(BringBackCommand.class, d -> new BringBackCommand("Bring back", d, Designs.changed()));
        cases.put(ChooseProductCommand.class, d -> new ChooseProductCommand(d, "small-pick"));
        cases.put(ChooseMaterialCommand.class, d -> new ChooseMaterialCommand(d, "solid-black"));
        cases.put(ChooseMethodCommand.class, d -> new ChooseMethodCommand(d, "pad-spot"));
        cases.put(ChooseInksCommand.class, d -> new ChooseInksCommand(d, List.of("white", "red")));
        cases.put(SetGroundCommand.class, d -> new SetGroundCommand((Placement) Designs.mark(d, "m1"), "none"));
        cases.put(ReplaceArtCommand.class,
                d -> new ReplaceArtCommand((Placement) Designs.mark(d, "m1"), "art/gull.svg", "11"));
        cases.put(AssignInkCommand.class,
                d -> new AssignInkCommand((Placement) Designs.mark(d, "m1"), "#102030", "red"));
        cases.put(EditTextCommand.class, d -> new EditTextCommand((TextLine) Designs.mark(d, "m3"),
                new EditTextCommand.Style("Line", "Sans", true, false, 2.5, 0.1, "red")));
        cases.put(EditShapeCommand.class, d -> new EditShapeCommand((PlainShape) Designs.mark(d, "m2"),
                ShapeKind.RECTANGLE, 3, 4, 0.2, "red"));
        cases.put(AddMarkCommand.class, d -> new AddMarkCommand(layer(d, 0), Designs.shape("n1", 0, 0), 1));
        cases.put(DeleteMarkCommand.class, d -> new DeleteMarkCommand(Designs.mark(d, "m1")));
        cases.put(MoveMarkToLayerCommand.class,
                d -> new MoveMarkToLayerCommand(Designs.mark(d, "m1"), layer(d, 1), 1));
        cases.put(AddLayerCommand.class,
                d -> new AddLayerCommand(d.getSides().get(0), DesignFactory.eINSTANCE.createLayer(), 1));
        cases.put(DeleteLayerCommand.class, d -> new DeleteLayerCommand(layer(d, 0)));
        cases.put(MoveLayerCommand.class, d -> new MoveLayerCommand(layer(d, 0), d.getSides().get(0), 1));
        cases.put(AddSideCommand.class, d -> {
            Side side = DesignFactory.eINSTANCE.createSide();
            side.setName("rim");
            return new AddSideCommand(d, side);
        });
        cases.put(AddGuideCommand.class,
                d -> new AddGuideCommand(d.getSides().get(0), DesignFactory.eINSTANCE.createGuide()));
        cases.put(MoveGuideCommand.class, d -> new MoveGuideCommand(d.getSides().get(0).getGuides().get(0), -3.5));
        cases.put(DeleteGuideCommand.class, d -> new DeleteGuideCommand(d.getSides().get(0).getGuides().get(0)));
        return cases;
    }

    /** The commands over the inks of a catalogue. */
    static Map<Class<?>, Function<Catalogue, Command>> inkCases() {
        Map<Class<?>, Function<Catalogue, Command>> cases = new LinkedHashMap<>();
        cases.put(AddInkCommand.class, c -> new AddInkCommand(c, ink("dusk"), 1));
        cases.put(RemoveInkCommand.class, c -> new RemoveInkCommand(c, c.getInks().get(0)));
        cases.put(ChangeInkCommand.class, c -> new ChangeInkCommand("Change ink", c.getInks().get(0),
                new ChangeInkCommand.Values("Dusk", InkKind.PROCESS, Optional.of(new LabColour(30, 5, -20)),
                        Optional.empty(), 6, "", "measured")));
        return cases;
    }

    private static Ink ink(String id) {
        Ink ink = CatalogueFactory.eINSTANCE.createInk();
        ink.setId(id);
        ink.setName(id);
        ink.setDescription("as mixed");
        ink.setLabOverBlack(new LabColour(20, 0, 0));
        return ink;
    }

    private static Catalogue catalogue() {
        Catalogue catalogue = CatalogueFactory.eINSTANCE.createCatalogue();
        catalogue.getInks().add(ink("dawn"));
        catalogue.getInks().add(ink("noon"));
        return catalogue;
    }

    @TestFactory
    Stream<DynamicTest> keepsTheContract() {
        return Stream.concat(
                cases().entrySet().stream().map(each -> contract(each.getKey(), Designs::sample, each.getValue())),
                inkCases().entrySet().stream().map(each -> contract(each.getKey(), CommandContractTest::catalogue,
                        each.getValue())));
    }

    private static <M extends EObject> DynamicTest contract(Class<?> type, Supplier<M> models,
            Function<M, Command> making) {
        return DynamicTest.dynamicTest(type.getSimpleName(), () -> {
            M model = models.get();
            String before = Designs.bytes(model);
            Command command = making.apply(model);
            assertEquals(before, Designs.bytes(model), "constructing changes nothing");
            assertTrue(command.canExecute() && !command.getLabel().isBlank());
            command.execute();
            String after = Designs.bytes(model);
            assertNotEquals(before, after, "executing changes the model");
            for (int i = 0; i < 2; i++) {
                assertTrue(command.canUndo());
                command.undo();
                assertEquals(before, Designs.bytes(model), "undo restores every byte");
                command.redo();
                assertEquals(after, Designs.bytes(model), "redo gives the same bytes again");
            }
        });
    }

    @Test
    void inksWithoutAnIdOrWithOneThatIsThereAreNotAdded() {
        Catalogue catalogue = catalogue();
        assertThrows(IllegalArgumentException.class, () -> new AddInkCommand(catalogue, ink("dawn"), 0));
        assertThrows(IllegalArgumentException.class, () -> new AddInkCommand(catalogue, ink(null), 0));
    }

    @Test
    void everyCommandHasACase() throws IOException, ReflectiveOperationException {
        Set<String> found = new TreeSet<>();
        for (String name : classNames()) {
            Class<?> type = Class.forName("org.pollex.edit." + name);
            if (Command.class.isAssignableFrom(type) && !Modifier.isAbstract(type.getModifiers())) {
                found.add(name);
            }
        }
        assertTrue(found.size() > 20, "the search finds the command classes: " + found);
        assertEquals(found, Stream.concat(cases().keySet().stream(), inkCases().keySet().stream())
                .map(Class::getSimpleName).collect(Collectors.toCollection(TreeSet::new)),
                "each command class needs a case here");
    }

    private static Set<String> classNames() throws IOException {
        Path place = Path.of(java.net.URI.create(
                ModelCommand.class.getProtectionDomain().getCodeSource().getLocation().toString()));
        if (Files.isDirectory(place)) {
            return names(place.resolve("org/pollex/edit"));
        }
        try (FileSystem jar = FileSystems.newFileSystem(place)) {
            return names(jar.getPath("org/pollex/edit"));
        }
    }

    private static Set<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".class") && !name.contains("-"))
                    .map(name -> name.substring(0, name.length() - 6)).collect(Collectors.toSet());
        }
    }

    private static Layer layer(Design design, int index) {
        return design.getSides().get(0).getLayers().get(index);
    }
}
