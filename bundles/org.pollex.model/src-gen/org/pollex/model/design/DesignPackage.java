/**
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.design;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
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
 * @see org.pollex.model.design.DesignFactory
 * @generated
 */
public interface DesignPackage extends EPackage {
    /**
     * The package name.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    String eNAME = "design";

    /**
     * The package namespace URI.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    String eNS_URI = "http://pollex.org/model/design";

    /**
     * The package namespace name.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    String eNS_PREFIX = "design";

    /**
     * The singleton instance of the package.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     */
    DesignPackage eINSTANCE = org.pollex.model.design.impl.DesignPackageImpl.init();

    /**
     * The meta object id for the '{@link org.pollex.model.design.impl.DesignImpl <em>Design</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.design.impl.DesignImpl
     * @see org.pollex.model.design.impl.DesignPackageImpl#getDesign()
     * @generated
     */
    int DESIGN = 0;

    /**
     * The feature id for the '<em><b>Format</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int DESIGN__FORMAT = 0;

    /**
     * The feature id for the '<em><b>Name</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int DESIGN__NAME = 1;

    /**
     * The feature id for the '<em><b>Product</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int DESIGN__PRODUCT = 2;

    /**
     * The feature id for the '<em><b>Material</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int DESIGN__MATERIAL = 3;

    /**
     * The feature id for the '<em><b>Method</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int DESIGN__METHOD = 4;

    /**
     * The feature id for the '<em><b>Inks</b></em>' attribute list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int DESIGN__INKS = 5;

    /**
     * The feature id for the '<em><b>Retoned From</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int DESIGN__RETONED_FROM = 6;

    /**
     * The feature id for the '<em><b>Sides</b></em>' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int DESIGN__SIDES = 7;

    /**
     * The number of structural features of the '<em>Design</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int DESIGN_FEATURE_COUNT = 8;

    /**
     * The meta object id for the '{@link org.pollex.model.design.impl.SideImpl <em>Side</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.design.impl.SideImpl
     * @see org.pollex.model.design.impl.DesignPackageImpl#getSide()
     * @generated
     */
    int SIDE = 1;

    /**
     * The feature id for the '<em><b>Name</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int SIDE__NAME = 0;

    /**
     * The feature id for the '<em><b>Layers</b></em>' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int SIDE__LAYERS = 1;

    /**
     * The feature id for the '<em><b>Guides</b></em>' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int SIDE__GUIDES = 2;

    /**
     * The number of structural features of the '<em>Side</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int SIDE_FEATURE_COUNT = 3;

    /**
     * The meta object id for the '{@link org.pollex.model.design.impl.LayerImpl <em>Layer</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.design.impl.LayerImpl
     * @see org.pollex.model.design.impl.DesignPackageImpl#getLayer()
     * @generated
     */
    int LAYER = 2;

    /**
     * The feature id for the '<em><b>Id</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int LAYER__ID = 0;

    /**
     * The feature id for the '<em><b>Name</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int LAYER__NAME = 1;

    /**
     * The feature id for the '<em><b>Hidden</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int LAYER__HIDDEN = 2;

    /**
     * The feature id for the '<em><b>Locked</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int LAYER__LOCKED = 3;

    /**
     * The feature id for the '<em><b>Marks</b></em>' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int LAYER__MARKS = 4;

    /**
     * The number of structural features of the '<em>Layer</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int LAYER_FEATURE_COUNT = 5;

    /**
     * The meta object id for the '{@link org.pollex.model.design.impl.MarkImpl <em>Mark</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.design.impl.MarkImpl
     * @see org.pollex.model.design.impl.DesignPackageImpl#getMark()
     * @generated
     */
    int MARK = 3;

    /**
     * The feature id for the '<em><b>Id</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int MARK__ID = 0;

    /**
     * The feature id for the '<em><b>Name</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int MARK__NAME = 1;

    /**
     * The feature id for the '<em><b>Hidden</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int MARK__HIDDEN = 2;

    /**
     * The feature id for the '<em><b>Locked</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int MARK__LOCKED = 3;

    /**
     * The feature id for the '<em><b>X</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int MARK__X = 4;

    /**
     * The feature id for the '<em><b>Y</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int MARK__Y = 5;

    /**
     * The feature id for the '<em><b>Scale</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int MARK__SCALE = 6;

    /**
     * The feature id for the '<em><b>Turn</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int MARK__TURN = 7;

    /**
     * The feature id for the '<em><b>Mirror</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int MARK__MIRROR = 8;

    /**
     * The feature id for the '<em><b>Overprint</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int MARK__OVERPRINT = 9;

    /**
     * The number of structural features of the '<em>Mark</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int MARK_FEATURE_COUNT = 10;

    /**
     * The meta object id for the '{@link org.pollex.model.design.impl.PlacementImpl <em>Placement</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.design.impl.PlacementImpl
     * @see org.pollex.model.design.impl.DesignPackageImpl#getPlacement()
     * @generated
     */
    int PLACEMENT = 4;

