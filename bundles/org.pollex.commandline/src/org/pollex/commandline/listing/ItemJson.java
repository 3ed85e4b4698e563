/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.listing;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.model.catalogue.Product;
import org.pollex.output.report.Plain;
import org.pollex.print.item.Item;
import org.pollex.print.item.ItemException;
import org.pollex.print.item.ItemFace;
import org.pollex.rules.Suite;

/** Products with the geometry that their family builds. */
final class ItemJson {

    private final Suite suite;

    ItemJson(Suite suite) {
        this.suite = suite;
    }

    /** All products, built. */
    List<Item> built() throws Refusal {
        List<Item> items = new ArrayList<>();
        for (Product product : suite.catalogues().products()) {
            try {
                items.add(suite.item(product.getId()));
            } catch (ItemException e) {
                throw new Refusal(ExitCode.UNREADABLE, e.getMessage(), e);
            }
        }
        return items;
    }

    static void write(JsonWriter json, Item item) throws IOException {
        Product product = item.product();
        EntryJson.entry(json, product);
        Plain.text(json, "family", product.getFamily());
        Plain.number(json, "width", item.width());
        Plain.number(json, "height", item.height());
        Plain.number(json, "thickness", product.getThickness());
        Plain.number(json, "register", product.getRegister());
        json.name("sides").beginArray();
        for (ItemFace face : item.faces()) {
            json.beginObject();
            json.name("name").value(face.name());
            Plain.number(json, "edge", face.edge());
            json.name("outline").value(Plain.wkt(face.area()));
            json.name("safe").value(Plain.wkt(face.safe()));
            json.name("wearRisk").value(Plain.wkt(face.wearRisk()));
            json.name("unprintable").value(Plain.wkt(face.unprintable()));
            json.endObject();
        }
        json.endArray();
    }
}
