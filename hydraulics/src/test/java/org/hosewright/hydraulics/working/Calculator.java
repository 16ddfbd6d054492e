package org.hosewright.hydraulics.working;

/** A pocket calculator for the numbers of a hand calculation: + − × / √ ² and brackets. */
final class Calculator {
    private final String text;
    private int at;

    private Calculator(String text) {
        this.text = text.replace(" ", "");
    }

    static double of(String numbers) {
        Calculator calculator = new Calculator(numbers);
        double value = calculator.sum();
        if (calculator.at != calculator.text.length()) {
            throw new IllegalArgumentException(numbers + " at " + calculator.at);
        }
        return value;
    }

    private double sum() {
        double value = take('\u2212') ? -product() : product();
        while (at < text.length() && text.charAt(at) != ')') {
            if (take('+')) {
                value += product();
            } else if (take('\u2212')) {
                value -= product();
            } else {
                throw new IllegalArgumentException(text + " at " + at);
            }
        }
        return value;
    }

    private double product() {
        double value = power();
        while (true) {
            if (take('\u00d7')) {
                value *= power();
            } else if (take('/')) {
                value /= power();
            } else {
                return value;
            }
        }
    }

    private double power() {
        double value = take('\u221a') ? Math.sqrt(atom()) : atom();
        return take('\u00b2') ? value * value : value;
    }

    private double atom() {
        if (take('(')) {
            double value = sum();
            if (!take(')')) {
                throw new IllegalArgumentException(text + " at " + at);
            }
            return value;
        }
        int start = at;
        while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
            at++;
        }
        return Double.parseDouble(text.substring(start, at));
    }

    private boolean take(char wanted) {
        boolean found = at < text.length() && text.charAt(at) == wanted;
        at += found ? 1 : 0;
        return found;
    }
}