    /**
     * The feature id for the '<em><b>Id</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLACEMENT__ID = MARK__ID;

    /**
     * The feature id for the '<em><b>Name</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLACEMENT__NAME = MARK__NAME;

    /**
     * The feature id for the '<em><b>Hidden</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLACEMENT__HIDDEN = MARK__HIDDEN;

    /**
     * The feature id for the '<em><b>Locked</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLACEMENT__LOCKED = MARK__LOCKED;

    /**
     * The feature id for the '<em><b>X</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLACEMENT__X = MARK__X;

    /**
     * The feature id for the '<em><b>Y</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLACEMENT__Y = MARK__Y;

    /**
     * The feature id for the '<em><b>Scale</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLACEMENT__SCALE = MARK__SCALE;

    /**
     * The feature id for the '<em><b>Turn</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLACEMENT__TURN = MARK__TURN;

    /**
     * The feature id for the '<em><b>Mirror</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLACEMENT__MIRROR = MARK__MIRROR;

    /**
     * The feature id for the '<em><b>Overprint</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLACEMENT__OVERPRINT = MARK__OVERPRINT;

    /**
     * The feature id for the '<em><b>Art</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLACEMENT__ART = MARK_FEATURE_COUNT + 0;

    /**
     * The feature id for the '<em><b>Sha256</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLACEMENT__SHA256 = MARK_FEATURE_COUNT + 1;

    /**
     * The feature id for the '<em><b>Ground</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLACEMENT__GROUND = MARK_FEATURE_COUNT + 2;

    /**
     * The feature id for the '<em><b>Leave Out</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLACEMENT__LEAVE_OUT = MARK_FEATURE_COUNT + 3;

    /**
     * The feature id for the '<em><b>Assignments</b></em>' containment reference list.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLACEMENT__ASSIGNMENTS = MARK_FEATURE_COUNT + 4;

    /**
     * The feature id for the '<em><b>Retoning</b></em>' containment reference.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLACEMENT__RETONING = MARK_FEATURE_COUNT + 5;

    /**
     * The number of structural features of the '<em>Placement</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLACEMENT_FEATURE_COUNT = MARK_FEATURE_COUNT + 6;

    /**
     * The meta object id for the '{@link org.pollex.model.design.impl.RetoningImpl <em>Retoning</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.design.impl.RetoningImpl
     * @see org.pollex.model.design.impl.DesignPackageImpl#getRetoning()
     * @generated
     */
    int RETONING = 5;

    /**
     * The feature id for the '<em><b>Mark</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int RETONING__MARK = 0;

    /**
     * The feature id for the '<em><b>Sha256</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int RETONING__SHA256 = 1;

    /**
     * The feature id for the '<em><b>Made</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int RETONING__MADE = 2;

    /**
     * The feature id for the '<em><b>Choices</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int RETONING__CHOICES = 3;

    /**
     * The feature id for the '<em><b>Keyline</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int RETONING__KEYLINE = 4;

    /**
     * The feature id for the '<em><b>Grow</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int RETONING__GROW = 5;

    /**
     * The feature id for the '<em><b>Apart</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int RETONING__APART = 6;

    /**
     * The feature id for the '<em><b>X</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int RETONING__X = 7;

    /**
     * The feature id for the '<em><b>Y</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int RETONING__Y = 8;

    /**
     * The feature id for the '<em><b>Scale</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int RETONING__SCALE = 9;

    /**
     * The feature id for the '<em><b>Turn</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int RETONING__TURN = 10;

    /**
     * The feature id for the '<em><b>Mirror</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int RETONING__MIRROR = 11;

    /**
     * The number of structural features of the '<em>Retoning</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int RETONING_FEATURE_COUNT = 12;

    /**
     * The meta object id for the '{@link org.pollex.model.design.impl.AssignmentImpl <em>Assignment</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.design.impl.AssignmentImpl
     * @see org.pollex.model.design.impl.DesignPackageImpl#getAssignment()
     * @generated
     */
    int ASSIGNMENT = 6;

    /**
     * The feature id for the '<em><b>Colour</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int ASSIGNMENT__COLOUR = 0;

    /**
     * The feature id for the '<em><b>Ink</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int ASSIGNMENT__INK = 1;

    /**
     * The number of structural features of the '<em>Assignment</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int ASSIGNMENT_FEATURE_COUNT = 2;

    /**
     * The meta object id for the '{@link org.pollex.model.design.impl.TextLineImpl <em>Text Line</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.design.impl.TextLineImpl
     * @see org.pollex.model.design.impl.DesignPackageImpl#getTextLine()
     * @generated
     */
    int TEXT_LINE = 7;

    /**
     * The feature id for the '<em><b>Id</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int TEXT_LINE__ID = MARK__ID;

    /**
     * The feature id for the '<em><b>Name</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int TEXT_LINE__NAME = MARK__NAME;

    /**
     * The feature id for the '<em><b>Hidden</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int TEXT_LINE__HIDDEN = MARK__HIDDEN;

    /**
     * The feature id for the '<em><b>Locked</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int TEXT_LINE__LOCKED = MARK__LOCKED;

    /**
     * The feature id for the '<em><b>X</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int TEXT_LINE__X = MARK__X;

    /**
     * The feature id for the '<em><b>Y</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int TEXT_LINE__Y = MARK__Y;

    /**
     * The feature id for the '<em><b>Scale</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int TEXT_LINE__SCALE = MARK__SCALE;

    /**
     * The feature id for the '<em><b>Turn</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int TEXT_LINE__TURN = MARK__TURN;

    /**
     * The feature id for the '<em><b>Mirror</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int TEXT_LINE__MIRROR = MARK__MIRROR;

    /**
     * The feature id for the '<em><b>Overprint</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int TEXT_LINE__OVERPRINT = MARK__OVERPRINT;

    /**
     * The feature id for the '<em><b>Text</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int TEXT_LINE__TEXT = MARK_FEATURE_COUNT + 0;

    /**
     * The feature id for the '<em><b>Font</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int TEXT_LINE__FONT = MARK_FEATURE_COUNT + 1;

    /**
     * The feature id for the '<em><b>Bold</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int TEXT_LINE__BOLD = MARK_FEATURE_COUNT + 2;

    /**
     * The feature id for the '<em><b>Italic</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int TEXT_LINE__ITALIC = MARK_FEATURE_COUNT + 3;

    /**
     * The feature id for the '<em><b>Size</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int TEXT_LINE__SIZE = MARK_FEATURE_COUNT + 4;

    /**
     * The feature id for the '<em><b>Spacing</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int TEXT_LINE__SPACING = MARK_FEATURE_COUNT + 5;

    /**
     * The feature id for the '<em><b>Ink</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int TEXT_LINE__INK = MARK_FEATURE_COUNT + 6;

    /**
     * The number of structural features of the '<em>Text Line</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int TEXT_LINE_FEATURE_COUNT = MARK_FEATURE_COUNT + 7;

    /**
     * The meta object id for the '{@link org.pollex.model.design.impl.PlainShapeImpl <em>Plain Shape</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.design.impl.PlainShapeImpl
     * @see org.pollex.model.design.impl.DesignPackageImpl#getPlainShape()
     * @generated
     */
    int PLAIN_SHAPE = 8;

