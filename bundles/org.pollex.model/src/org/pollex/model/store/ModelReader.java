/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.xml.XMLConstants;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.DesignPackage;
import org.pollex.model.design.UnknownMark;
import org.pollex.model.store.StoreException.Reason;

/**
 * Builds model objects from the elements of a file in the current format. It reads what EMF writes as XMI and nothing
 * beyond: no link into another file, no package found by a location, nothing unknown passed over. Marks of unknown
 * kinds can be kept, to be written again as they were.
 */
final class ModelReader {

    private static final String XMI_VERSION = "{http://www.omg.org/XMI}version";
    private static final String SCHEMA_LOCATION =
            "{" + XMLConstants.W3C_XML_SCHEMA_INSTANCE_NS_URI + "}schemaLocation";

    private final String file;
    private final FileKind kind;
    private final Set<String> ids = new HashSet<>();
    private final List<String> leftOut;
    private final boolean keeps;

    private ModelReader(String file, FileKind kind, List<String> leftOut, boolean keeps) {
        this.file = file;
        this.kind = kind;
        this.leftOut = leftOut;
        this.keeps = keeps;
    }

    /** Refuses a file with anything unknown in it. */
    static ModelReader strict(String file, FileKind kind) {
        return new ModelReader(file, kind, null, false);
    }

    /** Keeps marks of unknown kinds as {@link UnknownMark}; refuses a file with anything else unknown in it. */
    static ModelReader keeping(String file, FileKind kind) {
        return new ModelReader(file, kind, null, true);
    }

    /** @param leftOut takes a sentence for each unknown thing, which is left out */
    static ModelReader without(String file, FileKind kind, List<String> leftOut) {
        return new ModelReader(file, kind, leftOut, false);
    }

    /** Builds the whole model. */
    EObject read(XmlElement root) throws StoreException {
        return build(kind.root(), root);
    }

    private EObject build(EClass type, XmlElement element) throws StoreException {
        EObject object = type.getEPackage().getEFactoryInstance().create(type);
        for (Map.Entry<String, String> attribute : element.attributes().entrySet()) {
            String key = attribute.getKey();
            if (key.equals(XmlHandler.TYPE) || key.equals(XMI_VERSION) || key.equals(SCHEMA_LOCATION)) {
                continue;
            }
            EStructuralFeature feature = type.getEStructuralFeature(key);
            if (!(feature instanceof EAttribute known) || feature.isMany()) {
                unknown(element, "attribute " + Quoted.of(key));
                continue;
            }
            object.eSet(known, value(known, attribute.getValue(), element));
        }
        Set<EStructuralFeature> seen = new HashSet<>();
        for (XmlElement child : element.children()) {
            EStructuralFeature feature = child.namespace().isEmpty() ? type.getEStructuralFeature(child.name()) : null;
            if (feature == null || feature instanceof EAttribute && !feature.isMany()) {
                unknown(child, "element inside <" + element.name() + ">");
                continue;
            }
            if (!feature.isMany() && !seen.add(feature)) {
                throw bad(child, "is the second one inside <" + element.name() + ">, which has one at most; "
                        + "remove one of the two");
            }
            if (feature instanceof EAttribute attribute) {
                add(object, feature, text(attribute, child));
            } else {
                Optional<EObject> kept = kept((EReference) feature, child);
                if (kept.isPresent()) {
                    add(object, feature, kept.get());
                    continue;
                }
                Optional<EClass> childType = childType((EReference) feature, child);
                if (childType.isPresent()) {
                    add(object, feature, build(childType.get(), child));
                }
            }
        }
        if (!element.text().isBlank()) {
            unknown(element, "text " + Quoted.of(element.text().strip()));
        }
        check(object, element);
        return object;
    }

    @SuppressWarnings("unchecked")
    private static void add(EObject object, EStructuralFeature feature, Object value) {
        if (feature.isMany()) {
            ((List<Object>) object.eGet(feature)).add(value);
        } else {
            object.eSet(feature, value);
        }
    }

