/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.app.help;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.custom.PaintObjectEvent;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.events.TraverseEvent;
import org.eclipse.swt.graphics.GlyphMetrics;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;

/** Pages of help with a list of them and a search. Needs neither a browser nor a network. */
public final class HelpView extends ViewPart {

    /** Id of the view. */
    public static final String ID = "org.pollex.app.help";

    private List<HelpPage> pages = List.of();
    private List<HelpPage> listed = List.of();
    private org.eclipse.swt.widgets.List titles;
    private Text search;
    private StyledText text;
    private HelpText shown = HelpText.of("");
    private final List<Image> images = new ArrayList<>();

    @Override
    public void createPartControl(Composite parent) {
        pages = HelpPages.all();
        SashForm sash = new SashForm(parent, SWT.HORIZONTAL);
        Composite left = new Composite(sash, SWT.NONE);
        GridLayoutFactory.swtDefaults().applyTo(left);
        new Label(left, SWT.NONE).setText("&Search:");
        search = new Text(left, SWT.SEARCH | SWT.ICON_CANCEL);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(search);
        search.addListener(SWT.Modify, event -> list(search.getText()));
        titles = new org.eclipse.swt.widgets.List(left, SWT.SINGLE | SWT.V_SCROLL);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(titles);
        titles.addListener(SWT.Selection, event -> show());
        text = new StyledText(sash, SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL);
        text.setMargins(16, 12, 16, 12);
        text.setLineSpacing(3);
        text.addPaintObjectListener(this::paint);
        text.addListener(SWT.MouseUp, event -> {
            int at = text.getOffsetAtPoint(new Point(event.x, event.y));
            if (at >= 0 && text.getSelectionCount() == 0) {
                follow(at);
            }
        });
        text.addListener(SWT.KeyDown, this::key);
        text.addTraverseListener(this::traverse);
        text.addDisposeListener(event -> dropImages());
        sash.setWeights(26, 74);
        list("");
    }

    private void list(String words) {
        String wanted = words.strip().toLowerCase(Locale.ROOT);
        listed = pages.stream().filter(each -> each.text().toLowerCase(Locale.ROOT).contains(wanted)).toList();
        titles.setItems(listed.stream().map(HelpPage::title).toArray(String[]::new));
        if (!listed.isEmpty()) {
            titles.select(0);
        }
        show();
    }

    /** Shows a page by its name, whatever is searched for. */
    void open(String name) {
        search.setText("");
        list("");
        for (int i = 0; i < listed.size(); i++) {
            if (listed.get(i).name().equals(name)) {
                titles.select(i);
            }
        }
        show();
    }

    private void show() {
        int index = titles.getSelectionIndex();
        boolean found = index >= 0 && index < listed.size();
        shown = HelpText.of(found ? listed.get(index).text() : "No page has these words.");
        text.setText(shown.plain());
        dropImages();
        text.setStyleRanges(shown.runs().stream().map(this::style).toArray(StyleRange[]::new));
        text.setTopIndex(0);
    }

    private StyleRange style(HelpText.Run run) {
        StyleRange style = new StyleRange(run.start(), run.length(), null, null);
        switch (run.kind()) {
            case TITLE -> style.font = JFaceResources.getHeaderFont();
            case HEADING -> style.font = JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT);
            case BOLD -> style.fontStyle = SWT.BOLD;
            case LINK -> {
                style.underline = true;
                style.underlineStyle = SWT.UNDERLINE_LINK;
            }
            case PICTURE -> picture(run).ifPresent(each -> {
                Rectangle box = each.getBounds();
                style.metrics = new GlyphMetrics(box.height, 0, box.width);
                style.data = each;
            });
            default -> throw new IllegalStateException(run.toString());
        }
        return style;
    }

    private Optional<Image> picture(HelpText.Run run) {
        try (InputStream in = HelpView.class.getResourceAsStream("/help/" + run.target())) {
            Image image = in == null ? null : new Image(text.getDisplay(), in);
            if (image != null) {
                images.add(image);
            }
            return Optional.ofNullable(image);
        } catch (IOException | SWTException e) {
            ILog.of(HelpView.class).warn("A picture of the help cannot be shown: " + run.target(), e);
            return Optional.empty();
        }
    }

    private void dropImages() {
        images.forEach(Image::dispose);
        images.clear();
    }

    private void paint(PaintObjectEvent event) {
        if (event.style.data instanceof Image image && !image.isDisposed()) {
            event.gc.drawImage(image, event.x, event.y + event.ascent - event.style.metrics.ascent);
        }
    }

    /** Follows the link at a place of the text, if there is one. */
    private boolean follow(int offset) {
        for (HelpText.Run link : shown.links()) {
            if (offset >= link.start() && offset <= link.start() + link.length()) {
                open(link.target());
                return true;
            }
        }
        return false;
    }

    private void key(Event event) {
        if (event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR) {
            event.doit = !follow(text.getCaretOffset());
        }
    }

    /** From link to link with the tabulator, then on to the next control. */
    private void traverse(TraverseEvent event) {
        if (event.detail != SWT.TRAVERSE_TAB_NEXT && event.detail != SWT.TRAVERSE_TAB_PREVIOUS) {
            return;
        }
        boolean next = event.detail == SWT.TRAVERSE_TAB_NEXT;
        HelpText.Run to = null;
        for (HelpText.Run link : shown.links()) {
            if (next && to == null && link.start() > text.getSelection().x
                    || !next && link.start() < text.getSelection().x) {
                to = link;
            }
        }
        event.doit = to == null;
        if (to != null) {
            text.setSelection(to.start(), to.start() + to.length());
            text.showSelection();
        }
    }

    /** What is shown now. */
    public String shown() {
        return text.getText();
    }

    @Override
    public void setFocus() {
        titles.setFocus();
    }
}