    /**
     * The feature id for the '<em><b>Id</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLAIN_SHAPE__ID = MARK__ID;

    /**
     * The feature id for the '<em><b>Name</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLAIN_SHAPE__NAME = MARK__NAME;

    /**
     * The feature id for the '<em><b>Hidden</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLAIN_SHAPE__HIDDEN = MARK__HIDDEN;

    /**
     * The feature id for the '<em><b>Locked</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLAIN_SHAPE__LOCKED = MARK__LOCKED;

    /**
     * The feature id for the '<em><b>X</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLAIN_SHAPE__X = MARK__X;

    /**
     * The feature id for the '<em><b>Y</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLAIN_SHAPE__Y = MARK__Y;

    /**
     * The feature id for the '<em><b>Scale</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLAIN_SHAPE__SCALE = MARK__SCALE;

    /**
     * The feature id for the '<em><b>Turn</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLAIN_SHAPE__TURN = MARK__TURN;

    /**
     * The feature id for the '<em><b>Mirror</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLAIN_SHAPE__MIRROR = MARK__MIRROR;

    /**
     * The feature id for the '<em><b>Overprint</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLAIN_SHAPE__OVERPRINT = MARK__OVERPRINT;

    /**
     * The feature id for the '<em><b>Kind</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLAIN_SHAPE__KIND = MARK_FEATURE_COUNT + 0;

    /**
     * The feature id for the '<em><b>Width</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLAIN_SHAPE__WIDTH = MARK_FEATURE_COUNT + 1;

    /**
     * The feature id for the '<em><b>Height</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLAIN_SHAPE__HEIGHT = MARK_FEATURE_COUNT + 2;

    /**
     * The feature id for the '<em><b>Line Width</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLAIN_SHAPE__LINE_WIDTH = MARK_FEATURE_COUNT + 3;

    /**
     * The feature id for the '<em><b>Ink</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLAIN_SHAPE__INK = MARK_FEATURE_COUNT + 4;

    /**
     * The number of structural features of the '<em>Plain Shape</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int PLAIN_SHAPE_FEATURE_COUNT = MARK_FEATURE_COUNT + 5;

    /**
     * The meta object id for the '{@link org.pollex.model.design.impl.UnknownMarkImpl <em>Unknown Mark</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.design.impl.UnknownMarkImpl
     * @see org.pollex.model.design.impl.DesignPackageImpl#getUnknownMark()
     * @generated
     */
    int UNKNOWN_MARK = 9;

    /**
     * The feature id for the '<em><b>Id</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int UNKNOWN_MARK__ID = MARK__ID;

    /**
     * The feature id for the '<em><b>Name</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int UNKNOWN_MARK__NAME = MARK__NAME;

    /**
     * The feature id for the '<em><b>Hidden</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int UNKNOWN_MARK__HIDDEN = MARK__HIDDEN;

    /**
     * The feature id for the '<em><b>Locked</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int UNKNOWN_MARK__LOCKED = MARK__LOCKED;

    /**
     * The feature id for the '<em><b>X</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int UNKNOWN_MARK__X = MARK__X;

    /**
     * The feature id for the '<em><b>Y</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int UNKNOWN_MARK__Y = MARK__Y;

    /**
     * The feature id for the '<em><b>Scale</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int UNKNOWN_MARK__SCALE = MARK__SCALE;

    /**
     * The feature id for the '<em><b>Turn</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int UNKNOWN_MARK__TURN = MARK__TURN;

    /**
     * The feature id for the '<em><b>Mirror</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int UNKNOWN_MARK__MIRROR = MARK__MIRROR;

    /**
     * The feature id for the '<em><b>Overprint</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int UNKNOWN_MARK__OVERPRINT = MARK__OVERPRINT;

    /**
     * The feature id for the '<em><b>Kind</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int UNKNOWN_MARK__KIND = MARK_FEATURE_COUNT + 0;

    /**
     * The feature id for the '<em><b>Rest</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int UNKNOWN_MARK__REST = MARK_FEATURE_COUNT + 1;

    /**
     * The number of structural features of the '<em>Unknown Mark</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int UNKNOWN_MARK_FEATURE_COUNT = MARK_FEATURE_COUNT + 2;

    /**
     * The meta object id for the '{@link org.pollex.model.design.impl.GuideImpl <em>Guide</em>}' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.design.impl.GuideImpl
     * @see org.pollex.model.design.impl.DesignPackageImpl#getGuide()
     * @generated
     */
    int GUIDE = 10;

    /**
     * The feature id for the '<em><b>Upright</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int GUIDE__UPRIGHT = 0;

    /**
     * The feature id for the '<em><b>At</b></em>' attribute.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int GUIDE__AT = 1;

    /**
     * The number of structural features of the '<em>Guide</em>' class.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @generated
     * @ordered
     */
    int GUIDE_FEATURE_COUNT = 2;

    /**
     * The meta object id for the '{@link org.pollex.model.design.ShapeKind <em>Shape Kind</em>}' enum.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @see org.pollex.model.design.ShapeKind
     * @see org.pollex.model.design.impl.DesignPackageImpl#getShapeKind()
     * @generated
     */
    int SHAPE_KIND = 11;


