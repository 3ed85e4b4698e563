/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.catalogue.util;

import org.eclipse.emf.common.notify.Adapter;
import org.eclipse.emf.common.notify.Notifier;

import org.eclipse.emf.common.notify.impl.AdapterFactoryImpl;

import org.eclipse.emf.ecore.EObject;

import org.pollex.model.catalogue.*;

/**
 * <!-- begin-user-doc -->
 * The <b>Adapter Factory</b> for the model.
 * It provides an adapter <code>createXXX</code> method for each class of the model.
 * <!-- end-user-doc -->
 * @see org.pollex.model.catalogue.CataloguePackage
 * @generated
 */
public class CatalogueAdapterFactory extends AdapterFactoryImpl {
    /**
     * The cached model package.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    protected static CataloguePackage modelPackage;

    /**
     * Creates an instance of the adapter factory.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    public CatalogueAdapterFactory() {
        if (modelPackage == null) {
            modelPackage = CataloguePackage.eINSTANCE;
        }
    }

    /**
     * Returns whether this factory is applicable for the type of the object.
     * <!-- begin-user-doc -->
     * This implementation returns <code>true</code> if the object is either the model's package or is an instance object of the model.
     * <!-- end-user-doc -->
     * @return whether this factory is applicable for the type of the object.
     * @generated
     */
    @Override
    public boolean isFactoryForType(Object object) {
        if (object == modelPackage) {
            return true;
        }
        if (object instanceof EObject) {
            return ((EObject)object).eClass().getEPackage() == modelPackage;
        }
        return false;
    }

    /**
     * The switch that delegates to the <code>createXXX</code> methods.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    protected CatalogueSwitch<Adapter> modelSwitch =
        new CatalogueSwitch<Adapter>() {
            @Override
            public Adapter caseCatalogue(Catalogue object) {
                return createCatalogueAdapter();
            }
            @Override
            public Adapter caseEntry(Entry object) {
                return createEntryAdapter();
            }
            @Override
            public Adapter caseSetting(Setting object) {
                return createSettingAdapter();
            }
            @Override
            public Adapter caseFamily(Family object) {
                return createFamilyAdapter();
            }
            @Override
            public Adapter caseProduct(Product object) {
                return createProductAdapter();
            }
            @Override
            public Adapter caseFace(Face object) {
                return createFaceAdapter();
            }
            @Override
            public Adapter caseZone(Zone object) {
                return createZoneAdapter();
            }
            @Override
            public Adapter caseMaterial(Material object) {
                return createMaterialAdapter();
            }
            @Override
            public Adapter caseTexture(Texture object) {
                return createTextureAdapter();
            }
            @Override
            public Adapter casePhotoArea(PhotoArea object) {
                return createPhotoAreaAdapter();
            }
            @Override
            public Adapter caseGreyPatch(GreyPatch object) {
                return createGreyPatchAdapter();
            }
            @Override
            public Adapter caseInk(Ink object) {
                return createInkAdapter();
            }
            @Override
            public Adapter caseMethod(Method object) {
                return createMethodAdapter();
            }
            @Override
            public Adapter defaultCase(EObject object) {
                return createEObjectAdapter();
            }
        };

    /**
     * Creates an adapter for the <code>target</code>.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @param target the object to adapt.
     * @return the adapter for the <code>target</code>.
     * @generated
     */
    @Override
    public Adapter createAdapter(Notifier target) {
        return modelSwitch.doSwitch((EObject)target);
    }


    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.catalogue.Catalogue <em>Catalogue</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.catalogue.Catalogue
     * @generated
     */
    public Adapter createCatalogueAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.catalogue.Entry <em>Entry</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.catalogue.Entry
     * @generated
     */
    public Adapter createEntryAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.catalogue.Setting <em>Setting</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.catalogue.Setting
     * @generated
     */
    public Adapter createSettingAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.catalogue.Family <em>Family</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.catalogue.Family
     * @generated
     */
    public Adapter createFamilyAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.catalogue.Product <em>Product</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.catalogue.Product
     * @generated
     */
    public Adapter createProductAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.catalogue.Face <em>Face</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.catalogue.Face
     * @generated
     */
    public Adapter createFaceAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.catalogue.Zone <em>Zone</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.catalogue.Zone
     * @generated
     */
    public Adapter createZoneAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.catalogue.Material <em>Material</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.catalogue.Material
     * @generated
     */
    public Adapter createMaterialAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.catalogue.Texture <em>Texture</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.catalogue.Texture
     * @generated
     */
    public Adapter createTextureAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.catalogue.PhotoArea <em>Photo Area</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.catalogue.PhotoArea
     * @generated
     */
    public Adapter createPhotoAreaAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.catalogue.GreyPatch <em>Grey Patch</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.catalogue.GreyPatch
     * @generated
     */
    public Adapter createGreyPatchAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.catalogue.Ink <em>Ink</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.catalogue.Ink
     * @generated
     */
    public Adapter createInkAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for an object of class '{@link org.pollex.model.catalogue.Method <em>Method</em>}'.
     * <!-- begin-user-doc -->
     * This default implementation returns null so that we can easily ignore cases;
     * it's useful to ignore a case when inheritance will catch all the cases anyway.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @see org.pollex.model.catalogue.Method
     * @generated
     */
    public Adapter createMethodAdapter() {
        return null;
    }

    /**
     * Creates a new adapter for the default case.
     * <!-- begin-user-doc -->
     * This default implementation returns null.
     * <!-- end-user-doc -->
     * @return the new adapter.
     * @generated
     */
    public Adapter createEObjectAdapter() {
        return null;
    }

} //CatalogueAdapterFactory
