/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.catalogue;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

/**
 * <!-- begin-user-doc -->
 * The <b>Package</b> for the model.
 * It contains accessors for the meta objects to represent
 * <ul>
 *   <li>each class,</li>
 *   <li>each feature of each class,</li>
 *   <li>each enum,</li>
 *   <li>and each data type</li>
 * </ul>
 * <!-- end-user-doc -->
 * @see org.pollex.model.catalogue.CatalogueFactory
 * @generated
 */
public interface CataloguePackage extends EPackage {
    /**
     * The package name.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    String eNAME = "catalogue";

    /**
     * The package namespace URI.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    String eNS_URI = "http://pollex.org/model/catalogue";

    /**
     * The package namespace name.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    String eNS_PREFIX = "catalogue";

    /**
     * The singleton instance of the package.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    CataloguePackage eINSTANCE = org.pollex.model.catalogue.impl.CataloguePackageImpl.init();

    /**
     * The meta object id for the '{@link org.pollex.model.catalogue.impl.CatalogueImpl <em>Catalogue</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.catalogue.impl.CatalogueImpl
     * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getCatalogue()
     * @generated
     */
    int CATALOGUE = 0;

    /**
     * The feature id for the '<em><b>Format</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int CATALOGUE__FORMAT = 0;

    /**
     * The feature id for the '<em><b>Name</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int CATALOGUE__NAME = 1;

    /**
     * The feature id for the '<em><b>Families</b></em>' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int CATALOGUE__FAMILIES = 2;

    /**
     * The feature id for the '<em><b>Products</b></em>' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int CATALOGUE__PRODUCTS = 3;

    /**
     * The feature id for the '<em><b>Materials</b></em>' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int CATALOGUE__MATERIALS = 4;

    /**
     * The feature id for the '<em><b>Inks</b></em>' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int CATALOGUE__INKS = 5;

    /**
     * The feature id for the '<em><b>Methods</b></em>' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int CATALOGUE__METHODS = 6;

    /**
     * The feature id for the '<em><b>Settings</b></em>' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int CATALOGUE__SETTINGS = 7;

    /**
     * The number of structural features of the '<em>Catalogue</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int CATALOGUE_FEATURE_COUNT = 8;

    /**
     * The meta object id for the '{@link org.pollex.model.catalogue.impl.EntryImpl <em>Entry</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.catalogue.impl.EntryImpl
     * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getEntry()
     * @generated
     */
    int ENTRY = 1;

    /**
     * The feature id for the '<em><b>Id</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int ENTRY__ID = 0;

    /**
     * The feature id for the '<em><b>Name</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int ENTRY__NAME = 1;

    /**
     * The feature id for the '<em><b>Description</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int ENTRY__DESCRIPTION = 2;

    /**
     * The feature id for the '<em><b>Source</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int ENTRY__SOURCE = 3;

    /**
     * The feature id for the '<em><b>Settings</b></em>' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int ENTRY__SETTINGS = 4;

    /**
     * The number of structural features of the '<em>Entry</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int ENTRY_FEATURE_COUNT = 5;

    /**
     * The meta object id for the '{@link org.pollex.model.catalogue.impl.SettingImpl <em>Setting</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.catalogue.impl.SettingImpl
     * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getSetting()
     * @generated
     */
    int SETTING = 2;

    /**
     * The feature id for the '<em><b>Key</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int SETTING__KEY = 0;

    /**
     * The feature id for the '<em><b>Value</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int SETTING__VALUE = 1;

    /**
     * The feature id for the '<em><b>Unit</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int SETTING__UNIT = 2;

    /**
     * The feature id for the '<em><b>Note</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int SETTING__NOTE = 3;

    /**
     * The number of structural features of the '<em>Setting</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int SETTING_FEATURE_COUNT = 4;

    /**
     * The meta object id for the '{@link org.pollex.model.catalogue.impl.FamilyImpl <em>Family</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.catalogue.impl.FamilyImpl
     * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getFamily()
     * @generated
     */
    int FAMILY = 3;

    /**
     * The feature id for the '<em><b>Id</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int FAMILY__ID = ENTRY__ID;

    /**
     * The feature id for the '<em><b>Name</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int FAMILY__NAME = ENTRY__NAME;

    /**
     * The feature id for the '<em><b>Description</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int FAMILY__DESCRIPTION = ENTRY__DESCRIPTION;

    /**
     * The feature id for the '<em><b>Source</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int FAMILY__SOURCE = ENTRY__SOURCE;

    /**
     * The feature id for the '<em><b>Settings</b></em>' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int FAMILY__SETTINGS = ENTRY__SETTINGS;

    /**
     * The number of structural features of the '<em>Family</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int FAMILY_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 0;

    /**
     * The meta object id for the '{@link org.pollex.model.catalogue.impl.ProductImpl <em>Product</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.catalogue.impl.ProductImpl
     * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getProduct()
     * @generated
     */
    int PRODUCT = 4;

    /**
     * The feature id for the '<em><b>Id</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PRODUCT__ID = ENTRY__ID;

    /**
     * The feature id for the '<em><b>Name</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PRODUCT__NAME = ENTRY__NAME;

    /**
     * The feature id for the '<em><b>Description</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PRODUCT__DESCRIPTION = ENTRY__DESCRIPTION;

    /**
     * The feature id for the '<em><b>Source</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PRODUCT__SOURCE = ENTRY__SOURCE;

    /**
     * The feature id for the '<em><b>Settings</b></em>' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PRODUCT__SETTINGS = ENTRY__SETTINGS;

    /**
     * The feature id for the '<em><b>Family</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PRODUCT__FAMILY = ENTRY_FEATURE_COUNT + 0;

    /**
     * The feature id for the '<em><b>Thickness</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PRODUCT__THICKNESS = ENTRY_FEATURE_COUNT + 1;

    /**
     * The feature id for the '<em><b>Register</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PRODUCT__REGISTER = ENTRY_FEATURE_COUNT + 2;

    /**
     * The feature id for the '<em><b>Dimensions</b></em>' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PRODUCT__DIMENSIONS = ENTRY_FEATURE_COUNT + 3;

    /**
     * The feature id for the '<em><b>Faces</b></em>' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PRODUCT__FACES = ENTRY_FEATURE_COUNT + 4;

    /**
     * The number of structural features of the '<em>Product</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PRODUCT_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 5;

    /**
     * The meta object id for the '{@link org.pollex.model.catalogue.impl.FaceImpl <em>Face</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.catalogue.impl.FaceImpl
     * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getFace()
     * @generated
     */
    int FACE = 5;

    /**
     * The feature id for the '<em><b>Name</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int FACE__NAME = 0;

    /**
     * The feature id for the '<em><b>Mirrored</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int FACE__MIRRORED = 1;

    /**
     * The feature id for the '<em><b>Zones</b></em>' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int FACE__ZONES = 2;

    /**
     * The feature id for the '<em><b>Wear</b></em>' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int FACE__WEAR = 3;

    /**
     * The number of structural features of the '<em>Face</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int FACE_FEATURE_COUNT = 4;

    /**
     * The meta object id for the '{@link org.pollex.model.catalogue.impl.ZoneImpl <em>Zone</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.catalogue.impl.ZoneImpl
     * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getZone()
     * @generated
     */
    int ZONE = 6;