    /**
     * Returns the meta object for class '{@link org.pollex.model.design.Design <em>Design</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Design</em>'.
     * @see org.pollex.model.design.Design
     * @generated
     */
    EClass getDesign();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Design#getFormat <em>Format</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Format</em>'.
     * @see org.pollex.model.design.Design#getFormat()
     * @see #getDesign()
     * @generated
     */
    EAttribute getDesign_Format();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Design#getName <em>Name</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Name</em>'.
     * @see org.pollex.model.design.Design#getName()
     * @see #getDesign()
     * @generated
     */
    EAttribute getDesign_Name();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Design#getProduct <em>Product</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Product</em>'.
     * @see org.pollex.model.design.Design#getProduct()
     * @see #getDesign()
     * @generated
     */
    EAttribute getDesign_Product();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Design#getMaterial <em>Material</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Material</em>'.
     * @see org.pollex.model.design.Design#getMaterial()
     * @see #getDesign()
     * @generated
     */
    EAttribute getDesign_Material();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Design#getMethod <em>Method</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Method</em>'.
     * @see org.pollex.model.design.Design#getMethod()
     * @see #getDesign()
     * @generated
     */
    EAttribute getDesign_Method();

    /**
     * Returns the meta object for the attribute list '{@link org.pollex.model.design.Design#getInks <em>Inks</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute list '<em>Inks</em>'.
     * @see org.pollex.model.design.Design#getInks()
     * @see #getDesign()
     * @generated
     */
    EAttribute getDesign_Inks();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Design#getRetonedFrom <em>Retoned From</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Retoned From</em>'.
     * @see org.pollex.model.design.Design#getRetonedFrom()
     * @see #getDesign()
     * @generated
     */
    EAttribute getDesign_RetonedFrom();

    /**
     * Returns the meta object for the containment reference list '{@link org.pollex.model.design.Design#getSides <em>Sides</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the containment reference list '<em>Sides</em>'.
     * @see org.pollex.model.design.Design#getSides()
     * @see #getDesign()
     * @generated
     */
    EReference getDesign_Sides();

    /**
     * Returns the meta object for class '{@link org.pollex.model.design.Side <em>Side</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Side</em>'.
     * @see org.pollex.model.design.Side
     * @generated
     */
    EClass getSide();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Side#getName <em>Name</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Name</em>'.
     * @see org.pollex.model.design.Side#getName()
     * @see #getSide()
     * @generated
     */
    EAttribute getSide_Name();

    /**
     * Returns the meta object for the containment reference list '{@link org.pollex.model.design.Side#getLayers <em>Layers</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the containment reference list '<em>Layers</em>'.
     * @see org.pollex.model.design.Side#getLayers()
     * @see #getSide()
     * @generated
     */
    EReference getSide_Layers();

    /**
     * Returns the meta object for the containment reference list '{@link org.pollex.model.design.Side#getGuides <em>Guides</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the containment reference list '<em>Guides</em>'.
     * @see org.pollex.model.design.Side#getGuides()
     * @see #getSide()
     * @generated
     */
    EReference getSide_Guides();

    /**
     * Returns the meta object for class '{@link org.pollex.model.design.Layer <em>Layer</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Layer</em>'.
     * @see org.pollex.model.design.Layer
     * @generated
     */
    EClass getLayer();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Layer#getId <em>Id</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Id</em>'.
     * @see org.pollex.model.design.Layer#getId()
     * @see #getLayer()
     * @generated
     */
    EAttribute getLayer_Id();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Layer#getName <em>Name</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Name</em>'.
     * @see org.pollex.model.design.Layer#getName()
     * @see #getLayer()
     * @generated
     */
    EAttribute getLayer_Name();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Layer#isHidden <em>Hidden</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Hidden</em>'.
     * @see org.pollex.model.design.Layer#isHidden()
     * @see #getLayer()
     * @generated
     */
    EAttribute getLayer_Hidden();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Layer#isLocked <em>Locked</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Locked</em>'.
     * @see org.pollex.model.design.Layer#isLocked()
     * @see #getLayer()
     * @generated
     */
    EAttribute getLayer_Locked();

    /**
     * Returns the meta object for the containment reference list '{@link org.pollex.model.design.Layer#getMarks <em>Marks</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the containment reference list '<em>Marks</em>'.
     * @see org.pollex.model.design.Layer#getMarks()
     * @see #getLayer()
     * @generated
     */
    EReference getLayer_Marks();

    /**
     * Returns the meta object for class '{@link org.pollex.model.design.Mark <em>Mark</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Mark</em>'.
     * @see org.pollex.model.design.Mark
     * @generated
     */
    EClass getMark();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Mark#getId <em>Id</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Id</em>'.
     * @see org.pollex.model.design.Mark#getId()
     * @see #getMark()
     * @generated
     */
    EAttribute getMark_Id();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Mark#getName <em>Name</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Name</em>'.
     * @see org.pollex.model.design.Mark#getName()
     * @see #getMark()
     * @generated
     */
    EAttribute getMark_Name();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Mark#isHidden <em>Hidden</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Hidden</em>'.
     * @see org.pollex.model.design.Mark#isHidden()
     * @see #getMark()
     * @generated
     */
    EAttribute getMark_Hidden();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Mark#isLocked <em>Locked</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Locked</em>'.
     * @see org.pollex.model.design.Mark#isLocked()
     * @see #getMark()
     * @generated
     */
    EAttribute getMark_Locked();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Mark#getX <em>X</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>X</em>'.
     * @see org.pollex.model.design.Mark#getX()
     * @see #getMark()
     * @generated
     */
    EAttribute getMark_X();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Mark#getY <em>Y</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Y</em>'.
     * @see org.pollex.model.design.Mark#getY()
     * @see #getMark()
     * @generated
     */
    EAttribute getMark_Y();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Mark#getScale <em>Scale</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Scale</em>'.
     * @see org.pollex.model.design.Mark#getScale()
     * @see #getMark()
     * @generated
     */
    EAttribute getMark_Scale();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Mark#getTurn <em>Turn</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Turn</em>'.
     * @see org.pollex.model.design.Mark#getTurn()
     * @see #getMark()
     * @generated
     */
    EAttribute getMark_Turn();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Mark#isMirror <em>Mirror</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Mirror</em>'.
     * @see org.pollex.model.design.Mark#isMirror()
     * @see #getMark()
     * @generated
     */
    EAttribute getMark_Mirror();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Mark#isOverprint <em>Overprint</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Overprint</em>'.
     * @see org.pollex.model.design.Mark#isOverprint()
     * @see #getMark()
     * @generated
     */
    EAttribute getMark_Overprint();

