/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.batik;

import java.awt.Dimension;
import java.awt.geom.Dimension2D;

import org.apache.batik.bridge.ExternalResourceSecurity;
import org.apache.batik.bridge.FontFamilyResolver;
import org.apache.batik.bridge.NoLoadExternalResourceSecurity;
import org.apache.batik.bridge.NoLoadScriptSecurity;
import org.apache.batik.bridge.ScriptSecurity;
import org.apache.batik.bridge.UserAgentAdapter;
import org.apache.batik.util.ParsedURL;
import org.pollex.artwork.ArtNotice.Kind;
import org.pollex.artwork.svg.gate.GateReport;

/** A user agent that allows nothing: no other resource, no script, no dialogue, only the shipped fonts. */
final class ClosedUserAgent extends UserAgentAdapter {

    private final GateReport report;
    private final PageSize page;
    private final FontFamilyResolver fonts;

    ClosedUserAgent(GateReport report, PageSize page, FontFamilyResolver fonts) {
        this.report = report;
        this.page = page;
        this.fonts = fonts;
    }

    @Override
    public Dimension2D getViewportSize() {
        Dimension size = new Dimension();
        size.setSize(page.width() / PageSize.MM_PER_PX, page.height() / PageSize.MM_PER_PX);
        return size;
    }

    @Override
    public ExternalResourceSecurity getExternalResourceSecurity(ParsedURL resource, ParsedURL document) {
        return new NoLoadExternalResourceSecurity();
    }

    @Override
    public void checkLoadExternalResource(ParsedURL resource, ParsedURL document) {
        getExternalResourceSecurity(resource, document).checkLoadExternalResource();
    }

    @Override
    public ScriptSecurity getScriptSecurity(String type, ParsedURL script, ParsedURL document) {
        return new NoLoadScriptSecurity(type);
    }

    @Override
    public void checkLoadScript(String type, ParsedURL script, ParsedURL document) {
        getScriptSecurity(type, script, document).checkLoadScript();
    }

    @Override
    public FontFamilyResolver getFontFamilyResolver() {
        return fonts;
    }

    /** What Batik stumbles over and skips, mostly a property value it cannot read. */
    @Override
    public void displayError(Exception e) {
        report.note(Kind.UNSUPPORTED, "property", "svg", "a value was left out: " + GateReport.cut(said(e)));
    }

    @Override
    public void displayError(String message) {
        report.note(Kind.UNSUPPORTED, "property", "svg", "a value was left out: " + GateReport.cut(message));
    }

    @Override
    public void displayMessage(String message) {
        // Nobody is there to read it.
    }

    @Override
    public void showAlert(String message) {
        // Nobody is there to read it.
    }

    static String said(Throwable e) {
        return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage().replaceFirst("^[^ ]*:-?\\d+\\s*",
                "");
    }
}