    /**
     * The feature id for the '<em><b>Kind</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int ZONE__KIND = 0;

    /**
     * The feature id for the '<em><b>Inset</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int ZONE__INSET = 1;

    /**
     * The feature id for the '<em><b>Level</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int ZONE__LEVEL = 2;

    /**
     * The feature id for the '<em><b>Strength</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int ZONE__STRENGTH = 3;

    /**
     * The number of structural features of the '<em>Zone</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int ZONE_FEATURE_COUNT = 4;

    /**
     * The meta object id for the '{@link org.pollex.model.catalogue.impl.MaterialImpl <em>Material</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.catalogue.impl.MaterialImpl
     * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getMaterial()
     * @generated
     */
    int MATERIAL = 7;

    /**
     * The feature id for the '<em><b>Id</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int MATERIAL__ID = ENTRY__ID;

    /**
     * The feature id for the '<em><b>Name</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int MATERIAL__NAME = ENTRY__NAME;

    /**
     * The feature id for the '<em><b>Description</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int MATERIAL__DESCRIPTION = ENTRY__DESCRIPTION;

    /**
     * The feature id for the '<em><b>Source</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int MATERIAL__SOURCE = ENTRY__SOURCE;

    /**
     * The feature id for the '<em><b>Settings</b></em>' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int MATERIAL__SETTINGS = ENTRY__SETTINGS;

    /**
     * The feature id for the '<em><b>Lab</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int MATERIAL__LAB = ENTRY_FEATURE_COUNT + 0;

    /**
     * The feature id for the '<em><b>Core Lab</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int MATERIAL__CORE_LAB = ENTRY_FEATURE_COUNT + 1;

    /**
     * The feature id for the '<em><b>Translucency</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int MATERIAL__TRANSLUCENCY = ENTRY_FEATURE_COUNT + 2;

    /**
     * The feature id for the '<em><b>Wear Factor</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int MATERIAL__WEAR_FACTOR = ENTRY_FEATURE_COUNT + 3;

    /**
     * The feature id for the '<em><b>Glow</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int MATERIAL__GLOW = ENTRY_FEATURE_COUNT + 4;

    /**
     * The feature id for the '<em><b>Texture</b></em>' containment reference.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int MATERIAL__TEXTURE = ENTRY_FEATURE_COUNT + 5;

    /**
     * The number of structural features of the '<em>Material</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int MATERIAL_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 6;

    /**
     * The meta object id for the '{@link org.pollex.model.catalogue.impl.TextureImpl <em>Texture</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.catalogue.impl.TextureImpl
     * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getTexture()
     * @generated
     */
    int TEXTURE = 8;

    /**
     * The feature id for the '<em><b>Kind</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int TEXTURE__KIND = 0;

    /**
     * The feature id for the '<em><b>Scale</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int TEXTURE__SCALE = 1;

    /**
     * The feature id for the '<em><b>Seed</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int TEXTURE__SEED = 2;

    /**
     * The feature id for the '<em><b>Amount</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int TEXTURE__AMOUNT = 3;

    /**
     * The feature id for the '<em><b>Picture</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int TEXTURE__PICTURE = 4;

    /**
     * The feature id for the '<em><b>Colours</b></em>' attribute list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int TEXTURE__COLOURS = 5;

    /**
     * The feature id for the '<em><b>Crop</b></em>' containment reference.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int TEXTURE__CROP = 6;

    /**
     * The feature id for the '<em><b>Grey</b></em>' containment reference.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int TEXTURE__GREY = 7;

    /**
     * The number of structural features of the '<em>Texture</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int TEXTURE_FEATURE_COUNT = 8;

    /**
     * The meta object id for the '{@link org.pollex.model.catalogue.impl.PhotoAreaImpl <em>Photo Area</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.catalogue.impl.PhotoAreaImpl
     * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getPhotoArea()
     * @generated
     */
    int PHOTO_AREA = 9;

    /**
     * The feature id for the '<em><b>X</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PHOTO_AREA__X = 0;

    /**
     * The feature id for the '<em><b>Y</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PHOTO_AREA__Y = 1;

    /**
     * The feature id for the '<em><b>Width</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PHOTO_AREA__WIDTH = 2;

    /**
     * The feature id for the '<em><b>Height</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PHOTO_AREA__HEIGHT = 3;

    /**
     * The feature id for the '<em><b>Unit</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PHOTO_AREA__UNIT = 4;

    /**
     * The number of structural features of the '<em>Photo Area</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PHOTO_AREA_FEATURE_COUNT = 5;

    /**
     * The meta object id for the '{@link org.pollex.model.catalogue.impl.GreyPatchImpl <em>Grey Patch</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.catalogue.impl.GreyPatchImpl
     * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getGreyPatch()
     * @generated
     */
    int GREY_PATCH = 10;

    /**
     * The feature id for the '<em><b>X</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int GREY_PATCH__X = PHOTO_AREA__X;

    /**
     * The feature id for the '<em><b>Y</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int GREY_PATCH__Y = PHOTO_AREA__Y;

    /**
     * The feature id for the '<em><b>Width</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int GREY_PATCH__WIDTH = PHOTO_AREA__WIDTH;

    /**
     * The feature id for the '<em><b>Height</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int GREY_PATCH__HEIGHT = PHOTO_AREA__HEIGHT;

    /**
     * The feature id for the '<em><b>Unit</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int GREY_PATCH__UNIT = PHOTO_AREA__UNIT;

    /**
     * The feature id for the '<em><b>Lightness</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int GREY_PATCH__LIGHTNESS = PHOTO_AREA_FEATURE_COUNT + 0;

    /**
     * The number of structural features of the '<em>Grey Patch</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int GREY_PATCH_FEATURE_COUNT = PHOTO_AREA_FEATURE_COUNT + 1;

    /**
     * The meta object id for the '{@link org.pollex.model.catalogue.impl.InkImpl <em>Ink</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.catalogue.impl.InkImpl
     * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getInk()
     * @generated
     */
    int INK = 11;