    /**
     * Returns the meta object for class '{@link org.pollex.model.design.Placement <em>Placement</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Placement</em>'.
     * @see org.pollex.model.design.Placement
     * @generated
     */
    EClass getPlacement();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Placement#getArt <em>Art</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Art</em>'.
     * @see org.pollex.model.design.Placement#getArt()
     * @see #getPlacement()
     * @generated
     */
    EAttribute getPlacement_Art();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Placement#getSha256 <em>Sha256</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Sha256</em>'.
     * @see org.pollex.model.design.Placement#getSha256()
     * @see #getPlacement()
     * @generated
     */
    EAttribute getPlacement_Sha256();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Placement#getGround <em>Ground</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Ground</em>'.
     * @see org.pollex.model.design.Placement#getGround()
     * @see #getPlacement()
     * @generated
     */
    EAttribute getPlacement_Ground();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Placement#getLeaveOut <em>Leave Out</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Leave Out</em>'.
     * @see org.pollex.model.design.Placement#getLeaveOut()
     * @see #getPlacement()
     * @generated
     */
    EAttribute getPlacement_LeaveOut();

    /**
     * Returns the meta object for the containment reference list '{@link org.pollex.model.design.Placement#getAssignments <em>Assignments</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the containment reference list '<em>Assignments</em>'.
     * @see org.pollex.model.design.Placement#getAssignments()
     * @see #getPlacement()
     * @generated
     */
    EReference getPlacement_Assignments();

    /**
     * Returns the meta object for the containment reference '{@link org.pollex.model.design.Placement#getRetoning <em>Retoning</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the containment reference '<em>Retoning</em>'.
     * @see org.pollex.model.design.Placement#getRetoning()
     * @see #getPlacement()
     * @generated
     */
    EReference getPlacement_Retoning();

    /**
     * Returns the meta object for class '{@link org.pollex.model.design.Retoning <em>Retoning</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Retoning</em>'.
     * @see org.pollex.model.design.Retoning
     * @generated
     */
    EClass getRetoning();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Retoning#getMark <em>Mark</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Mark</em>'.
     * @see org.pollex.model.design.Retoning#getMark()
     * @see #getRetoning()
     * @generated
     */
    EAttribute getRetoning_Mark();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Retoning#getSha256 <em>Sha256</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Sha256</em>'.
     * @see org.pollex.model.design.Retoning#getSha256()
     * @see #getRetoning()
     * @generated
     */
    EAttribute getRetoning_Sha256();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Retoning#getMade <em>Made</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Made</em>'.
     * @see org.pollex.model.design.Retoning#getMade()
     * @see #getRetoning()
     * @generated
     */
    EAttribute getRetoning_Made();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Retoning#getChoices <em>Choices</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Choices</em>'.
     * @see org.pollex.model.design.Retoning#getChoices()
     * @see #getRetoning()
     * @generated
     */
    EAttribute getRetoning_Choices();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Retoning#getKeyline <em>Keyline</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Keyline</em>'.
     * @see org.pollex.model.design.Retoning#getKeyline()
     * @see #getRetoning()
     * @generated
     */
    EAttribute getRetoning_Keyline();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Retoning#isGrow <em>Grow</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Grow</em>'.
     * @see org.pollex.model.design.Retoning#isGrow()
     * @see #getRetoning()
     * @generated
     */
    EAttribute getRetoning_Grow();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Retoning#isApart <em>Apart</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Apart</em>'.
     * @see org.pollex.model.design.Retoning#isApart()
     * @see #getRetoning()
     * @generated
     */
    EAttribute getRetoning_Apart();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Retoning#getX <em>X</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>X</em>'.
     * @see org.pollex.model.design.Retoning#getX()
     * @see #getRetoning()
     * @generated
     */
    EAttribute getRetoning_X();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Retoning#getY <em>Y</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Y</em>'.
     * @see org.pollex.model.design.Retoning#getY()
     * @see #getRetoning()
     * @generated
     */
    EAttribute getRetoning_Y();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Retoning#getScale <em>Scale</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Scale</em>'.
     * @see org.pollex.model.design.Retoning#getScale()
     * @see #getRetoning()
     * @generated
     */
    EAttribute getRetoning_Scale();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Retoning#getTurn <em>Turn</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Turn</em>'.
     * @see org.pollex.model.design.Retoning#getTurn()
     * @see #getRetoning()
     * @generated
     */
    EAttribute getRetoning_Turn();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Retoning#isMirror <em>Mirror</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Mirror</em>'.
     * @see org.pollex.model.design.Retoning#isMirror()
     * @see #getRetoning()
     * @generated
     */
    EAttribute getRetoning_Mirror();

    /**
     * Returns the meta object for class '{@link org.pollex.model.design.Assignment <em>Assignment</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Assignment</em>'.
     * @see org.pollex.model.design.Assignment
     * @generated
     */
    EClass getAssignment();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Assignment#getColour <em>Colour</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Colour</em>'.
     * @see org.pollex.model.design.Assignment#getColour()
     * @see #getAssignment()
     * @generated
     */
    EAttribute getAssignment_Colour();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Assignment#getInk <em>Ink</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Ink</em>'.
     * @see org.pollex.model.design.Assignment#getInk()
     * @see #getAssignment()
     * @generated
     */
    EAttribute getAssignment_Ink();

