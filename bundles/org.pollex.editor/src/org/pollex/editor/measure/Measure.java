/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.measure;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Which number does a person mean who writes {@code 3/8in}, {@code 12,5 mm}, {@code 2*1.5+0.25} or {@code 40%}?
 *
 * <p>Sums, products, quotients, signs and brackets; a unit follows the number or bracket it belongs to, and a fraction
 * such as {@code 3/8in} is in the unit behind it. Numbers without a unit are in the unit of the field. A decimal point
 * may be a comma. Percent are of the present value.
 */
public final class Measure {

    /** What a field holds. */
    public enum Kind {
        /** Millimetres. */
        LENGTH,
        /** Degrees, clockwise. */
        TURN,
        /** A plain number, such as a share. */
        NUMBER
    }

    /** Millimetres; an inch is exactly 25.4 mm, a point of desktop publishing 1/72 inch (CSS Values 4, 6.2). */
    private static final Map<String, Double> LENGTHS = Map.of("mm", 1.0, "cm", 10.0, "m", 1000.0, "um", 0.001,
            "µm", 0.001, "in", 25.4, "\"", 25.4, "pt", 25.4 / 72);
    private static final Map<String, Double> TURNS = Map.of("°", 1.0, "deg", 1.0, "turn", 360.0);
    private static final int DEEPEST = 40;

    private final String text;
    private final Kind kind;
    private final double present;
    private final double bare;
    private int at;
    private int depth;

    private Measure(String text, Kind kind, double present, double bare) {
        this.text = text;
        this.kind = kind;
        this.present = present;
        this.bare = bare;
    }

    /** A value, and whether it carries a unit already. */
    private record Value(double number, boolean unit) {
    }

    /**
     * Reads what was typed into a field that counts in mm, degrees or plain numbers.
     *
     * @param text     what the field says
     * @param kind     what the field holds
     * @param present  its value now, which percent refer to
     * @return millimetres, degrees or a plain number
     * @throws MeasureException when it cannot be understood, or is not a finite number
     */
    public static double read(String text, Kind kind, double present) throws MeasureException {
        return read(text, kind, present, 1);
    }

    /**
     * Reads what was typed.
     *
     * @param text     what the field says
     * @param kind     what the field holds
     * @param present  its value now, which percent refer to
     * @param bare     what 1 without a unit means, such as 25.4 mm in a field that counts in inches
     * @return millimetres, degrees or a plain number
     * @throws MeasureException when it cannot be understood, or is not a finite number
     */
    public static double read(String text, Kind kind, double present, double bare) throws MeasureException {
        Measure measure = new Measure(text.strip().toLowerCase(Locale.ROOT), kind, present, bare);
        if (measure.text.isEmpty()) {
            throw new MeasureException("Write " + measure.example() + ".");
        }
        double value = measure.full(measure.sum()).number();
        if (measure.at < measure.text.length()) {
            throw measure.notUnderstood();
        }
        if (!Double.isFinite(value)) {
            throw new MeasureException("The result is not a number; do not divide by zero.");
        }
        return value;
    }

    /** A number as a field shows it: at most three decimals, no needless zeros. */
    public static String show(double value) {
        String shown = String.format(Locale.ROOT, "%.3f", value);
        int end = shown.length();
        while (shown.charAt(end - 1) == '0') {
            end--;
        }
        if (shown.charAt(end - 1) == '.') {
            end--;
        }
        String cut = shown.substring(0, end);
        return "-0".equals(cut) ? "0" : cut;
    }

    private String example() {
        return switch (kind) {
            case LENGTH -> "a length such as 12.5 mm, 3/8in or 10pt";
            case TURN -> "a turn such as 45 or -22.5 deg";
            case NUMBER -> "a number such as 1.5";
        };
    }

    private MeasureException notUnderstood() {
        String rest = text.substring(at);
        return new MeasureException((rest.isEmpty() ? "Something is missing at the end" : "\"" + rest
                + "\" is not understood") + "; write " + example() + ".");
    }

