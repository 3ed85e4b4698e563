/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.catalogue.util;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.util.Switch;

import org.pollex.model.catalogue.*;

/**
 * <!-- begin-user-doc -->
 * The <b>Switch</b> for the model's inheritance hierarchy.
 * It supports the call {@link #doSwitch(EObject) doSwitch(object)}
 * to invoke the <code>caseXXX</code> method for each class of the model,
 * starting with the actual class of the object
 * and proceeding up the inheritance hierarchy
 * until a non-null result is returned,
 * which is the result of the switch.
 * <!-- end-user-doc -->
 * @see org.pollex.model.catalogue.CataloguePackage
 * @generated
 */
public class CatalogueSwitch<T> extends Switch<T> {
    /**
     * The cached model package
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    protected static CataloguePackage modelPackage;

    /**
     * Creates an instance of the switch.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    public CatalogueSwitch() {
        if (modelPackage == null) {
            modelPackage = CataloguePackage.eINSTANCE;
        }
    }

    /**
     * Checks whether this is a switch for the given package.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param ePackage the package in question.
     * @return whether this is a switch for the given package.
     * @generated
     */
    @Override
    protected boolean isSwitchFor(EPackage ePackage) {
        return ePackage == modelPackage;
    }

    /**
     * Calls <code>caseXXX</code> for each class of the model until one returns a non null result; it yields that result.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the first non-null result returned by a <code>caseXXX</code> call.
     * @generated
     */
    @Override
    protected T doSwitch(int classifierID, EObject theEObject) {
        switch (classifierID) {
            case CataloguePackage.CATALOGUE: {
                Catalogue catalogue = (Catalogue)theEObject;
                T result = caseCatalogue(catalogue);
                if (result == null) result = defaultCase(theEObject);
                return result;
            }
            case CataloguePackage.ENTRY: {
                Entry entry = (Entry)theEObject;
                T result = caseEntry(entry);
                if (result == null) result = defaultCase(theEObject);
                return result;
            }
            case CataloguePackage.SETTING: {
                Setting setting = (Setting)theEObject;
                T result = caseSetting(setting);
                if (result == null) result = defaultCase(theEObject);
                return result;
            }
            case CataloguePackage.FAMILY: {
                Family family = (Family)theEObject;
                T result = caseFamily(family);
                if (result == null) result = caseEntry(family);
                if (result == null) result = defaultCase(theEObject);
                return result;
            }
            case CataloguePackage.PRODUCT: {
                Product product = (Product)theEObject;
                T result = caseProduct(product);
                if (result == null) result = caseEntry(product);
                if (result == null) result = defaultCase(theEObject);
                return result;
            }
            case CataloguePackage.FACE: {
                Face face = (Face)theEObject;
                T result = caseFace(face);
                if (result == null) result = defaultCase(theEObject);
                return result;
            }
            case CataloguePackage.ZONE: {
                Zone zone = (Zone)theEObject;
                T result = caseZone(zone);
                if (result == null) result = defaultCase(theEObject);
                return result;
            }
            case CataloguePackage.MATERIAL: {
                Material material = (Material)theEObject;
                T result = caseMaterial(material);
                if (result == null) result = caseEntry(material);
                if (result == null) result = defaultCase(theEObject);
                return result;
            }
            case CataloguePackage.TEXTURE: {
                Texture texture = (Texture)theEObject;
                T result = caseTexture(texture);
                if (result == null) result = defaultCase(theEObject);
                return result;
            }
            case CataloguePackage.PHOTO_AREA: {
                PhotoArea photoArea = (PhotoArea)theEObject;
                T result = casePhotoArea(photoArea);
                if (result == null) result = defaultCase(theEObject);
                return result;
            }
            case CataloguePackage.GREY_PATCH: {
                GreyPatch greyPatch = (GreyPatch)theEObject;
                T result = caseGreyPatch(greyPatch);
                if (result == null) result = casePhotoArea(greyPatch);
                if (result == null) result = defaultCase(theEObject);
                return result;
            }
            case CataloguePackage.INK: {
                Ink ink = (Ink)theEObject;
                T result = caseInk(ink);
                if (result == null) result = caseEntry(ink);
                if (result == null) result = defaultCase(theEObject);
                return result;
            }
            case CataloguePackage.METHOD: {
                Method method = (Method)theEObject;
                T result = caseMethod(method);
                if (result == null) result = caseEntry(method);
                if (result == null) result = defaultCase(theEObject);
                return result;
            }
            default: return defaultCase(theEObject);
        }
    }

    /**
     * Returns the result of interpreting the object as an instance of '<em>Catalogue</em>'.
     * <!-- begin-user-doc -->
     * This implementation returns null;
     * returning a non-null result will terminate the switch.
     * <!-- end-user-doc -->
     * @param object the target of the switch.
     * @return the result of interpreting the object as an instance of '<em>Catalogue</em>'.
     * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
     * @generated
     */
    public T caseCatalogue(Catalogue object) {
        return null;
    }

    /**
     * Returns the result of interpreting the object as an instance of '<em>Entry</em>'.
     * <!-- begin-user-doc -->
     * This implementation returns null;
     * returning a non-null result will terminate the switch.
     * <!-- end-user-doc -->
     * @param object the target of the switch.
     * @return the result of interpreting the object as an instance of '<em>Entry</em>'.
     * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
     * @generated
     */
    public T caseEntry(Entry object) {
        return null;
    }