    /**
     * The feature id for the '<em><b>Id</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int INK__ID = ENTRY__ID;

    /**
     * The feature id for the '<em><b>Name</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int INK__NAME = ENTRY__NAME;

    /**
     * The feature id for the '<em><b>Description</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int INK__DESCRIPTION = ENTRY__DESCRIPTION;

    /**
     * The feature id for the '<em><b>Source</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int INK__SOURCE = ENTRY__SOURCE;

    /**
     * The feature id for the '<em><b>Settings</b></em>' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int INK__SETTINGS = ENTRY__SETTINGS;

    /**
     * The feature id for the '<em><b>Kind</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int INK__KIND = ENTRY_FEATURE_COUNT + 0;

    /**
     * The feature id for the '<em><b>Lab</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int INK__LAB = ENTRY_FEATURE_COUNT + 1;

    /**
     * The feature id for the '<em><b>Lab Over Black</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int INK__LAB_OVER_BLACK = ENTRY_FEATURE_COUNT + 2;

    /**
     * The feature id for the '<em><b>Film</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int INK__FILM = ENTRY_FEATURE_COUNT + 3;

    /**
     * The number of structural features of the '<em>Ink</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int INK_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 4;

    /**
     * The meta object id for the '{@link org.pollex.model.catalogue.impl.MethodImpl <em>Method</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.catalogue.impl.MethodImpl
     * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getMethod()
     * @generated
     */
    int METHOD = 12;

    /**
     * The feature id for the '<em><b>Id</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int METHOD__ID = ENTRY__ID;

    /**
     * The feature id for the '<em><b>Name</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int METHOD__NAME = ENTRY__NAME;

    /**
     * The feature id for the '<em><b>Description</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int METHOD__DESCRIPTION = ENTRY__DESCRIPTION;

    /**
     * The feature id for the '<em><b>Source</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int METHOD__SOURCE = ENTRY__SOURCE;

    /**
     * The feature id for the '<em><b>Settings</b></em>' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int METHOD__SETTINGS = ENTRY__SETTINGS;

    /**
     * The feature id for the '<em><b>Line Min</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int METHOD__LINE_MIN = ENTRY_FEATURE_COUNT + 0;

    /**
     * The feature id for the '<em><b>Gap Min</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int METHOD__GAP_MIN = ENTRY_FEATURE_COUNT + 1;

    /**
     * The feature id for the '<em><b>Line Min Reversed</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int METHOD__LINE_MIN_REVERSED = ENTRY_FEATURE_COUNT + 2;

    /**
     * The feature id for the '<em><b>Gap Min Reversed</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int METHOD__GAP_MIN_REVERSED = ENTRY_FEATURE_COUNT + 3;

    /**
     * The feature id for the '<em><b>Type Min</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int METHOD__TYPE_MIN = ENTRY_FEATURE_COUNT + 4;

    /**
     * The feature id for the '<em><b>Speck Min</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int METHOD__SPECK_MIN = ENTRY_FEATURE_COUNT + 5;

    /**
     * The feature id for the '<em><b>Pinhole Min</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int METHOD__PINHOLE_MIN = ENTRY_FEATURE_COUNT + 6;

    /**
     * The feature id for the '<em><b>Edge</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int METHOD__EDGE = ENTRY_FEATURE_COUNT + 7;

    /**
     * The feature id for the '<em><b>Register</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int METHOD__REGISTER = ENTRY_FEATURE_COUNT + 8;

    /**
     * The feature id for the '<em><b>Choke</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int METHOD__CHOKE = ENTRY_FEATURE_COUNT + 9;

    /**
     * The feature id for the '<em><b>Inks Max</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int METHOD__INKS_MAX = ENTRY_FEATURE_COUNT + 10;

    /**
     * The feature id for the '<em><b>Resolution</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int METHOD__RESOLUTION = ENTRY_FEATURE_COUNT + 11;

    /**
     * The feature id for the '<em><b>Full Colour</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int METHOD__FULL_COLOUR = ENTRY_FEATURE_COUNT + 12;

    /**
     * The feature id for the '<em><b>White Under</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int METHOD__WHITE_UNDER = ENTRY_FEATURE_COUNT + 13;

    /**
     * The number of structural features of the '<em>Method</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int METHOD_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 14;

    /**
     * The meta object id for the '{@link org.pollex.model.catalogue.ZoneKind <em>Zone Kind</em>}' enum.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.catalogue.ZoneKind
     * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getZoneKind()
     * @generated
     */
    int ZONE_KIND = 13;

    /**
     * The meta object id for the '{@link org.pollex.model.catalogue.PhotoUnit <em>Photo Unit</em>}' enum.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.catalogue.PhotoUnit
     * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getPhotoUnit()
     * @generated
     */
    int PHOTO_UNIT = 14;

    /**
     * The meta object id for the '{@link org.pollex.model.catalogue.TextureKind <em>Texture Kind</em>}' enum.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.catalogue.TextureKind
     * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getTextureKind()
     * @generated
     */
    int TEXTURE_KIND = 15;

    /**
     * The meta object id for the '{@link org.pollex.model.catalogue.InkKind <em>Ink Kind</em>}' enum.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.catalogue.InkKind
     * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getInkKind()
     * @generated
     */
    int INK_KIND = 16;

    /**
     * The meta object id for the '<em>Lab Colour</em>' data type.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.LabColour
     * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getLabColour()
     * @generated
     */
    int LAB_COLOUR = 17;


    /**
     * Returns the meta object for class '{@link org.pollex.model.catalogue.Catalogue <em>Catalogue</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Catalogue</em>'.
     * @see org.pollex.model.catalogue.Catalogue
     * @generated
     */
    EClass getCatalogue();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Catalogue#getFormat <em>Format</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Format</em>'.
     * @see org.pollex.model.catalogue.Catalogue#getFormat()
     * @see #getCatalogue()
     * @generated
     */
    EAttribute getCatalogue_Format();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Catalogue#getName <em>Name</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Name</em>'.
     * @see org.pollex.model.catalogue.Catalogue#getName()
     * @see #getCatalogue()
     * @generated
     */
    EAttribute getCatalogue_Name();

    /**
     * Returns the meta object for the containment reference list '{@link org.pollex.model.catalogue.Catalogue#getFamilies <em>Families</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the containment reference list '<em>Families</em>'.
     * @see org.pollex.model.catalogue.Catalogue#getFamilies()
     * @see #getCatalogue()
     * @generated
     */
    EReference getCatalogue_Families();

    /**
     * Returns the meta object for the containment reference list '{@link org.pollex.model.catalogue.Catalogue#getProducts <em>Products</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the containment reference list '<em>Products</em>'.
     * @see org.pollex.model.catalogue.Catalogue#getProducts()
     * @see #getCatalogue()
     * @generated
     */
    EReference getCatalogue_Products();

    /**
     * Returns the meta object for the containment reference list '{@link org.pollex.model.catalogue.Catalogue#getMaterials <em>Materials</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the containment reference list '<em>Materials</em>'.
     * @see org.pollex.model.catalogue.Catalogue#getMaterials()
     * @see #getCatalogue()
     * @generated
     */
    EReference getCatalogue_Materials();

    /**
     * Returns the meta object for the containment reference list '{@link org.pollex.model.catalogue.Catalogue#getInks <em>Inks</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the containment reference list '<em>Inks</em>'.
     * @see org.pollex.model.catalogue.Catalogue#getInks()
     * @see #getCatalogue()
     * @generated
     */
    EReference getCatalogue_Inks();

