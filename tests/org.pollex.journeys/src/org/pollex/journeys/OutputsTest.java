/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.session.Known;
import org.pollex.markers.StudioProject;
import org.pollex.output.picture.PictureOptions;
import org.pollex.ui.jobs.tree.JobsView;
import org.pollex.ui.pictures.output.Output;
import org.pollex.ui.pictures.output.OutputWork;
import org.pollex.ui.pictures.output.ReportFormat;
import org.pollex.ui.pictures.output.Source;
import org.pollex.ui.pictures.output.Wishes;

/** A designer makes the picture, the proof and the report of designs, open ones and a whole job's. */
class OutputsTest {

    private static final String PROOF = "org.pollex.ui.pictures.proof";

    @TempDir
    Path folder;

    private IFolder linked;
    private List<String> read = List.of();

    @AfterEach
    void close() throws Exception {
        for (Shell each : Window.display().getShells()) {
            if (each.getText().startsWith("Write ") || each.getText().equals("Written")) {
                each.close();
            }
        }
        Window.closeEditors();
        if (linked != null) {
            StudioProject.open(new NullProgressMonitor()).remove(linked, new NullProgressMonitor());
        }
    }

    private OutputWork.Result make(Output output, Map<Source, Path> files) {
        OutputWork.Result[] result = new OutputWork.Result[1];
        new OutputWork(output, Wishes.usual().with(PictureOptions.of(600)), files, each -> result[0] = each).schedule();
        Window.until("the " + output.words() + " is made", () -> result[0] != null);
        return result[0];
    }