    /**
     * Returns the meta object for class '{@link org.pollex.model.design.TextLine <em>Text Line</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Text Line</em>'.
     * @see org.pollex.model.design.TextLine
     * @generated
     */
    EClass getTextLine();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.TextLine#getText <em>Text</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Text</em>'.
     * @see org.pollex.model.design.TextLine#getText()
     * @see #getTextLine()
     * @generated
     */
    EAttribute getTextLine_Text();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.TextLine#getFont <em>Font</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Font</em>'.
     * @see org.pollex.model.design.TextLine#getFont()
     * @see #getTextLine()
     * @generated
     */
    EAttribute getTextLine_Font();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.TextLine#isBold <em>Bold</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Bold</em>'.
     * @see org.pollex.model.design.TextLine#isBold()
     * @see #getTextLine()
     * @generated
     */
    EAttribute getTextLine_Bold();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.TextLine#isItalic <em>Italic</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Italic</em>'.
     * @see org.pollex.model.design.TextLine#isItalic()
     * @see #getTextLine()
     * @generated
     */
    EAttribute getTextLine_Italic();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.TextLine#getSize <em>Size</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Size</em>'.
     * @see org.pollex.model.design.TextLine#getSize()
     * @see #getTextLine()
     * @generated
     */
    EAttribute getTextLine_Size();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.TextLine#getSpacing <em>Spacing</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Spacing</em>'.
     * @see org.pollex.model.design.TextLine#getSpacing()
     * @see #getTextLine()
     * @generated
     */
    EAttribute getTextLine_Spacing();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.TextLine#getInk <em>Ink</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Ink</em>'.
     * @see org.pollex.model.design.TextLine#getInk()
     * @see #getTextLine()
     * @generated
     */
    EAttribute getTextLine_Ink();

    /**
     * Returns the meta object for class '{@link org.pollex.model.design.PlainShape <em>Plain Shape</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Plain Shape</em>'.
     * @see org.pollex.model.design.PlainShape
     * @generated
     */
    EClass getPlainShape();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.PlainShape#getKind <em>Kind</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Kind</em>'.
     * @see org.pollex.model.design.PlainShape#getKind()
     * @see #getPlainShape()
     * @generated
     */
    EAttribute getPlainShape_Kind();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.PlainShape#getWidth <em>Width</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Width</em>'.
     * @see org.pollex.model.design.PlainShape#getWidth()
     * @see #getPlainShape()
     * @generated
     */
    EAttribute getPlainShape_Width();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.PlainShape#getHeight <em>Height</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Height</em>'.
     * @see org.pollex.model.design.PlainShape#getHeight()
     * @see #getPlainShape()
     * @generated
     */
    EAttribute getPlainShape_Height();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.PlainShape#getLineWidth <em>Line Width</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Line Width</em>'.
     * @see org.pollex.model.design.PlainShape#getLineWidth()
     * @see #getPlainShape()
     * @generated
     */
    EAttribute getPlainShape_LineWidth();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.PlainShape#getInk <em>Ink</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Ink</em>'.
     * @see org.pollex.model.design.PlainShape#getInk()
     * @see #getPlainShape()
     * @generated
     */
    EAttribute getPlainShape_Ink();

    /**
     * Returns the meta object for class '{@link org.pollex.model.design.UnknownMark <em>Unknown Mark</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Unknown Mark</em>'.
     * @see org.pollex.model.design.UnknownMark
     * @generated
     */
    EClass getUnknownMark();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.UnknownMark#getKind <em>Kind</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Kind</em>'.
     * @see org.pollex.model.design.UnknownMark#getKind()
     * @see #getUnknownMark()
     * @generated
     */
    EAttribute getUnknownMark_Kind();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.UnknownMark#getRest <em>Rest</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Rest</em>'.
     * @see org.pollex.model.design.UnknownMark#getRest()
     * @see #getUnknownMark()
     * @generated
     */
    EAttribute getUnknownMark_Rest();

    /**
     * Returns the meta object for class '{@link org.pollex.model.design.Guide <em>Guide</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for class '<em>Guide</em>'.
     * @see org.pollex.model.design.Guide
     * @generated
     */
    EClass getGuide();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Guide#isUpright <em>Upright</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>Upright</em>'.
     * @see org.pollex.model.design.Guide#isUpright()
     * @see #getGuide()
     * @generated
     */
    EAttribute getGuide_Upright();

    /**
     * Returns the meta object for the attribute '{@link org.pollex.model.design.Guide#getAt <em>At</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for the attribute '<em>At</em>'.
     * @see org.pollex.model.design.Guide#getAt()
     * @see #getGuide()
     * @generated
     */
    EAttribute getGuide_At();

    /**
     * Returns the meta object for enum '{@link org.pollex.model.design.ShapeKind <em>Shape Kind</em>}'.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the meta object for enum '<em>Shape Kind</em>'.
     * @see org.pollex.model.design.ShapeKind
     * @generated
     */
    EEnum getShapeKind();

    /**
     * Returns the factory that creates the instances of the model.
     * <!-- begin-user-doc -->
     * <!-- end-user-doc -->
     * @return the factory that creates the instances of the model.
     * @generated
     */
    DesignFactory getDesignFactory();

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
         * The meta object literal for the '{@link org.pollex.model.design.impl.DesignImpl <em>Design</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.design.impl.DesignImpl
         * @see org.pollex.model.design.impl.DesignPackageImpl#getDesign()
         * @generated
         */
        EClass DESIGN = eINSTANCE.getDesign();

