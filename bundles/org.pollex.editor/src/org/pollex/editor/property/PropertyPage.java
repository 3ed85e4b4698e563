/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.property;

import java.util.List;
import java.util.Set;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.part.Page;
import org.eclipse.ui.views.properties.IPropertySheetPage;
import org.pollex.editor.session.DesignPages;
import org.pollex.editor.session.Known;
import org.pollex.editor.session.SessionListener;
import org.pollex.editor.setting.Choices;
import org.pollex.editor.setting.LengthUnit;
import org.pollex.editor.work.Session;
import org.pollex.model.design.Mark;
import org.pollex.rules.Suite;

/** The fields of the one mark that is selected; of the whole design when none is, or several are. */
public final class PropertyPage extends Page implements IPropertySheetPage, SessionListener {

    private final Session session;
    private final DesignPages pages;
    private ScrolledComposite scroll;
    private Composite body;
    private Label trouble;
    private Form form;
    private Object shown;
    private Suite suite;
    private boolean locked;
    private boolean known;

    /** A page for an editor. */
    public PropertyPage(Session session, DesignPages pages) {
        this.session = session;
        this.pages = pages;
    }

    @Override
    public void createControl(Composite parent) {
        scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        scroll.addListener(SWT.Resize, event -> {
            if (body != null) {
                fit();
            }
        });
        session.add(this);
        Runnable following = Choices.follow(Set.of(LengthUnit.KEY), () -> scroll.getDisplay().asyncExec(() -> {
            shown = null;
            show();
        }));
        scroll.addDisposeListener(event -> following.run());
        show();
    }

    @Override
    public Control getControl() {
        return scroll;
    }

    @Override
    public void setFocus() {
        scroll.setFocus();
    }

    @Override
    public void selectionChanged(IWorkbenchPart part, ISelection selection) {
        show();
    }

    @Override
    public void changed() {
        show();
    }

    @Override
    public void known(Known now) {
        // the colours of the art are known with the first print
        if (!known) {
            known = true;
            shown = null;
        }
        show();
    }

    private void show() {
        if (scroll == null || scroll.isDisposed()) {
            return;
        }
        List<Mark> marks = pages.selected();
        Object now = marks.size() == 1 && marks.get(0).eContainer() != null ? marks.get(0) : session.design();
        boolean fixed = session.locked().isPresent() || now instanceof Mark mark && mark.isLocked();
        if (now == shown && fixed == locked && session.suite() == suite) {
            form.refresh();
            return;
        }
        shown = now;
        locked = fixed;
        suite = session.suite();
        Composite old = body;
        body = new Composite(scroll, SWT.NONE);
        scroll.setContent(body);
        if (old != null) {
            old.dispose();
        }
        GridLayoutFactory.fillDefaults().applyTo(body);
        trouble = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).indent(6, 4).hint(120, SWT.DEFAULT).applyTo(trouble);
        form = new Form(body, this::say);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(form.area());
        form.enable(!fixed);
        if (now instanceof Mark mark) {
            MarkForm.fill(form, session, mark);
        } else {
            DesignForm.fill(form, session, this::say);
        }
        say(session.locked().orElse(fixed ? "This mark is locked." : ""));
        fit();
    }

    private void say(String sentence) {
        if (!trouble.isDisposed()) {
            trouble.setText(sentence.replace("&", "&&"));
            ((org.eclipse.swt.layout.GridData) trouble.getLayoutData()).exclude = sentence.isEmpty();
            trouble.setVisible(!sentence.isEmpty());
            fit();
        }
    }

    private void fit() {
        if (body.isDisposed() || scroll.isDisposed()) {
            return;
        }
        body.layout(true, true);
        // as wide as the view, whatever it was before
        scroll.setMinHeight(body.computeSize(Math.max(60, scroll.getClientArea().width), SWT.DEFAULT).y);
    }

    @Override
    public void dispose() {
        session.remove(this);
        super.dispose();
    }
}
