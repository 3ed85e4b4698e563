/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.arrange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which shapes hold a place, from its winding numbers. Shapes are the groups 0 and up, lowest first; clips the groups
 * after them. A place's winding numbers are pairs of group and winding, by rising group, none 0.
 */
final class ShapeStack {

    private static final int[] NOWHERE = {};

    private final int shapes;
    private final boolean[] evenOdd;
    private final boolean[] covers;
    private final int[][] clips;
    private final FacePainter painter;
    private final int[] stack;

    ShapeStack(List<PaintedShape> list, FacePainter painter) {
        this.shapes = list.size();
        this.painter = painter;
        List<ClipShape> distinct = clips(list);
        Map<ClipShape, Integer> groups = new IdentityHashMap<>();
        evenOdd = new boolean[shapes + distinct.size()];
        for (ClipShape clip : distinct) {
            evenOdd[shapes + groups.size()] = clip.evenOdd();
            groups.put(clip, shapes + groups.size());
        }
        covers = new boolean[shapes];
        clips = new int[shapes][];
        for (int s = 0; s < shapes; s++) {
            PaintedShape shape = list.get(s);
            evenOdd[s] = shape.evenOdd();
            covers[s] = shape.covers();
            clips[s] = shape.clips().stream().mapToInt(groups::get).toArray();
        }
        stack = new int[shapes];
    }

    /** Every clip once, in the order in which they come; clip i is the group after the shapes and i more clips. */
    static List<ClipShape> clips(List<PaintedShape> list) {
        Map<ClipShape, Boolean> seen = new IdentityHashMap<>();
        List<ClipShape> clips = new ArrayList<>();
        for (PaintedShape shape : list) {
            for (ClipShape clip : shape.clips()) {
                if (seen.put(clip, true) == null) {
                    clips.add(clip);
                }
            }
        }
        return clips;
    }

    static int[] nowhere() {
        return NOWHERE;
    }

    /** The windings on the far side of an edge. */
    static int[] cross(int[] place, WoundEdges edges, int edge) {
        int k = edges.start[edge];
        int end = edges.start[edge + 1];
        int[] sum = new int[place.length + 2 * (end - k)];
        int n = 0;
        int i = 0;
        while (i < place.length || k < end) {
            int group;
            int turn;
            if (k == end || i < place.length && place[i] < edges.group[k]) {
                group = place[i];
                turn = place[i + 1];
                i += 2;
            } else {
                group = edges.group[k];
                turn = edges.turn[k++];
                if (i < place.length && place[i] == group) {
                    turn += place[i + 1];
                    i += 2;
                }
            }
            if (turn != 0) {
                sum[n++] = group;
                sum[n++] = turn;
            }
        }
        return n == 0 ? NOWHERE : n == sum.length ? sum : Arrays.copyOf(sum, n);
    }

    /** The label of a place. */
    int label(int[] place) {
        int count = 0;
        int i = place.length - 2;
        while (i >= 0 && place[i] >= shapes) {
            i -= 2;
        }
        int firstClip = i + 2;
        for (; i >= 0; i -= 2) {
            int shape = place[i];
            if (inside(shape, place[i + 1]) && insideClips(shape, place, firstClip)) {
                stack[count++] = shape;
                if (covers[shape]) {
                    break;
                }
            }
        }
        return count == 0 ? 0 : painter.label(stack, count);
    }

    private boolean inside(int group, int turn) {
        return !evenOdd[group] || (turn & 1) != 0;
    }

    private boolean insideClips(int shape, int[] place, int from) {
        for (int clip : clips[shape]) {
            boolean found = false;
            for (int i = from; i < place.length && !found; i += 2) {
                found = place[i] == clip && inside(clip, place[i + 1]);
            }
            if (!found) {
                return false;
            }
        }
        return true;
    }
}