    /**
     * Returns the meta object for the containment reference list '{@link org.pollex.model.catalogue.Catalogue#getMethods <em>Methods</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the containment reference list '<em>Methods</em>'.
     * @see org.pollex.model.catalogue.Catalogue#getMethods()
     * @see #getCatalogue()
     * @generated
     */
    EReference getCatalogue_Methods();

    /**
     * Returns the meta object for the containment reference list '{@link org.pollex.model.catalogue.Catalogue#getSettings <em>Settings</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the containment reference list '<em>Settings</em>'.
     * @see org.pollex.model.catalogue.Catalogue#getSettings()
     * @see #getCatalogue()
     * @generated
     */
    EReference getCatalogue_Settings();

    /**
     * Returns the meta object for class '{@link org.pollex.model.catalogue.Entry <em>Entry</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Entry</em>'.
     * @see org.pollex.model.catalogue.Entry
     * @generated
     */
    EClass getEntry();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Entry#getId <em>Id</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Id</em>'.
     * @see org.pollex.model.catalogue.Entry#getId()
     * @see #getEntry()
     * @generated
     */
    EAttribute getEntry_Id();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Entry#getName <em>Name</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Name</em>'.
     * @see org.pollex.model.catalogue.Entry#getName()
     * @see #getEntry()
     * @generated
     */
    EAttribute getEntry_Name();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Entry#getDescription <em>Description</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Description</em>'.
     * @see org.pollex.model.catalogue.Entry#getDescription()
     * @see #getEntry()
     * @generated
     */
    EAttribute getEntry_Description();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Entry#getSource <em>Source</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Source</em>'.
     * @see org.pollex.model.catalogue.Entry#getSource()
     * @see #getEntry()
     * @generated
     */
    EAttribute getEntry_Source();

    /**
     * Returns the meta object for the containment reference list '{@link org.pollex.model.catalogue.Entry#getSettings <em>Settings</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the containment reference list '<em>Settings</em>'.
     * @see org.pollex.model.catalogue.Entry#getSettings()
     * @see #getEntry()
     * @generated
     */
    EReference getEntry_Settings();

    /**
     * Returns the meta object for class '{@link org.pollex.model.catalogue.Setting <em>Setting</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Setting</em>'.
     * @see org.pollex.model.catalogue.Setting
     * @generated
     */
    EClass getSetting();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Setting#getKey <em>Key</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Key</em>'.
     * @see org.pollex.model.catalogue.Setting#getKey()
     * @see #getSetting()
     * @generated
     */
    EAttribute getSetting_Key();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Setting#getValue <em>Value</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Value</em>'.
     * @see org.pollex.model.catalogue.Setting#getValue()
     * @see #getSetting()
     * @generated
     */
    EAttribute getSetting_Value();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Setting#getUnit <em>Unit</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Unit</em>'.
     * @see org.pollex.model.catalogue.Setting#getUnit()
     * @see #getSetting()
     * @generated
     */
    EAttribute getSetting_Unit();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Setting#getNote <em>Note</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Note</em>'.
     * @see org.pollex.model.catalogue.Setting#getNote()
     * @see #getSetting()
     * @generated
     */
    EAttribute getSetting_Note();

    /**
     * Returns the meta object for class '{@link org.pollex.model.catalogue.Family <em>Family</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Family</em>'.
     * @see org.pollex.model.catalogue.Family
     * @generated
     */
    EClass getFamily();

    /**
     * Returns the meta object for class '{@link org.pollex.model.catalogue.Product <em>Product</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Product</em>'.
     * @see org.pollex.model.catalogue.Product
     * @generated
     */
    EClass getProduct();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Product#getFamily <em>Family</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Family</em>'.
     * @see org.pollex.model.catalogue.Product#getFamily()
     * @see #getProduct()
     * @generated
     */
    EAttribute getProduct_Family();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Product#getThickness <em>Thickness</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Thickness</em>'.
     * @see org.pollex.model.catalogue.Product#getThickness()
     * @see #getProduct()
     * @generated
     */
    EAttribute getProduct_Thickness();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Product#getRegister <em>Register</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Register</em>'.
     * @see org.pollex.model.catalogue.Product#getRegister()
     * @see #getProduct()
     * @generated
     */
    EAttribute getProduct_Register();

    /**
     * Returns the meta object for the containment reference list '{@link org.pollex.model.catalogue.Product#getDimensions <em>Dimensions</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the containment reference list '<em>Dimensions</em>'.
     * @see org.pollex.model.catalogue.Product#getDimensions()
     * @see #getProduct()
     * @generated
     */
    EReference getProduct_Dimensions();

    /**
     * Returns the meta object for the containment reference list '{@link org.pollex.model.catalogue.Product#getFaces <em>Faces</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the containment reference list '<em>Faces</em>'.
     * @see org.pollex.model.catalogue.Product#getFaces()
     * @see #getProduct()
     * @generated
     */
    EReference getProduct_Faces();

    /**
     * Returns the meta object for class '{@link org.pollex.model.catalogue.Face <em>Face</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Face</em>'.
     * @see org.pollex.model.catalogue.Face
     * @generated
     */
    EClass getFace();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Face#getName <em>Name</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Name</em>'.
     * @see org.pollex.model.catalogue.Face#getName()
     * @see #getFace()
     * @generated
     */
    EAttribute getFace_Name();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Face#isMirrored <em>Mirrored</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Mirrored</em>'.
     * @see org.pollex.model.catalogue.Face#isMirrored()
     * @see #getFace()
     * @generated
     */
    EAttribute getFace_Mirrored();

    /**
     * Returns the meta object for the containment reference list '{@link org.pollex.model.catalogue.Face#getZones <em>Zones</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the containment reference list '<em>Zones</em>'.
     * @see org.pollex.model.catalogue.Face#getZones()
     * @see #getFace()
     * @generated
     */
    EReference getFace_Zones();

    /**
     * Returns the meta object for the containment reference list '{@link org.pollex.model.catalogue.Face#getWear <em>Wear</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the containment reference list '<em>Wear</em>'.
     * @see org.pollex.model.catalogue.Face#getWear()
     * @see #getFace()
     * @generated
     */
    EReference getFace_Wear();

    /**
     * Returns the meta object for class '{@link org.pollex.model.catalogue.Zone <em>Zone</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Zone</em>'.
     * @see org.pollex.model.catalogue.Zone
     * @generated
     */
    EClass getZone();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Zone#getKind <em>Kind</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Kind</em>'.
     * @see org.pollex.model.catalogue.Zone#getKind()
     * @see #getZone()
     * @generated
     */
    EAttribute getZone_Kind();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Zone#getInset <em>Inset</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Inset</em>'.
     * @see org.pollex.model.catalogue.Zone#getInset()
     * @see #getZone()
     * @generated
     */
    EAttribute getZone_Inset();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Zone#getLevel <em>Level</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Level</em>'.
     * @see org.pollex.model.catalogue.Zone#getLevel()
     * @see #getZone()
     * @generated
     */
    EAttribute getZone_Level();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Zone#getStrength <em>Strength</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Strength</em>'.
     * @see org.pollex.model.catalogue.Zone#getStrength()
     * @see #getZone()
     * @generated
     */
    EAttribute getZone_Strength();