    /**
     * Returns the result of interpreting the object as an instance of '<em>Setting</em>'.
     * <!-- begin-user-doc -->
     * This implementation returns null;
     * returning a non-null result will terminate the switch.
     * <!-- end-user-doc -->
     * @param object the target of the switch.
     * @return the result of interpreting the object as an instance of '<em>Setting</em>'.
     * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
     * @generated
     */
    public T caseSetting(Setting object) {
        return null;
    }

    /**
     * Returns the result of interpreting the object as an instance of '<em>Family</em>'.
     * <!-- begin-user-doc -->
     * This implementation returns null;
     * returning a non-null result will terminate the switch.
     * <!-- end-user-doc -->
     * @param object the target of the switch.
     * @return the result of interpreting the object as an instance of '<em>Family</em>'.
     * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
     * @generated
     */
    public T caseFamily(Family object) {
        return null;
    }

    /**
     * Returns the result of interpreting the object as an instance of '<em>Product</em>'.
     * <!-- begin-user-doc -->
     * This implementation returns null;
     * returning a non-null result will terminate the switch.
     * <!-- end-user-doc -->
     * @param object the target of the switch.
     * @return the result of interpreting the object as an instance of '<em>Product</em>'.
     * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
     * @generated
     */
    public T caseProduct(Product object) {
        return null;
    }

    /**
     * Returns the result of interpreting the object as an instance of '<em>Face</em>'.
     * <!-- begin-user-doc -->
     * This implementation returns null;
     * returning a non-null result will terminate the switch.
     * <!-- end-user-doc -->
     * @param object the target of the switch.
     * @return the result of interpreting the object as an instance of '<em>Face</em>'.
     * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
     * @generated
     */
    public T caseFace(Face object) {
        return null;
    }

    /**
     * Returns the result of interpreting the object as an instance of '<em>Zone</em>'.
     * <!-- begin-user-doc -->
     * This implementation returns null;
     * returning a non-null result will terminate the switch.
     * <!-- end-user-doc -->
     * @param object the target of the switch.
     * @return the result of interpreting the object as an instance of '<em>Zone</em>'.
     * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
     * @generated
     */
    public T caseZone(Zone object) {
        return null;
    }

    /**
     * Returns the result of interpreting the object as an instance of '<em>Material</em>'.
     * <!-- begin-user-doc -->
     * This implementation returns null;
     * returning a non-null result will terminate the switch.
     * <!-- end-user-doc -->
     * @param object the target of the switch.
     * @return the result of interpreting the object as an instance of '<em>Material</em>'.
     * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
     * @generated
     */
    public T caseMaterial(Material object) {
        return null;
    }

    /**
     * Returns the result of interpreting the object as an instance of '<em>Texture</em>'.
     * <!-- begin-user-doc -->
     * This implementation returns null;
     * returning a non-null result will terminate the switch.
     * <!-- end-user-doc -->
     * @param object the target of the switch.
     * @return the result of interpreting the object as an instance of '<em>Texture</em>'.
     * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
     * @generated
     */
    public T caseTexture(Texture object) {
        return null;
    }

    /**
     * Returns the result of interpreting the object as an instance of '<em>Photo Area</em>'.
     * <!-- begin-user-doc -->
     * This implementation returns null;
     * returning a non-null result will terminate the switch.
     * <!-- end-user-doc -->
     * @param object the target of the switch.
     * @return the result of interpreting the object as an instance of '<em>Photo Area</em>'.
     * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
     * @generated
     */
    public T casePhotoArea(PhotoArea object) {
        return null;
    }

    /**
     * Returns the result of interpreting the object as an instance of '<em>Grey Patch</em>'.
     * <!-- begin-user-doc -->
     * This implementation returns null;
     * returning a non-null result will terminate the switch.
     * <!-- end-user-doc -->
     * @param object the target of the switch.
     * @return the result of interpreting the object as an instance of '<em>Grey Patch</em>'.
     * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
     * @generated
     */
    public T caseGreyPatch(GreyPatch object) {
        return null;
    }

    /**
     * Returns the result of interpreting the object as an instance of '<em>Ink</em>'.
     * <!-- begin-user-doc -->
     * This implementation returns null;
     * returning a non-null result will terminate the switch.
     * <!-- end-user-doc -->
     * @param object the target of the switch.
     * @return the result of interpreting the object as an instance of '<em>Ink</em>'.
     * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
     * @generated
     */
    public T caseInk(Ink object) {
        return null;
    }

    /**
     * Returns the result of interpreting the object as an instance of '<em>Method</em>'.
     * <!-- begin-user-doc -->
     * This implementation returns null;
     * returning a non-null result will terminate the switch.
     * <!-- end-user-doc -->
     * @param object the target of the switch.
     * @return the result of interpreting the object as an instance of '<em>Method</em>'.
     * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
     * @generated
     */
    public T caseMethod(Method object) {
        return null;
    }

    /**
     * Returns the result of interpreting the object as an instance of '<em>EObject</em>'.
     * <!-- begin-user-doc -->
     * This implementation returns null;
     * returning a non-null result will terminate the switch, but this is the last case anyway.
     * <!-- end-user-doc -->
     * @param object the target of the switch.
     * @return the result of interpreting the object as an instance of '<em>EObject</em>'.
     * @see #doSwitch(org.eclipse.emf.ecore.EObject)
     * @generated
     */
    @Override
    public T defaultCase(EObject object) {
        return null;
    }

} //CatalogueSwitch