    @Test
    void pictureProofAndReportOfOneDesign() throws Exception {
        Path design = Samples.ferry(folder, "made");
        Path out = folder.resolve("out");
        for (Output each : Output.values()) {
            Path file = out.resolve(each.nameFor(design, Wishes.usual()));
            assertEquals(List.of(file), make(each, Map.of(Source.saved(design), file)).written());
        }
        BufferedImage picture = ImageIO.read(out.resolve("made.png").toFile());
        // two picks of 26 mm beside each other at 600 dpi, and room round them
        assertTrue(picture.getWidth() > 2 * 26 / 25.4 * 600 && picture.getWidth() < 3 * 26 / 25.4 * 600,
                "the picture is " + picture.getWidth() + " pixels wide");
        keep(picture, "outputs-picture");
        byte[] pdf = Files.readAllBytes(out.resolve("made.pdf"));
        assertEquals("%PDF-", new String(pdf, 0, 5, StandardCharsets.US_ASCII));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertEquals(1, document.getNumberOfPages());
            keep(new PDFRenderer(document).renderImageWithDPI(0, 110), "outputs-proof");
        }
        String report = Files.readString(out.resolve("made-findings.html"));
        assertTrue(report.startsWith("<!DOCTYPE html>") && report.contains("<h1>Ferry made</h1>"), report);
        assertEquals(Output.values().length, Files.list(out).count(), "something half written was left behind");
        Files.copy(out.resolve("made-findings.html"), pictures().resolve("outputs-report.html"),
                java.nio.file.StandardCopyOption.REPLACE_EXISTING);
    }

    @Test
    void anOpenDesignIsMadeAsItsEditorHasIt() throws Exception {
        Window.fill();
        Path design = Samples.ferry(folder, "open");
        DesignSession session = Window.open(design).getAdapter(DesignSession.class);
        Window.until("the print is there", () -> session.fresh() && session.known().isPresent());
        Known known = session.known().get();
        Files.delete(design);
        Path file = folder.resolve("open.png");
        assertEquals(List.of(file), make(Output.PICTURE,
                Map.of(new Source(design, java.util.Optional.of(known)), file)).written());
        assertTrue(Files.size(file) > 1000);
    }

    @Test
    void oneThatFailsDoesNotStopTheOthers() throws Exception {
        Map<Source, Path> files = new LinkedHashMap<>();
        Path broken = Files.writeString(folder.resolve("broken.design"), "<nothing");
        files.put(Source.saved(broken), folder.resolve("broken.png"));
        files.put(Source.saved(Samples.ferry(folder, "whole")), folder.resolve("whole.png"));
        OutputWork.Result result = make(Output.PICTURE, files);
        assertEquals(List.of(folder.resolve("whole.png")), result.written());
        assertEquals(1, result.failed().size());
        assertTrue(result.failed().get(0).contains("broken.design"), result.failed().get(0));
        assertFalse(Files.exists(folder.resolve("broken.png")));
    }

    @Test
    void proofsOfAWholeJobAskBeforeTheyReplace() throws Exception {
        Window.fill();
        Path job = Files.createDirectories(folder.resolve("fleet"));
        Samples.ferry(job, "north");
        Samples.ferry(job, "south");
        Files.createDirectories(job.resolve("out"));
        Path there = Files.writeString(job.resolve("out/north.pdf"), "mine");
        linked = StudioProject.open(new NullProgressMonitor()).add(job, new NullProgressMonitor());
        IViewPart view = Window.page().showView(JobsView.ID);
        Window.page().activate(view);
        choose(view, PROOF);
        press("Write files", "Cancel", "outputs-ask");
        assertEquals("mine", Files.readString(there));
        choose(view, PROOF);
        press("Write files", "Write and replace", "outputs-ask-again");
        assertTrue(read.stream().anyMatch(each -> each.contains("One file is there already")), read.toString());
        press("Written", "Close", "outputs-told");
        assertTrue(read.contains("2 files are written."), "the count is not told: " + read);
        for (String each : List.of("north", "south")) {
            try (PDDocument document = Loader.loadPDF(Files.readAllBytes(job.resolve("out/" + each + ".pdf")))) {
                assertEquals(1, document.getNumberOfPages());
            }
        }
        IFile seen = linked.getFile("out/south.pdf");
        assertTrue(seen.exists(), "the list of jobs does not know the new file");
    }

    @Test
    void picturesOfAWholeJobWithTheirZones() throws Exception {
        Window.fill();
        Path job = Files.createDirectories(folder.resolve("fleet"));
        Samples.ferry(job, "north");
        Samples.ferry(job, "south");
        linked = StudioProject.open(new NullProgressMonitor()).add(job, new NullProgressMonitor());
        IViewPart view = Window.page().showView(JobsView.ID);
        Window.page().activate(view);
        choose(view, "org.pollex.ui.pictures.picture");
        // the second question is asked before the first returns to its event loop
        boolean[] where = prepare("Write files", "Write", "outputs-picture-where", shell -> { });
        press("Write a picture", "OK", "outputs-picture-ask", shell -> {
            Combo fine = Widgets.all(shell, Combo.class).get(0);
            fine.select(fine.indexOf("300"));
            Widgets.press(shell, "Show the zones, with a legend");
        });
        assertTrue(where[0], "nobody was asked where the pictures go");
        press("Written", "Close", "outputs-picture-told");
        BufferedImage picture = ImageIO.read(job.resolve("out/south.png").toFile());
        // two picks of 26 mm beside each other at 300 dpi, and room round them
        assertTrue(picture.getWidth() > 2 * 26 / 25.4 * 300 && picture.getWidth() < 3 * 26 / 25.4 * 300,
                "the picture is " + picture.getWidth() + " pixels wide");
        keep(picture, "outputs-picture-zones");
    }

    @Test
    void findingsOfAWholeJobForOtherPrograms() throws Exception {
        Window.fill();
        Path job = Files.createDirectories(folder.resolve("fleet"));
        Samples.ferry(job, "north");
        Samples.ferry(job, "south");
        linked = StudioProject.open(new NullProgressMonitor()).add(job, new NullProgressMonitor());
        IViewPart view = Window.page().showView(JobsView.ID);
        Window.page().activate(view);
        for (ReportFormat format : List.of(ReportFormat.JSON, ReportFormat.SARIF)) {
            choose(view, "org.pollex.ui.pictures.report");
            // the second question is asked before the first returns to its event loop
            boolean[] where = prepare("Write files", "Write", "outputs-report-where", shell -> { });
            press("Write a report of findings", "OK", "outputs-report-" + format.extension(),
                    shell -> Widgets.press(shell, format.words()));
            assertTrue(where[0], "nobody was asked where the reports go");
            press("Written", "Close", "outputs-report-told");
        }
        JsonObject json = read(job.resolve("out/south-findings.json"));
        assertEquals(1, json.get("format").getAsInt());
        JsonObject design = json.getAsJsonArray("designs").get(0).getAsJsonObject();
        assertEquals("south.design", design.get("path").getAsString());
        assertEquals("standard-pick", design.get("product").getAsString());
        JsonObject run = read(job.resolve("out/south-findings.sarif")).getAsJsonArray("runs").get(0).getAsJsonObject();
        assertEquals("0.1.0", run.getAsJsonObject("tool").getAsJsonObject("driver").get("version").getAsString());
        List<String> said = messages(design.getAsJsonArray("findings"), each -> each.get("message").getAsString());
        assertTrue(said.stream().anyMatch(each -> each.contains("0.12 mm wide over 11")), said.toString());
        assertEquals(said, messages(run.getAsJsonArray("results"), each -> each.getAsJsonObject("message").get("text")
                .getAsString()));
    }

    private static JsonObject read(Path file) throws Exception {
        return JsonParser.parseString(Files.readString(file)).getAsJsonObject();
    }

    private static List<String> messages(JsonArray all, Function<JsonObject, String> of) {
        List<String> said = new ArrayList<>();
        all.forEach(each -> said.add(of.apply(each.getAsJsonObject())));
        return said;
    }

    /** Selects the job in the list and gives the command. */
    private void choose(IViewPart view, String id) throws Exception {
        Window.until("the job is listed", () -> linked.getFile("north.design").exists());
        view.getSite().getSelectionProvider().setSelection(new StructuredSelection(List.of(linked)));
        Window.idle();
        org.eclipse.core.expressions.EvaluationContext context = new org.eclipse.core.expressions.EvaluationContext(
                Window.window().getService(IHandlerService.class).getCurrentState(), List.of());
        context.addVariable(org.eclipse.ui.ISources.ACTIVE_CURRENT_SELECTION_NAME,
                new StructuredSelection(List.of(linked)));
        org.eclipse.core.commands.Command command = Window.window()
                .getService(org.eclipse.ui.commands.ICommandService.class).getCommand(id);
        Window.window().getService(IHandlerService.class).executeCommandInContext(
                new org.eclipse.core.commands.ParameterizedCommand(command, null), null, context);
    }

    /** Answers a question that blocks in its own event loop, from within that loop, and keeps what it said. */
    private void press(String title, String button, String picture) throws Exception {
        press(title, button, picture, shell -> { });
    }

    private void press(String title, String button, String picture, Consumer<Shell> before) throws Exception {
        boolean[] pressed = prepare(title, button, picture, before);
        Window.until(title + " is answered", () -> pressed[0]);
        Window.until(title + " is gone", () -> Widgets.dialog(title).isEmpty());
    }

    /** Will answer a question as soon as it is asked. */
    private boolean[] prepare(String title, String button, String picture, Consumer<Shell> before) {
        boolean[] pressed = new boolean[1];
        Window.display().timerExec(50, new Runnable() {
            @Override
            public void run() {
                if (Widgets.dialog(title).isEmpty()) {
                    Window.display().timerExec(50, this);
                    return;
                }
                Shell shell = Widgets.dialog(title).get();
                before.accept(shell);
                Window.idle();
                try {
                    Picture.take(Window.display(), picture);
                } catch (Exception e) {
                    throw new AssertionError(e);
                }
                read = Widgets.all(shell, Label.class).stream().map(Label::getText).toList();
                Widgets.press(shell, button);
                pressed[0] = true;
            }
        });
        return pressed;
    }

    private static Path pictures() throws Exception {
        return Files.createDirectories(Path.of(System.getProperty(Picture.FOLDER, ".")));
    }

    private static void keep(BufferedImage image, String name) throws Exception {
        ImageIO.write(image, "png", pictures().resolve(name + ".png").toFile());
    }
}