    /**
     * Returns the meta object for class '{@link org.pollex.model.catalogue.Material <em>Material</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Material</em>'.
     * @see org.pollex.model.catalogue.Material
     * @generated
     */
    EClass getMaterial();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Material#getLab <em>Lab</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Lab</em>'.
     * @see org.pollex.model.catalogue.Material#getLab()
     * @see #getMaterial()
     * @generated
     */
    EAttribute getMaterial_Lab();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Material#getCoreLab <em>Core Lab</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Core Lab</em>'.
     * @see org.pollex.model.catalogue.Material#getCoreLab()
     * @see #getMaterial()
     * @generated
     */
    EAttribute getMaterial_CoreLab();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Material#getTranslucency <em>Translucency</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Translucency</em>'.
     * @see org.pollex.model.catalogue.Material#getTranslucency()
     * @see #getMaterial()
     * @generated
     */
    EAttribute getMaterial_Translucency();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Material#getWearFactor <em>Wear Factor</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Wear Factor</em>'.
     * @see org.pollex.model.catalogue.Material#getWearFactor()
     * @see #getMaterial()
     * @generated
     */
    EAttribute getMaterial_WearFactor();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Material#isGlow <em>Glow</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Glow</em>'.
     * @see org.pollex.model.catalogue.Material#isGlow()
     * @see #getMaterial()
     * @generated
     */
    EAttribute getMaterial_Glow();

    /**
     * Returns the meta object for the containment reference '{@link org.pollex.model.catalogue.Material#getTexture <em>Texture</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the containment reference '<em>Texture</em>'.
     * @see org.pollex.model.catalogue.Material#getTexture()
     * @see #getMaterial()
     * @generated
     */
    EReference getMaterial_Texture();

    /**
     * Returns the meta object for class '{@link org.pollex.model.catalogue.Texture <em>Texture</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Texture</em>'.
     * @see org.pollex.model.catalogue.Texture
     * @generated
     */
    EClass getTexture();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Texture#getKind <em>Kind</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Kind</em>'.
     * @see org.pollex.model.catalogue.Texture#getKind()
     * @see #getTexture()
     * @generated
     */
    EAttribute getTexture_Kind();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Texture#getScale <em>Scale</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Scale</em>'.
     * @see org.pollex.model.catalogue.Texture#getScale()
     * @see #getTexture()
     * @generated
     */
    EAttribute getTexture_Scale();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Texture#getSeed <em>Seed</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Seed</em>'.
     * @see org.pollex.model.catalogue.Texture#getSeed()
     * @see #getTexture()
     * @generated
     */
    EAttribute getTexture_Seed();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Texture#getAmount <em>Amount</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Amount</em>'.
     * @see org.pollex.model.catalogue.Texture#getAmount()
     * @see #getTexture()
     * @generated
     */
    EAttribute getTexture_Amount();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Texture#getPicture <em>Picture</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Picture</em>'.
     * @see org.pollex.model.catalogue.Texture#getPicture()
     * @see #getTexture()
     * @generated
     */
    EAttribute getTexture_Picture();

    /**
     * Returns the meta object for the attribute list '{@link org.pollex.model.catalogue.Texture#getColours <em>Colours</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute list '<em>Colours</em>'.
     * @see org.pollex.model.catalogue.Texture#getColours()
     * @see #getTexture()
     * @generated
     */
    EAttribute getTexture_Colours();

    /**
     * Returns the meta object for the containment reference '{@link org.pollex.model.catalogue.Texture#getCrop <em>Crop</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the containment reference '<em>Crop</em>'.
     * @see org.pollex.model.catalogue.Texture#getCrop()
     * @see #getTexture()
     * @generated
     */
    EReference getTexture_Crop();

    /**
     * Returns the meta object for the containment reference '{@link org.pollex.model.catalogue.Texture#getGrey <em>Grey</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the containment reference '<em>Grey</em>'.
     * @see org.pollex.model.catalogue.Texture#getGrey()
     * @see #getTexture()
     * @generated
     */
    EReference getTexture_Grey();

    /**
     * Returns the meta object for class '{@link org.pollex.model.catalogue.PhotoArea <em>Photo Area</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Photo Area</em>'.
     * @see org.pollex.model.catalogue.PhotoArea
     * @generated
     */
    EClass getPhotoArea();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.PhotoArea#getX <em>X</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>X</em>'.
     * @see org.pollex.model.catalogue.PhotoArea#getX()
     * @see #getPhotoArea()
     * @generated
     */
    EAttribute getPhotoArea_X();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.PhotoArea#getY <em>Y</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Y</em>'.
     * @see org.pollex.model.catalogue.PhotoArea#getY()
     * @see #getPhotoArea()
     * @generated
     */
    EAttribute getPhotoArea_Y();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.PhotoArea#getWidth <em>Width</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Width</em>'.
     * @see org.pollex.model.catalogue.PhotoArea#getWidth()
     * @see #getPhotoArea()
     * @generated
     */
    EAttribute getPhotoArea_Width();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.PhotoArea#getHeight <em>Height</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Height</em>'.
     * @see org.pollex.model.catalogue.PhotoArea#getHeight()
     * @see #getPhotoArea()
     * @generated
     */
    EAttribute getPhotoArea_Height();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.PhotoArea#getUnit <em>Unit</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Unit</em>'.
     * @see org.pollex.model.catalogue.PhotoArea#getUnit()
     * @see #getPhotoArea()
     * @generated
     */
    EAttribute getPhotoArea_Unit();

    /**
     * Returns the meta object for class '{@link org.pollex.model.catalogue.GreyPatch <em>Grey Patch</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Grey Patch</em>'.
     * @see org.pollex.model.catalogue.GreyPatch
     * @generated
     */
    EClass getGreyPatch();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.GreyPatch#getLightness <em>Lightness</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Lightness</em>'.
     * @see org.pollex.model.catalogue.GreyPatch#getLightness()
     * @see #getGreyPatch()
     * @generated
     */
    EAttribute getGreyPatch_Lightness();

    /**
     * Returns the meta object for class '{@link org.pollex.model.catalogue.Ink <em>Ink</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Ink</em>'.
     * @see org.pollex.model.catalogue.Ink
     * @generated
     */
    EClass getInk();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Ink#getKind <em>Kind</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Kind</em>'.
     * @see org.pollex.model.catalogue.Ink#getKind()
     * @see #getInk()
     * @generated
     */
    EAttribute getInk_Kind();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Ink#getLab <em>Lab</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Lab</em>'.
     * @see org.pollex.model.catalogue.Ink#getLab()
     * @see #getInk()
     * @generated
     */
    EAttribute getInk_Lab();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Ink#getLabOverBlack <em>Lab Over Black</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Lab Over Black</em>'.
     * @see org.pollex.model.catalogue.Ink#getLabOverBlack()
     * @see #getInk()
     * @generated
     */
    EAttribute getInk_LabOverBlack();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Ink#getFilm <em>Film</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Film</em>'.
     * @see org.pollex.model.catalogue.Ink#getFilm()
     * @see #getInk()
     * @generated
     */
    EAttribute getInk_Film();

