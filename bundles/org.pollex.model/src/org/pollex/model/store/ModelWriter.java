/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;
import org.pollex.model.design.UnknownMark;
import org.pollex.model.store.StoreException.Reason;

/** Writes a model as XMI: the same model always gives the same bytes, on every system. */
final class ModelWriter {

    private static final int LINE_WIDTH = 100;

    private ModelWriter() {
    }

    /**
     * Sets the format and gives an id to every layer and mark that has none, then writes. The model stays in the
     * resource that it may be in.
     */
    static byte[] write(EObject model, String file, FileKind kind) throws StoreException {
        if (model.eClass() != kind.root()) {
            throw new IllegalArgumentException("A " + kind.word() + " is expected, not a " + model.eClass().getName());
        }
        model.eSet(kind.root().getEStructuralFeature("format"), kind.format());
        if (kind == FileKind.DESIGN) {
            giveIds(model);
        }
        check(model, file, kind);
        EObject copy = EcoreUtil.copy(model);
        Resource resource = new XMIResourceImpl(URI.createURI("model." + kind.ending()));
        EObject written = EcoreUtil.copy(model);
        List<UnknownMark> kept = UnknownMarks.mask(written);
        resource.getContents().add(written);
        Map<String, Object> options = new HashMap<>();
        options.put(XMLResource.OPTION_ENCODING, "UTF-8");
        options.put(XMLResource.OPTION_LINE_WIDTH, LINE_WIDTH);
        options.put(Resource.OPTION_LINE_DELIMITER, "\n");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            resource.save(out, options);
        } catch (IOException | RuntimeException e) {
            throw new StoreException(Reason.NOT_WRITTEN, file, "this " + kind.word()
                    + " cannot be turned into XML; nothing was written, and the cause is a fault in Pollex.", e);
        }
        byte[] bytes = UnknownMarks.unmask(out.toByteArray(), kept);
        // What could not be read again must never replace what can.
        EObject again = ModelReader.keeping(file, kind).read(XmlSource.read(bytes, file, kind));
        if (!EcoreUtil.equals(copy, again)) {
            throw new StoreException(Reason.NOT_WRITTEN, file, "this " + kind.word()
                    + " would read back differently; nothing was written, and the cause is a fault in Pollex.");
        }
        return bytes;
    }

    private static void check(EObject model, String file, FileKind kind) throws StoreException {
        List<EObject> all = new ArrayList<>(List.of(model));
        model.eAllContents().forEachRemaining(all::add);
        for (EObject object : all) {
            for (EAttribute attribute : object.eClass().getEAllAttributes()) {
                Object value = object.eGet(attribute);
                for (Object each : value instanceof List<?> list ? list : Collections.singletonList(value)) {
                    if (each == null && attribute.isMany()) {
                        throw bad(file, kind, object, attribute, "nothing", "a value");
                    }
                    try {
                        ValueRules.check(attribute, each);
                    } catch (ValueRules.BadValue e) {
                        throw bad(file, kind, object, attribute, Quoted.of(String.valueOf(each)), e.getMessage());
                    }
                }
            }
            String complaint = ValueRules.complaint(object);
            if (!complaint.isEmpty()) {
                throw new StoreException(Reason.BAD_VALUE, file, "not saved, since this " + kind.word() + " "
                        + complaint + ".");
            }
        }
    }

    private static StoreException bad(String file, FileKind kind, EObject object, EAttribute attribute, String value,
            String wanted) {
        return new StoreException(Reason.BAD_VALUE, file, "not saved, since " + attribute.getName() + " of a "
                + object.eClass().getName() + " in this " + kind.word() + " is " + value + " but must be " + wanted
                + ".");
    }

    private static void giveIds(EObject model) {
        Set<String> used = new HashSet<>();
        List<EObject> without = new ArrayList<>();
        for (TreeIterator<EObject> all = model.eAllContents(); all.hasNext();) {
            EObject object = all.next();
            EAttribute id = object.eClass().getEIDAttribute();
            if (id != null) {
                String value = (String) object.eGet(id);
                if (value == null || value.isEmpty() || !used.add(value)) {
                    without.add(object);
                }
            }
        }
        int next = 1;
        for (EObject object : without) {
            String letter = object.eClass().getName().equals("Layer") ? "l" : "m";
            while (!used.add(letter + next)) {
                next++;
            }
            object.eSet(object.eClass().getEIDAttribute(), letter + next);
        }
    }
}
