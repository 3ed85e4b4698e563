/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.listing;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.List;
import org.pollex.model.LabColour;
import org.pollex.model.catalogue.Entry;
import org.pollex.model.catalogue.Family;
import org.pollex.model.catalogue.GreyPatch;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.Method;
import org.pollex.model.catalogue.PhotoArea;
import org.pollex.model.catalogue.Setting;
import org.pollex.model.catalogue.Texture;
import org.pollex.output.report.Plain;
import org.pollex.rules.CheckEntry;

/** Catalogue entries as JSON objects: a Lab colour is an array of L*, a*, b*; lengths are mm, films micrometres. */
final class EntryJson {

    /** Writes the fields of one entry. */
    @FunctionalInterface
    interface Fields<T> {

        void write(JsonWriter json, T entry) throws IOException;
    }

    private EntryJson() {
    }

    static <T> byte[] of(List<T> entries, Fields<T> fields) {
        return Plain.json(json -> {
            json.beginArray();
            for (T entry : entries) {
                json.beginObject();
                fields.write(json, entry);
                json.endObject();
            }
            json.endArray();
        });
    }

    static void entry(JsonWriter json, Entry entry) throws IOException {
        json.name("id").value(entry.getId());
        json.name("name").value(entry.getName() == null ? entry.getId() : entry.getName());
        Plain.text(json, "description", entry.getDescription());
        Plain.text(json, "source", entry.getSource());
        if (!entry.getSettings().isEmpty()) {
            json.name("settings").beginArray();
            for (Setting setting : entry.getSettings()) {
                json.beginObject();
                json.name("key").value(setting.getKey());
                Plain.number(json, "value", setting.getValue());
                Plain.text(json, "unit", setting.getUnit());
                json.endObject();
            }
            json.endArray();
        }
    }

    static void family(JsonWriter json, Family family) throws IOException {
        entry(json, family);
    }

    static void material(JsonWriter json, Material material) throws IOException {
        entry(json, material);
        lab(json, "lab", material.getLab());
        lab(json, "coreLab", material.getCoreLab());
        Plain.number(json, "translucency", material.getTranslucency());
        Plain.number(json, "wearFactor", material.getWearFactor());
        json.name("glow").value(material.isGlow());
        Texture texture = material.getTexture();
        if (texture != null) {
            json.name("texture").beginObject();
            json.name("kind").value(texture.getKind().getLiteral());
            Plain.number(json, "scale", texture.getScale());
            Plain.number(json, "amount", texture.getAmount());
            Plain.text(json, "picture", texture.getPicture());
            area(json, "crop", texture.getCrop());
            area(json, "grey", texture.getGrey());
            json.endObject();
        }
    }

    private static void area(JsonWriter json, String name, PhotoArea area) throws IOException {
        if (area == null) {
            return;
        }
        json.name(name).beginObject();
        Plain.number(json, "x", area.getX());
        Plain.number(json, "y", area.getY());
        Plain.number(json, "width", area.getWidth());
        Plain.number(json, "height", area.getHeight());
        json.name("unit").value(area.getUnit().getLiteral());
        if (area instanceof GreyPatch grey) {
            Plain.number(json, "lightness", grey.getLightness());
        }
        json.endObject();
    }

    static void ink(JsonWriter json, Ink ink) throws IOException {
        entry(json, ink);
        json.name("kind").value(ink.getKind().getLiteral());
        lab(json, "lab", ink.getLab());
        lab(json, "labOverBlack", ink.getLabOverBlack());
        Plain.number(json, "film", ink.getFilm());
    }

    static void method(JsonWriter json, Method method) throws IOException {
        entry(json, method);
        Plain.number(json, "lineMin", method.getLineMin());
        Plain.number(json, "gapMin", method.getGapMin());
        Plain.number(json, "lineMinReversed", method.getLineMinReversed());
        Plain.number(json, "gapMinReversed", method.getGapMinReversed());
        Plain.number(json, "typeMin", method.getTypeMin());
        Plain.number(json, "speckMin", method.getSpeckMin());
        Plain.number(json, "pinholeMin", method.getPinholeMin());
        Plain.number(json, "edge", method.getEdge());
        Plain.number(json, "register", method.getRegister());
        Plain.number(json, "choke", method.getChoke());
        json.name("inksMax").value(method.getInksMax());
        json.name("resolution").value(method.getResolution());
        json.name("fullColour").value(method.isFullColour());
        json.name("whiteUnder").value(method.isWhiteUnder());
    }

    static void check(JsonWriter json, CheckEntry check) throws IOException {
        json.name("id").value(check.id());
        json.name("name").value(check.name());
        Plain.text(json, "description", check.description());
        Plain.text(json, "contributor", check.contributor());
    }

    private static void lab(JsonWriter json, String name, LabColour colour) throws IOException {
        if (colour != null) {
            json.name(name).beginArray();
            json.jsonValue(Plain.number(colour.l())).jsonValue(Plain.number(colour.a()))
                    .jsonValue(Plain.number(colour.b()));
            json.endArray();
        }
    }
}