        /**
         * The meta object literal for the '<em><b>Format</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute DESIGN__FORMAT = eINSTANCE.getDesign_Format();

        /**
         * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute DESIGN__NAME = eINSTANCE.getDesign_Name();

        /**
         * The meta object literal for the '<em><b>Product</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute DESIGN__PRODUCT = eINSTANCE.getDesign_Product();

        /**
         * The meta object literal for the '<em><b>Material</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute DESIGN__MATERIAL = eINSTANCE.getDesign_Material();

        /**
         * The meta object literal for the '<em><b>Method</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute DESIGN__METHOD = eINSTANCE.getDesign_Method();

        /**
         * The meta object literal for the '<em><b>Inks</b></em>' attribute list feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute DESIGN__INKS = eINSTANCE.getDesign_Inks();

        /**
         * The meta object literal for the '<em><b>Retoned From</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute DESIGN__RETONED_FROM = eINSTANCE.getDesign_RetonedFrom();

        /**
         * The meta object literal for the '<em><b>Sides</b></em>' containment reference list feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EReference DESIGN__SIDES = eINSTANCE.getDesign_Sides();

        /**
         * The meta object literal for the '{@link org.pollex.model.design.impl.SideImpl <em>Side</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.design.impl.SideImpl
         * @see org.pollex.model.design.impl.DesignPackageImpl#getSide()
         * @generated
         */
        EClass SIDE = eINSTANCE.getSide();

        /**
         * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute SIDE__NAME = eINSTANCE.getSide_Name();

        /**
         * The meta object literal for the '<em><b>Layers</b></em>' containment reference list feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EReference SIDE__LAYERS = eINSTANCE.getSide_Layers();

        /**
         * The meta object literal for the '<em><b>Guides</b></em>' containment reference list feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EReference SIDE__GUIDES = eINSTANCE.getSide_Guides();

        /**
         * The meta object literal for the '{@link org.pollex.model.design.impl.LayerImpl <em>Layer</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.design.impl.LayerImpl
         * @see org.pollex.model.design.impl.DesignPackageImpl#getLayer()
         * @generated
         */
        EClass LAYER = eINSTANCE.getLayer();

        /**
         * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute LAYER__ID = eINSTANCE.getLayer_Id();

        /**
         * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute LAYER__NAME = eINSTANCE.getLayer_Name();

        /**
         * The meta object literal for the '<em><b>Hidden</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute LAYER__HIDDEN = eINSTANCE.getLayer_Hidden();

        /**
         * The meta object literal for the '<em><b>Locked</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute LAYER__LOCKED = eINSTANCE.getLayer_Locked();

        /**
         * The meta object literal for the '<em><b>Marks</b></em>' containment reference list feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EReference LAYER__MARKS = eINSTANCE.getLayer_Marks();

        /**
         * The meta object literal for the '{@link org.pollex.model.design.impl.MarkImpl <em>Mark</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.design.impl.MarkImpl
         * @see org.pollex.model.design.impl.DesignPackageImpl#getMark()
         * @generated
         */
        EClass MARK = eINSTANCE.getMark();

        /**
         * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute MARK__ID = eINSTANCE.getMark_Id();

        /**
         * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute MARK__NAME = eINSTANCE.getMark_Name();

        /**
         * The meta object literal for the '<em><b>Hidden</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute MARK__HIDDEN = eINSTANCE.getMark_Hidden();

        /**
         * The meta object literal for the '<em><b>Locked</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute MARK__LOCKED = eINSTANCE.getMark_Locked();

        /**
         * The meta object literal for the '<em><b>X</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute MARK__X = eINSTANCE.getMark_X();

        /**
         * The meta object literal for the '<em><b>Y</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute MARK__Y = eINSTANCE.getMark_Y();

        /**
         * The meta object literal for the '<em><b>Scale</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute MARK__SCALE = eINSTANCE.getMark_Scale();

        /**
         * The meta object literal for the '<em><b>Turn</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute MARK__TURN = eINSTANCE.getMark_Turn();

        /**
         * The meta object literal for the '<em><b>Mirror</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute MARK__MIRROR = eINSTANCE.getMark_Mirror();

        /**
         * The meta object literal for the '<em><b>Overprint</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute MARK__OVERPRINT = eINSTANCE.getMark_Overprint();

        /**
         * The meta object literal for the '{@link org.pollex.model.design.impl.PlacementImpl <em>Placement</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.design.impl.PlacementImpl
         * @see org.pollex.model.design.impl.DesignPackageImpl#getPlacement()
         * @generated
         */
        EClass PLACEMENT = eINSTANCE.getPlacement();

        /**
         * The meta object literal for the '<em><b>Art</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute PLACEMENT__ART = eINSTANCE.getPlacement_Art();

        /**
         * The meta object literal for the '<em><b>Sha256</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute PLACEMENT__SHA256 = eINSTANCE.getPlacement_Sha256();

        /**
         * The meta object literal for the '<em><b>Ground</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute PLACEMENT__GROUND = eINSTANCE.getPlacement_Ground();

        /**
         * The meta object literal for the '<em><b>Leave Out</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute PLACEMENT__LEAVE_OUT = eINSTANCE.getPlacement_LeaveOut();

        /**
         * The meta object literal for the '<em><b>Assignments</b></em>' containment reference list feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EReference PLACEMENT__ASSIGNMENTS = eINSTANCE.getPlacement_Assignments();

        /**
         * The meta object literal for the '<em><b>Retoning</b></em>' containment reference feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EReference PLACEMENT__RETONING = eINSTANCE.getPlacement_Retoning();

        /**
         * The meta object literal for the '{@link org.pollex.model.design.impl.RetoningImpl <em>Retoning</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.design.impl.RetoningImpl
         * @see org.pollex.model.design.impl.DesignPackageImpl#getRetoning()
         * @generated
         */
        EClass RETONING = eINSTANCE.getRetoning();