    /**
     * Returns the meta object for class '{@link org.pollex.model.catalogue.Method <em>Method</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Method</em>'.
     * @see org.pollex.model.catalogue.Method
     * @generated
     */
    EClass getMethod();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Method#getLineMin <em>Line Min</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Line Min</em>'.
     * @see org.pollex.model.catalogue.Method#getLineMin()
     * @see #getMethod()
     * @generated
     */
    EAttribute getMethod_LineMin();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Method#getGapMin <em>Gap Min</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Gap Min</em>'.
     * @see org.pollex.model.catalogue.Method#getGapMin()
     * @see #getMethod()
     * @generated
     */
    EAttribute getMethod_GapMin();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Method#getLineMinReversed <em>Line Min Reversed</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Line Min Reversed</em>'.
     * @see org.pollex.model.catalogue.Method#getLineMinReversed()
     * @see #getMethod()
     * @generated
     */
    EAttribute getMethod_LineMinReversed();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Method#getGapMinReversed <em>Gap Min Reversed</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Gap Min Reversed</em>'.
     * @see org.pollex.model.catalogue.Method#getGapMinReversed()
     * @see #getMethod()
     * @generated
     */
    EAttribute getMethod_GapMinReversed();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Method#getTypeMin <em>Type Min</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Type Min</em>'.
     * @see org.pollex.model.catalogue.Method#getTypeMin()
     * @see #getMethod()
     * @generated
     */
    EAttribute getMethod_TypeMin();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Method#getSpeckMin <em>Speck Min</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Speck Min</em>'.
     * @see org.pollex.model.catalogue.Method#getSpeckMin()
     * @see #getMethod()
     * @generated
     */
    EAttribute getMethod_SpeckMin();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Method#getPinholeMin <em>Pinhole Min</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Pinhole Min</em>'.
     * @see org.pollex.model.catalogue.Method#getPinholeMin()
     * @see #getMethod()
     * @generated
     */
    EAttribute getMethod_PinholeMin();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Method#getEdge <em>Edge</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Edge</em>'.
     * @see org.pollex.model.catalogue.Method#getEdge()
     * @see #getMethod()
     * @generated
     */
    EAttribute getMethod_Edge();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Method#getRegister <em>Register</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Register</em>'.
     * @see org.pollex.model.catalogue.Method#getRegister()
     * @see #getMethod()
     * @generated
     */
    EAttribute getMethod_Register();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Method#getChoke <em>Choke</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Choke</em>'.
     * @see org.pollex.model.catalogue.Method#getChoke()
     * @see #getMethod()
     * @generated
     */
    EAttribute getMethod_Choke();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Method#getInksMax <em>Inks Max</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Inks Max</em>'.
     * @see org.pollex.model.catalogue.Method#getInksMax()
     * @see #getMethod()
     * @generated
     */
    EAttribute getMethod_InksMax();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Method#getResolution <em>Resolution</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Resolution</em>'.
     * @see org.pollex.model.catalogue.Method#getResolution()
     * @see #getMethod()
     * @generated
     */
    EAttribute getMethod_Resolution();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Method#isFullColour <em>Full Colour</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Full Colour</em>'.
     * @see org.pollex.model.catalogue.Method#isFullColour()
     * @see #getMethod()
     * @generated
     */
    EAttribute getMethod_FullColour();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.catalogue.Method#isWhiteUnder <em>White Under</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>White Under</em>'.
     * @see org.pollex.model.catalogue.Method#isWhiteUnder()
     * @see #getMethod()
     * @generated
     */
    EAttribute getMethod_WhiteUnder();

    /**
     * Returns the meta object for enum '{@link org.pollex.model.catalogue.ZoneKind <em>Zone Kind</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for enum '<em>Zone Kind</em>'.
     * @see org.pollex.model.catalogue.ZoneKind
     * @generated
     */
    EEnum getZoneKind();

    /**
     * Returns the meta object for enum '{@link org.pollex.model.catalogue.PhotoUnit <em>Photo Unit</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for enum '<em>Photo Unit</em>'.
     * @see org.pollex.model.catalogue.PhotoUnit
     * @generated
     */
    EEnum getPhotoUnit();

    /**
     * Returns the meta object for enum '{@link org.pollex.model.catalogue.TextureKind <em>Texture Kind</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for enum '<em>Texture Kind</em>'.
     * @see org.pollex.model.catalogue.TextureKind
     * @generated
     */
    EEnum getTextureKind();

    /**
     * Returns the meta object for enum '{@link org.pollex.model.catalogue.InkKind <em>Ink Kind</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for enum '<em>Ink Kind</em>'.
     * @see org.pollex.model.catalogue.InkKind
     * @generated
     */
    EEnum getInkKind();

    /**
     * Returns the meta object for data type '{@link org.pollex.model.LabColour <em>Lab Colour</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for data type '<em>Lab Colour</em>'.
     * @see org.pollex.model.LabColour
     * @generated
     */
    EDataType getLabColour();

    /**
     * Returns the factory that creates the instances of the model.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the factory that creates the instances of the model.
     * @generated
     */
    CatalogueFactory getCatalogueFactory();

    /**
     * <!-- begin-user-doc -->
     * Defines literals for the meta objects that represent
     * <ul>
     *   <li>each class,</li>
     *   <li>each feature of each class,</li>
     *   <li>each enum,</li>
     *   <li>and each data type</li>
     * </ul>
     * <!-- end-user-doc -->
     * @generated
     */
    interface Literals {
        /**
         * The meta object literal for the '{@link org.pollex.model.catalogue.impl.CatalogueImpl <em>Catalogue</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.catalogue.impl.CatalogueImpl
         * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getCatalogue()
         * @generated
         */
        EClass CATALOGUE = eINSTANCE.getCatalogue();

        /**
         * The meta object literal for the '<em><b>Format</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute CATALOGUE__FORMAT = eINSTANCE.getCatalogue_Format();

        /**
         * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute CATALOGUE__NAME = eINSTANCE.getCatalogue_Name();

        /**
         * The meta object literal for the '<em><b>Families</b></em>' containment reference list feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EReference CATALOGUE__FAMILIES = eINSTANCE.getCatalogue_Families();

        /**
         * The meta object literal for the '<em><b>Products</b></em>' containment reference list feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EReference CATALOGUE__PRODUCTS = eINSTANCE.getCatalogue_Products();

        /**
         * The meta object literal for the '<em><b>Materials</b></em>' containment reference list feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EReference CATALOGUE__MATERIALS = eINSTANCE.getCatalogue_Materials();

        /**
         * The meta object literal for the '<em><b>Inks</b></em>' containment reference list feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EReference CATALOGUE__INKS = eINSTANCE.getCatalogue_Inks();

        /**
         * The meta object literal for the '<em><b>Methods</b></em>' containment reference list feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EReference CATALOGUE__METHODS = eINSTANCE.getCatalogue_Methods();

        /**
         * The meta object literal for the '<em><b>Settings</b></em>' containment reference list feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EReference CATALOGUE__SETTINGS = eINSTANCE.getCatalogue_Settings();

        /**
         * The meta object literal for the '{@link org.pollex.model.catalogue.impl.EntryImpl <em>Entry</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.catalogue.impl.EntryImpl
         * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getEntry()
         * @generated
         */
        EClass ENTRY = eINSTANCE.getEntry();

