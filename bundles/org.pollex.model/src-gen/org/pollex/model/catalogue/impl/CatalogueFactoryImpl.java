/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.catalogue.impl;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.impl.EFactoryImpl;

import org.eclipse.emf.ecore.plugin.EcorePlugin;

import org.pollex.model.LabColour;

import org.pollex.model.catalogue.*;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Factory</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class CatalogueFactoryImpl extends EFactoryImpl implements CatalogueFactory {
    /**
     * Creates the default factory implementation.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    public static CatalogueFactory init() {
        try {
            CatalogueFactory theCatalogueFactory = (CatalogueFactory)EPackage.Registry.INSTANCE.getEFactory(CataloguePackage.eNS_URI);
            if (theCatalogueFactory != null) {
                return theCatalogueFactory;
            }
        }
        catch (Exception exception) {
            EcorePlugin.INSTANCE.log(exception);
        }
        return new CatalogueFactoryImpl();
    }

    /**
     * Creates an instance of the factory.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    public CatalogueFactoryImpl() {
        super();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public EObject create(EClass eClass) {
        switch (eClass.getClassifierID()) {
            case CataloguePackage.CATALOGUE: return createCatalogue();
            case CataloguePackage.SETTING: return createSetting();
            case CataloguePackage.FAMILY: return createFamily();
            case CataloguePackage.PRODUCT: return createProduct();
            case CataloguePackage.FACE: return createFace();
            case CataloguePackage.ZONE: return createZone();
            case CataloguePackage.MATERIAL: return createMaterial();
            case CataloguePackage.TEXTURE: return createTexture();
            case CataloguePackage.PHOTO_AREA: return createPhotoArea();
            case CataloguePackage.GREY_PATCH: return createGreyPatch();
            case CataloguePackage.INK: return createInk();
            case CataloguePackage.METHOD: return createMethod();
            default:
                throw new IllegalArgumentException("The class '" + eClass.getName() + "' is not a valid classifier");
        }
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Object createFromString(EDataType eDataType, String initialValue) {
        switch (eDataType.getClassifierID()) {
            case CataloguePackage.ZONE_KIND:
                return createZoneKindFromString(eDataType, initialValue);
            case CataloguePackage.PHOTO_UNIT:
                return createPhotoUnitFromString(eDataType, initialValue);
            case CataloguePackage.TEXTURE_KIND:
                return createTextureKindFromString(eDataType, initialValue);
            case CataloguePackage.INK_KIND:
                return createInkKindFromString(eDataType, initialValue);
            case CataloguePackage.LAB_COLOUR:
                return createLabColourFromString(eDataType, initialValue);
            default:
                throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
        }
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public String convertToString(EDataType eDataType, Object instanceValue) {
        switch (eDataType.getClassifierID()) {
            case CataloguePackage.ZONE_KIND:
                return convertZoneKindToString(eDataType, instanceValue);
            case CataloguePackage.PHOTO_UNIT:
                return convertPhotoUnitToString(eDataType, instanceValue);
            case CataloguePackage.TEXTURE_KIND:
                return convertTextureKindToString(eDataType, instanceValue);
            case CataloguePackage.INK_KIND:
                return convertInkKindToString(eDataType, instanceValue);
            case CataloguePackage.LAB_COLOUR:
                return convertLabColourToString(eDataType, instanceValue);
            default:
                throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
        }
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Catalogue createCatalogue() {
        CatalogueImpl catalogue = new CatalogueImpl();
        return catalogue;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Setting createSetting() {
        SettingImpl setting = new SettingImpl();
        return setting;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Family createFamily() {
        FamilyImpl family = new FamilyImpl();
        return family;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Product createProduct() {
        ProductImpl product = new ProductImpl();
        return product;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Face createFace() {
        FaceImpl face = new FaceImpl();
        return face;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Zone createZone() {
        ZoneImpl zone = new ZoneImpl();
        return zone;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Material createMaterial() {
        MaterialImpl material = new MaterialImpl();
        return material;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Texture createTexture() {
        TextureImpl texture = new TextureImpl();
        return texture;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public PhotoArea createPhotoArea() {
        PhotoAreaImpl photoArea = new PhotoAreaImpl();
        return photoArea;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public GreyPatch createGreyPatch() {
        GreyPatchImpl greyPatch = new GreyPatchImpl();
        return greyPatch;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Ink createInk() {
        InkImpl ink = new InkImpl();
        return ink;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public Method createMethod() {
        MethodImpl method = new MethodImpl();
        return method;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    public ZoneKind createZoneKindFromString(EDataType eDataType, String initialValue) {
        ZoneKind result = ZoneKind.get(initialValue);
        if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
        return result;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    public String convertZoneKindToString(EDataType eDataType, Object instanceValue) {
        return instanceValue == null ? null : instanceValue.toString();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    public PhotoUnit createPhotoUnitFromString(EDataType eDataType, String initialValue) {
        PhotoUnit result = PhotoUnit.get(initialValue);
        if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
        return result;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    public String convertPhotoUnitToString(EDataType eDataType, Object instanceValue) {
        return instanceValue == null ? null : instanceValue.toString();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    public TextureKind createTextureKindFromString(EDataType eDataType, String initialValue) {
        TextureKind result = TextureKind.get(initialValue);
        if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
        return result;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    public String convertTextureKindToString(EDataType eDataType, Object instanceValue) {
        return instanceValue == null ? null : instanceValue.toString();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    public InkKind createInkKindFromString(EDataType eDataType, String initialValue) {
        InkKind result = InkKind.get(initialValue);
        if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
        return result;
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    public String convertInkKindToString(EDataType eDataType, Object instanceValue) {
        return instanceValue == null ? null : instanceValue.toString();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    public LabColour createLabColour(final String it) {
        return it == null ? null : LabColour.parse(it);
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    public LabColour createLabColourFromString(EDataType eDataType, String initialValue) {
        return createLabColour(initialValue);
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    public String convertLabColour(final LabColour it) {
        return it == null ? null : it.toString();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    public String convertLabColourToString(EDataType eDataType, Object instanceValue) {
        return convertLabColour((LabColour)instanceValue);
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    @Override
    public CataloguePackage getCataloguePackage() {
        return (CataloguePackage)getEPackage();
    }

    /**
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @deprecated
     * @generated
     */
    @Deprecated
    public static CataloguePackage getPackage() {
        return CataloguePackage.eINSTANCE;
    }

} //CatalogueFactoryImpl