        /**
         * The meta object literal for the '<em><b>Mark</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute RETONING__MARK = eINSTANCE.getRetoning_Mark();

        /**
         * The meta object literal for the '<em><b>Sha256</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute RETONING__SHA256 = eINSTANCE.getRetoning_Sha256();

        /**
         * The meta object literal for the '<em><b>Made</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute RETONING__MADE = eINSTANCE.getRetoning_Made();

        /**
         * The meta object literal for the '<em><b>Choices</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute RETONING__CHOICES = eINSTANCE.getRetoning_Choices();

        /**
         * The meta object literal for the '<em><b>Keyline</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute RETONING__KEYLINE = eINSTANCE.getRetoning_Keyline();

        /**
         * The meta object literal for the '<em><b>Grow</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute RETONING__GROW = eINSTANCE.getRetoning_Grow();

        /**
         * The meta object literal for the '<em><b>Apart</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute RETONING__APART = eINSTANCE.getRetoning_Apart();

        /**
         * The meta object literal for the '<em><b>X</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute RETONING__X = eINSTANCE.getRetoning_X();

        /**
         * The meta object literal for the '<em><b>Y</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute RETONING__Y = eINSTANCE.getRetoning_Y();

        /**
         * The meta object literal for the '<em><b>Scale</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute RETONING__SCALE = eINSTANCE.getRetoning_Scale();

        /**
         * The meta object literal for the '<em><b>Turn</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute RETONING__TURN = eINSTANCE.getRetoning_Turn();

        /**
         * The meta object literal for the '<em><b>Mirror</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute RETONING__MIRROR = eINSTANCE.getRetoning_Mirror();

        /**
         * The meta object literal for the '{@link org.pollex.model.design.impl.AssignmentImpl <em>Assignment</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.design.impl.AssignmentImpl
         * @see org.pollex.model.design.impl.DesignPackageImpl#getAssignment()
         * @generated
         */
        EClass ASSIGNMENT = eINSTANCE.getAssignment();

        /**
         * The meta object literal for the '<em><b>Colour</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute ASSIGNMENT__COLOUR = eINSTANCE.getAssignment_Colour();

        /**
         * The meta object literal for the '<em><b>Ink</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute ASSIGNMENT__INK = eINSTANCE.getAssignment_Ink();

        /**
         * The meta object literal for the '{@link org.pollex.model.design.impl.TextLineImpl <em>Text Line</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.design.impl.TextLineImpl
         * @see org.pollex.model.design.impl.DesignPackageImpl#getTextLine()
         * @generated
         */
        EClass TEXT_LINE = eINSTANCE.getTextLine();

        /**
         * The meta object literal for the '<em><b>Text</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute TEXT_LINE__TEXT = eINSTANCE.getTextLine_Text();

        /**
         * The meta object literal for the '<em><b>Font</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute TEXT_LINE__FONT = eINSTANCE.getTextLine_Font();

        /**
         * The meta object literal for the '<em><b>Bold</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute TEXT_LINE__BOLD = eINSTANCE.getTextLine_Bold();

        /**
         * The meta object literal for the '<em><b>Italic</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute TEXT_LINE__ITALIC = eINSTANCE.getTextLine_Italic();

        /**
         * The meta object literal for the '<em><b>Size</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute TEXT_LINE__SIZE = eINSTANCE.getTextLine_Size();

        /**
         * The meta object literal for the '<em><b>Spacing</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute TEXT_LINE__SPACING = eINSTANCE.getTextLine_Spacing();

        /**
         * The meta object literal for the '<em><b>Ink</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute TEXT_LINE__INK = eINSTANCE.getTextLine_Ink();

        /**
         * The meta object literal for the '{@link org.pollex.model.design.impl.PlainShapeImpl <em>Plain Shape</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.design.impl.PlainShapeImpl
         * @see org.pollex.model.design.impl.DesignPackageImpl#getPlainShape()
         * @generated
         */
        EClass PLAIN_SHAPE = eINSTANCE.getPlainShape();

        /**
         * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute PLAIN_SHAPE__KIND = eINSTANCE.getPlainShape_Kind();

        /**
         * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute PLAIN_SHAPE__WIDTH = eINSTANCE.getPlainShape_Width();

        /**
         * The meta object literal for the '<em><b>Height</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute PLAIN_SHAPE__HEIGHT = eINSTANCE.getPlainShape_Height();

        /**
         * The meta object literal for the '<em><b>Line Width</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute PLAIN_SHAPE__LINE_WIDTH = eINSTANCE.getPlainShape_LineWidth();

        /**
         * The meta object literal for the '<em><b>Ink</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute PLAIN_SHAPE__INK = eINSTANCE.getPlainShape_Ink();

        /**
         * The meta object literal for the '{@link org.pollex.model.design.impl.UnknownMarkImpl <em>Unknown Mark</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.design.impl.UnknownMarkImpl
         * @see org.pollex.model.design.impl.DesignPackageImpl#getUnknownMark()
         * @generated
         */
        EClass UNKNOWN_MARK = eINSTANCE.getUnknownMark();

        /**
         * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute UNKNOWN_MARK__KIND = eINSTANCE.getUnknownMark_Kind();

        /**
         * The meta object literal for the '<em><b>Rest</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute UNKNOWN_MARK__REST = eINSTANCE.getUnknownMark_Rest();

        /**
         * The meta object literal for the '{@link org.pollex.model.design.impl.GuideImpl <em>Guide</em>}' class.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.design.impl.GuideImpl
         * @see org.pollex.model.design.impl.DesignPackageImpl#getGuide()
         * @generated
         */
        EClass GUIDE = eINSTANCE.getGuide();

        /**
         * The meta object literal for the '<em><b>Upright</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute GUIDE__UPRIGHT = eINSTANCE.getGuide_Upright();

        /**
         * The meta object literal for the '<em><b>At</b></em>' attribute feature.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @generated
         */
        EAttribute GUIDE__AT = eINSTANCE.getGuide_At();

        /**
         * The meta object literal for the '{@link org.pollex.model.design.ShapeKind <em>Shape Kind</em>}' enum.
         * <!-- begin-user-doc -->
         * <!-- end-user-doc -->
         * @see org.pollex.model.design.ShapeKind
         * @see org.pollex.model.design.impl.DesignPackageImpl#getShapeKind()
         * @generated
         */
        EEnum SHAPE_KIND = eINSTANCE.getShapeKind();

    }

} //DesignPackage