    /** A number without a unit is in the unit of the field. */
    private Value full(Value value) {
        return value.unit() ? value : new Value(value.number() * bare, true);
    }

    private Value sum() throws MeasureException {
        Value left = product();
        while (true) {
            if (take('+')) {
                Value right = product();
                left = left.unit() == right.unit() ? new Value(left.number() + right.number(), left.unit())
                        : new Value(full(left).number() + full(right).number(), true);
            } else if (take('-') || take('−')) {
                Value right = product();
                left = left.unit() == right.unit() ? new Value(left.number() - right.number(), left.unit())
                        : new Value(full(left).number() - full(right).number(), true);
            } else {
                return left;
            }
        }
    }

    private Value product() throws MeasureException {
        Value left = signed();
        while (true) {
            if (take('*') || take('×')) {
                Value right = signed();
                if (left.unit() && right.unit()) {
                    throw new MeasureException("A length times a length is no length; leave one unit out.");
                }
                left = new Value(left.number() * right.number(), left.unit() || right.unit());
            } else if (take('/')) {
                left = quotient(left, signed());
            } else {
                return left;
            }
        }
    }

    private Value quotient(Value left, Value right) {
        // 3/8in is three eighths of an inch: the unit behind the fraction is that of the whole of it
        boolean fraction = right.unit() && !left.unit();
        double unit = fraction ? lastUnit : 1;
        return new Value(left.number() / right.number() * unit * unit, left.unit() != right.unit());
    }

    private double lastUnit = 1;

    private Value signed() throws MeasureException {
        if (++depth > DEEPEST) {
            throw new MeasureException("This is nested too deep; write it in a simpler way.");
        }
        try {
            if (take('-') || take('−')) {
                Value value = signed();
                return new Value(-value.number(), value.unit());
            }
            if (take('+')) {
                return signed();
            }
            return atom();
        } finally {
            depth--;
        }
    }

    private Value atom() throws MeasureException {
        Value value;
        if (take('(')) {
            value = sum();
            if (!take(')')) {
                throw new MeasureException("A closing bracket is missing.");
            }
        } else {
            value = new Value(number(), false);
        }
        return withUnit(value);
    }

    private double number() throws MeasureException {
        blanks();
        int start = at;
        int marks = 0;
        while (at < text.length() && (digit(text.charAt(at)) || mark(text.charAt(at)))) {
            marks += mark(text.charAt(at)) ? 1 : 0;
            at++;
        }
        String digits = text.substring(start, at);
        if (marks > 1) {
            throw new MeasureException("\"" + digits + "\" has more than one decimal point.");
        }
        if (digits.length() == marks) {
            at = start;
            throw notUnderstood();
        }
        return Double.parseDouble(digits.replace(',', '.'));
    }

    private Value withUnit(Value value) throws MeasureException {
        blanks();
        if (take('%')) {
            return new Value(value.number() / 100 * present, true);
        }
        int start = at;
        int end = at;
        while (end < text.length() && unitLetter(text.charAt(end))) {
            end++;
        }
        String unit = text.substring(start, end);
        if (unit.isEmpty()) {
            return value;
        }
        Optional<Double> factor = Optional.ofNullable(switch (kind) {
            case LENGTH -> LENGTHS.get(unit.replace('μ', 'µ'));
            case TURN -> TURNS.get(unit);
            case NUMBER -> null;
        });
        if (factor.isEmpty()) {
            throw notUnderstood();
        }
        if (value.unit()) {
            throw new MeasureException("There are two units where one is enough.");
        }
        at = end;
        lastUnit = factor.get();
        return new Value(value.number() * factor.get(), true);
    }

    private static boolean unitLetter(char c) {
        return Character.isLetter(c) || c == '"' || c == '°';
    }

    private static boolean digit(char c) {
        return c >= '0' && c <= '9';
    }

    private static boolean mark(char c) {
        return c == '.' || c == ',';
    }

    private void blanks() {
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
    }

    private boolean take(char c) {
        blanks();
        if (at < text.length() && text.charAt(at) == c) {
            at++;
            return true;
        }
        return false;
    }
}