        /**
         * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute ENTRY__ID = eINSTANCE.getEntry_Id();

        /**
         * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute ENTRY__NAME = eINSTANCE.getEntry_Name();

        /**
         * The meta object literal for the '<em><b>Description</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute ENTRY__DESCRIPTION = eINSTANCE.getEntry_Description();

        /**
         * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute ENTRY__SOURCE = eINSTANCE.getEntry_Source();

        /**
         * The meta object literal for the '<em><b>Settings</b></em>' containment reference list feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EReference ENTRY__SETTINGS = eINSTANCE.getEntry_Settings();

        /**
         * The meta object literal for the '{@link org.pollex.model.catalogue.impl.SettingImpl <em>Setting</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.catalogue.impl.SettingImpl
         * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getSetting()
         * @generated
         */
        EClass SETTING = eINSTANCE.getSetting();

        /**
         * The meta object literal for the '<em><b>Key</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute SETTING__KEY = eINSTANCE.getSetting_Key();

        /**
         * The meta object literal for the '<em><b>Value</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute SETTING__VALUE = eINSTANCE.getSetting_Value();

        /**
         * The meta object literal for the '<em><b>Unit</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute SETTING__UNIT = eINSTANCE.getSetting_Unit();

        /**
         * The meta object literal for the '<em><b>Note</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute SETTING__NOTE = eINSTANCE.getSetting_Note();

        /**
         * The meta object literal for the '{@link org.pollex.model.catalogue.impl.FamilyImpl <em>Family</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.catalogue.impl.FamilyImpl
         * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getFamily()
         * @generated
         */
        EClass FAMILY = eINSTANCE.getFamily();

        /**
         * The meta object literal for the '{@link org.pollex.model.catalogue.impl.ProductImpl <em>Product</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.catalogue.impl.ProductImpl
         * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getProduct()
         * @generated
         */
        EClass PRODUCT = eINSTANCE.getProduct();

        /**
         * The meta object literal for the '<em><b>Family</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute PRODUCT__FAMILY = eINSTANCE.getProduct_Family();

        /**
         * The meta object literal for the '<em><b>Thickness</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute PRODUCT__THICKNESS = eINSTANCE.getProduct_Thickness();

        /**
         * The meta object literal for the '<em><b>Register</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute PRODUCT__REGISTER = eINSTANCE.getProduct_Register();

        /**
         * The meta object literal for the '<em><b>Dimensions</b></em>' containment reference list feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EReference PRODUCT__DIMENSIONS = eINSTANCE.getProduct_Dimensions();

        /**
         * The meta object literal for the '<em><b>Faces</b></em>' containment reference list feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EReference PRODUCT__FACES = eINSTANCE.getProduct_Faces();

        /**
         * The meta object literal for the '{@link org.pollex.model.catalogue.impl.FaceImpl <em>Face</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.catalogue.impl.FaceImpl
         * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getFace()
         * @generated
         */
        EClass FACE = eINSTANCE.getFace();

        /**
         * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute FACE__NAME = eINSTANCE.getFace_Name();

        /**
         * The meta object literal for the '<em><b>Mirrored</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute FACE__MIRRORED = eINSTANCE.getFace_Mirrored();

        /**
         * The meta object literal for the '<em><b>Zones</b></em>' containment reference list feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EReference FACE__ZONES = eINSTANCE.getFace_Zones();

        /**
         * The meta object literal for the '<em><b>Wear</b></em>' containment reference list feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EReference FACE__WEAR = eINSTANCE.getFace_Wear();

        /**
         * The meta object literal for the '{@link org.pollex.model.catalogue.impl.ZoneImpl <em>Zone</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.catalogue.impl.ZoneImpl
         * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getZone()
         * @generated
         */
        EClass ZONE = eINSTANCE.getZone();

        /**
         * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute ZONE__KIND = eINSTANCE.getZone_Kind();

        /**
         * The meta object literal for the '<em><b>Inset</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute ZONE__INSET = eINSTANCE.getZone_Inset();

        /**
         * The meta object literal for the '<em><b>Level</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute ZONE__LEVEL = eINSTANCE.getZone_Level();

        /**
         * The meta object literal for the '<em><b>Strength</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute ZONE__STRENGTH = eINSTANCE.getZone_Strength();

        /**
         * The meta object literal for the '{@link org.pollex.model.catalogue.impl.MaterialImpl <em>Material</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.catalogue.impl.MaterialImpl
         * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getMaterial()
         * @generated
         */
        EClass MATERIAL = eINSTANCE.getMaterial();

        /**
         * The meta object literal for the '<em><b>Lab</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute MATERIAL__LAB = eINSTANCE.getMaterial_Lab();

        /**
         * The meta object literal for the '<em><b>Core Lab</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute MATERIAL__CORE_LAB = eINSTANCE.getMaterial_CoreLab();

        /**
         * The meta object literal for the '<em><b>Translucency</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute MATERIAL__TRANSLUCENCY = eINSTANCE.getMaterial_Translucency();

        /**
         * The meta object literal for the '<em><b>Wear Factor</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute MATERIAL__WEAR_FACTOR = eINSTANCE.getMaterial_WearFactor();

        /**
         * The meta object literal for the '<em><b>Glow</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute MATERIAL__GLOW = eINSTANCE.getMaterial_Glow();

        /**
         * The meta object literal for the '<em><b>Texture</b></em>' containment reference feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EReference MATERIAL__TEXTURE = eINSTANCE.getMaterial_Texture();

        /**
         * The meta object literal for the '{@link org.pollex.model.catalogue.impl.TextureImpl <em>Texture</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.catalogue.impl.TextureImpl
         * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getTexture()
         * @generated
         */
        EClass TEXTURE = eINSTANCE.getTexture();

