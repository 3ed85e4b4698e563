/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.inks;

import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.pollex.edit.ChangeInkCommand;
import org.pollex.model.catalogue.Ink;
import org.pollex.print.Drawdown;

/** The list of inks, the fields of the chosen one, and its film on every material. */
final class InkPage {

    /** What a user can ask for. */
    interface Doing {

        /** A new ink. */
        void add();

        /** A copy of an ink under a name of its own. */
        void duplicate(Ink ink);

        /** A copy of an ink from elsewhere, to be used in its place. */
        void bring(Ink ink);

        /** No such ink any more. */
        void remove(Ink ink);

        /** The ink shall be so. */
        void change(String label, Ink ink, ChangeInkCommand.Values values);

        /** Something is being typed. */
        void typing();
    }

    private static final int[] SHARES = {44, 56};
    private static final int[] HEIGHTS = {62, 38};

    private final InkBook book;
    private final Doing doing;
    private final SashForm sash;
    private final InkList list;
    private final ScrolledComposite scroll;
    private final InkForm form;
    private final FilmWall wall;
    private final Label heading;
    private final Button bring;
    private final Button duplicate;
    private final Button remove;

    InkPage(Composite parent, InkBook book, Doing doing) {
        this.book = book;
        this.doing = doing;
        sash = new SashForm(parent, SWT.VERTICAL);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
        SashForm upper = new SashForm(sash, SWT.HORIZONTAL);
        Composite left = new Composite(upper, SWT.NONE);
        GridLayoutFactory.swtDefaults().applyTo(left);
        list = new InkList(left, this::chosen, ink -> edit());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(list.table());
        Composite row = new Composite(left, SWT.NONE);
        RowLayout buttons = new RowLayout(SWT.HORIZONTAL);
        buttons.marginLeft = 0;
        row.setLayout(buttons);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
        button(row, "&Add…", "A new ink", doing::add);
        duplicate = button(row, "D&uplicate…", "A copy under a name of its own",
                () -> doing.duplicate(list.selected()));
        bring = button(row, "&Copy here", "Inks of other files are not changed; a copy in this one is, and takes their "
                + "place", () -> doing.bring(list.selected()));
        remove = button(row, "Re&move", "Takes the ink out of this file", () -> doing.remove(list.selected()));
        scroll = new ScrolledComposite(upper, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        form = new InkForm(scroll, new FormOwner());
        scroll.setContent(form.area());
        scroll.setShowFocusedControl(true);
        scroll.addListener(SWT.Resize, event -> fit());
        upper.setWeights(SHARES);
        Composite lower = new Composite(sash, SWT.NONE);
        GridLayoutFactory.swtDefaults().applyTo(lower);
        heading = new Label(lower, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(200, SWT.DEFAULT).applyTo(heading);
        wall = new FilmWall(lower);
        wall.materials(book.materials());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(wall.control());
        sash.setWeights(HEIGHTS);
    }

    private static Button button(Composite parent, String words, String tip, Runnable action) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(words);
        button.setToolTipText(tip);
        button.addListener(SWT.Selection, event -> action.run());
        return button;
    }

    private void fit() {
        scroll.setMinHeight(form.area().computeSize(scroll.getClientArea().width, SWT.DEFAULT).y);
    }

    /** Shows the inks as they are now and chooses one; the chosen one stays when {@code choose} is null. */
    void refresh(Ink choose) {
        list.show(book, choose == null ? list.selected() : choose);
        chosen();
    }

    private void chosen() {
        Ink ink = list.selected();
        boolean own = book.isOwn(ink);
        form.show(ink, own);
        duplicate.setEnabled(ink != null);
        bring.setEnabled(ink != null && !own);
        remove.setEnabled(own);
    }

    private final class FormOwner implements InkForm.Owner {

        @Override
        public void change(String label, Ink ink, ChangeInkCommand.Values values) {
            doing.change(label, ink, values);
        }

        @Override
        public void preview(Ink look) {
            heading.setText(look.getLab() == null ? "Type the colour over white, and the materials are shown with the "
                    + "ink on them." : "On every material: on the left the film as measured, on the right half as thick"
                    + (Drawdown.of(look).extrapolated() ? " (extrapolated)." : "."));
            wall.show(look);
            fit();
        }

        @Override
        public void typing() {
            doing.typing();
        }
    }

    /** Puts the keys into the fields of the chosen ink. */
    void edit() {
        form.edit();
    }

    /** Puts the keys into the field that cannot be used. */
    void editWrong() {
        form.editWrong();
    }

    /** Takes what was typed. */
    void flush() {
        form.flush();
    }

    /** What was typed and cannot be used, in words. */
    Optional<String> trouble() {
        return form.trouble();
    }

    /** Whether something was typed that is not yet taken. */
    boolean pending() {
        return form.pending();
    }

    void setFocus() {
        list.table().setFocus();
    }
}