    /** A mark of an unknown kind; empty when the child is none, or holds what cannot be kept. */
    private Optional<EObject> kept(EReference reference, XmlElement child) throws StoreException {
        Optional<String> named = UnknownMarks.kind(child);
        if (!keeps || reference.getEReferenceType() != DesignPackage.Literals.MARK || named.isEmpty()
                || known(reference, child).isPresent()) {
            return Optional.empty();
        }
        Optional<String> rest = UnknownMarks.rest(child);
        if (rest.isEmpty()) {
            return Optional.empty();
        }
        UnknownMark mark = DesignFactory.eINSTANCE.createUnknownMark();
        mark.setKind(named.get());
        mark.setRest(rest.get());
        for (EAttribute attribute : DesignPackage.Literals.MARK.getEAllAttributes()) {
            String text = child.attributes().get(attribute.getName());
            if (text != null) {
                mark.eSet(attribute, value(attribute, text, child));
            }
        }
        check(mark, child);
        return Optional.of(mark);
    }

    /** The type that a child names, when it is one that a file may hold there. */
    private static Optional<EClass> known(EReference reference, XmlElement child) {
        EClass expected = reference.getEReferenceType();
        String named = child.attributes().getOrDefault(XmlHandler.TYPE, "");
        String space = "{" + expected.getEPackage().getNsURI() + "}";
        EClassifier found = named.startsWith(space)
                ? expected.getEPackage().getEClassifier(named.substring(space.length())) : null;
        return found instanceof EClass type && !type.isAbstract() && expected.isSuperTypeOf(type)
                && type != DesignPackage.Literals.UNKNOWN_MARK ? Optional.of(type) : Optional.empty();
    }

    /** Empty when the child is of an unknown type and left out. */
    private Optional<EClass> childType(EReference reference, XmlElement child) throws StoreException {
        EClass expected = reference.getEReferenceType();
        String named = child.attributes().get(XmlHandler.TYPE);
        if (named == null) {
            if (expected.isAbstract()) {
                throw bad(child, "does not say what it is; give it an xsi:type");
            }
            return Optional.of(expected);
        }
        Optional<EClass> type = known(reference, child);
        if (type.isEmpty()) {
            unknown(child, "type " + Quoted.of(named.substring(named.indexOf('}') + 1)));
        }
        return type;
    }

    private Object text(EAttribute attribute, XmlElement element) throws StoreException {
        if (!element.children().isEmpty()) {
            unknown(element.children().get(0), "element inside <" + element.name() + ">");
        }
        if (!element.attributes().isEmpty()) {
            unknown(element, "attribute " + Quoted.of(element.attributes().keySet().iterator().next()));
        }
        return value(attribute, element.text(), element);
    }

    private Object value(EAttribute attribute, String text, XmlElement element) throws StoreException {
        try {
            return ValueRules.parse(attribute, text);
        } catch (ValueRules.BadValue e) {
            throw new StoreException(Reason.BAD_VALUE, file, "line " + element.line() + ", <" + element.name() + ">: "
                    + attribute.getName() + " is " + Quoted.of(text) + " but must be " + e.getMessage()
                    + "; correct it.", e);
        }
    }

    private void check(EObject object, XmlElement element) throws StoreException {
        for (EAttribute attribute : object.eClass().getEAllAttributes()) {
            if (attribute.isRequired() && !attribute.isMany() && object.eGet(attribute) == null) {
                throw bad(element, "has no " + attribute.getName() + "; give it one");
            }
        }
        EAttribute id = object.eClass().getEIDAttribute();
        if (id != null && kind == FileKind.DESIGN && object.eGet(id) instanceof String text && !ids.add(text)) {
            throw bad(element, "has the id " + Quoted.of(text) + ", which another element has already; "
                    + "give it one of its own");
        }
        String complaint = ValueRules.complaint(object);
        if (!complaint.isEmpty()) {
            throw bad(element, complaint);
        }
    }

    private StoreException bad(XmlElement element, String what) {
        return new StoreException(Reason.BAD_VALUE, file, "line " + element.line() + ", <" + element.name() + "> "
                + what + ".");
    }

    private void unknown(XmlElement element, String what) throws StoreException {
        String said = "line " + element.line() + ", <" + element.name() + "> is or holds an unknown " + what;
        if (leftOut == null) {
            throw new StoreException(Reason.UNKNOWN_CONTENT, file, said
                    + "; correct or remove it, since saving would lose it.");
        }
        leftOut.add(Quoted.clean(said));
    }
}