        /**
         * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute TEXTURE__KIND = eINSTANCE.getTexture_Kind();

        /**
         * The meta object literal for the '<em><b>Scale</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute TEXTURE__SCALE = eINSTANCE.getTexture_Scale();

        /**
         * The meta object literal for the '<em><b>Seed</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute TEXTURE__SEED = eINSTANCE.getTexture_Seed();

        /**
         * The meta object literal for the '<em><b>Amount</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute TEXTURE__AMOUNT = eINSTANCE.getTexture_Amount();

        /**
         * The meta object literal for the '<em><b>Picture</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute TEXTURE__PICTURE = eINSTANCE.getTexture_Picture();

        /**
         * The meta object literal for the '<em><b>Colours</b></em>' attribute list feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute TEXTURE__COLOURS = eINSTANCE.getTexture_Colours();

        /**
         * The meta object literal for the '<em><b>Crop</b></em>' containment reference feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EReference TEXTURE__CROP = eINSTANCE.getTexture_Crop();

        /**
         * The meta object literal for the '<em><b>Grey</b></em>' containment reference feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EReference TEXTURE__GREY = eINSTANCE.getTexture_Grey();

        /**
         * The meta object literal for the '{@link org.pollex.model.catalogue.impl.PhotoAreaImpl <em>Photo Area</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.catalogue.impl.PhotoAreaImpl
         * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getPhotoArea()
         * @generated
         */
        EClass PHOTO_AREA = eINSTANCE.getPhotoArea();

        /**
         * The meta object literal for the '<em><b>X</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute PHOTO_AREA__X = eINSTANCE.getPhotoArea_X();

        /**
         * The meta object literal for the '<em><b>Y</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute PHOTO_AREA__Y = eINSTANCE.getPhotoArea_Y();

        /**
         * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute PHOTO_AREA__WIDTH = eINSTANCE.getPhotoArea_Width();

        /**
         * The meta object literal for the '<em><b>Height</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute PHOTO_AREA__HEIGHT = eINSTANCE.getPhotoArea_Height();

        /**
         * The meta object literal for the '<em><b>Unit</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute PHOTO_AREA__UNIT = eINSTANCE.getPhotoArea_Unit();

        /**
         * The meta object literal for the '{@link org.pollex.model.catalogue.impl.GreyPatchImpl <em>Grey Patch</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.catalogue.impl.GreyPatchImpl
         * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getGreyPatch()
         * @generated
         */
        EClass GREY_PATCH = eINSTANCE.getGreyPatch();

        /**
         * The meta object literal for the '<em><b>Lightness</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute GREY_PATCH__LIGHTNESS = eINSTANCE.getGreyPatch_Lightness();

        /**
         * The meta object literal for the '{@link org.pollex.model.catalogue.impl.InkImpl <em>Ink</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.catalogue.impl.InkImpl
         * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getInk()
         * @generated
         */
        EClass INK = eINSTANCE.getInk();

        /**
         * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute INK__KIND = eINSTANCE.getInk_Kind();

        /**
         * The meta object literal for the '<em><b>Lab</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute INK__LAB = eINSTANCE.getInk_Lab();

        /**
         * The meta object literal for the '<em><b>Lab Over Black</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute INK__LAB_OVER_BLACK = eINSTANCE.getInk_LabOverBlack();

        /**
         * The meta object literal for the '<em><b>Film</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute INK__FILM = eINSTANCE.getInk_Film();

        /**
         * The meta object literal for the '{@link org.pollex.model.catalogue.impl.MethodImpl <em>Method</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.catalogue.impl.MethodImpl
         * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getMethod()
         * @generated
         */
        EClass METHOD = eINSTANCE.getMethod();

        /**
         * The meta object literal for the '<em><b>Line Min</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute METHOD__LINE_MIN = eINSTANCE.getMethod_LineMin();

        /**
         * The meta object literal for the '<em><b>Gap Min</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute METHOD__GAP_MIN = eINSTANCE.getMethod_GapMin();

        /**
         * The meta object literal for the '<em><b>Line Min Reversed</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute METHOD__LINE_MIN_REVERSED = eINSTANCE.getMethod_LineMinReversed();

        /**
         * The meta object literal for the '<em><b>Gap Min Reversed</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute METHOD__GAP_MIN_REVERSED = eINSTANCE.getMethod_GapMinReversed();

        /**
         * The meta object literal for the '<em><b>Type Min</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute METHOD__TYPE_MIN = eINSTANCE.getMethod_TypeMin();

        /**
         * The meta object literal for the '<em><b>Speck Min</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute METHOD__SPECK_MIN = eINSTANCE.getMethod_SpeckMin();

        /**
         * The meta object literal for the '<em><b>Pinhole Min</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute METHOD__PINHOLE_MIN = eINSTANCE.getMethod_PinholeMin();

        /**
         * The meta object literal for the '<em><b>Edge</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute METHOD__EDGE = eINSTANCE.getMethod_Edge();

        /**
         * The meta object literal for the '<em><b>Register</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute METHOD__REGISTER = eINSTANCE.getMethod_Register();

        /**
         * The meta object literal for the '<em><b>Choke</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute METHOD__CHOKE = eINSTANCE.getMethod_Choke();

        /**
         * The meta object literal for the '<em><b>Inks Max</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute METHOD__INKS_MAX = eINSTANCE.getMethod_InksMax();

        /**
         * The meta object literal for the '<em><b>Resolution</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute METHOD__RESOLUTION = eINSTANCE.getMethod_Resolution();

        /**
         * The meta object literal for the '<em><b>Full Colour</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute METHOD__FULL_COLOUR = eINSTANCE.getMethod_FullColour();

        /**
         * The meta object literal for the '<em><b>White Under</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute METHOD__WHITE_UNDER = eINSTANCE.getMethod_WhiteUnder();

        /**
         * The meta object literal for the '{@link org.pollex.model.catalogue.ZoneKind <em>Zone Kind</em>}' enum.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.catalogue.ZoneKind
         * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getZoneKind()
         * @generated
         */
        EEnum ZONE_KIND = eINSTANCE.getZoneKind();

        /**
         * The meta object literal for the '{@link org.pollex.model.catalogue.PhotoUnit <em>Photo Unit</em>}' enum.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.catalogue.PhotoUnit
         * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getPhotoUnit()
         * @generated
         */
        EEnum PHOTO_UNIT = eINSTANCE.getPhotoUnit();

        /**
         * The meta object literal for the '{@link org.pollex.model.catalogue.TextureKind <em>Texture Kind</em>}' enum.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.catalogue.TextureKind
         * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getTextureKind()
         * @generated
         */
        EEnum TEXTURE_KIND = eINSTANCE.getTextureKind();

        /**
         * The meta object literal for the '{@link org.pollex.model.catalogue.InkKind <em>Ink Kind</em>}' enum.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.catalogue.InkKind
         * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getInkKind()
         * @generated
         */
        EEnum INK_KIND = eINSTANCE.getInkKind();

        /**
         * The meta object literal for the '<em>Lab Colour</em>' data type.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.LabColour
         * @see org.pollex.model.catalogue.impl.CataloguePackageImpl#getLabColour()
         * @generated
         */
        EDataType LAB_COLOUR = eINSTANCE.getLabColour();

    }

} //CataloguePackage
