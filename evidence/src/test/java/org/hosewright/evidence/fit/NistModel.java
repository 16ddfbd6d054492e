package org.hosewright.evidence.fit;

/** The model functions of the NIST nonlinear regression sets, with their slopes by the parameters. */
enum NistModel {
    RISING {
        @Override
        double value(double[] b, double x, double[] slopes) {
            double fade = Math.exp(-b[1] * x);
            slopes[0] = 1 - fade;
            slopes[1] = b[0] * x * fade;
            return b[0] * (1 - fade);
        }
    },
    THREE_FADING {
        @Override
        double value(double[] b, double x, double[] slopes) {
            double sum = 0;
            for (int j = 0; j < 6; j += 2) {
                slopes[j] = Math.exp(-b[j + 1] * x);
                slopes[j + 1] = -b[j] * x * slopes[j];
                sum += b[j] * slopes[j];
            }
            return sum;
        }
    },
    TWO_FADING {
        @Override
        double value(double[] b, double x, double[] slopes) {
            slopes[0] = 1;
            slopes[1] = Math.exp(-x * b[3]);
            slopes[2] = Math.exp(-x * b[4]);
            slopes[3] = -b[1] * x * slopes[1];
            slopes[4] = -b[2] * x * slopes[2];
            return b[0] + b[1] * slopes[1] + b[2] * slopes[2];
        }
    },
    GROWTH {
        @Override
        double value(double[] b, double x, double[] slopes) {
            double inner = Math.exp(b[1] - b[2] * x);
            double power = Math.pow(1 + inner, -1 / b[3]);
            slopes[0] = power;
            slopes[1] = -b[0] * power / b[3] * inner / (1 + inner);
            slopes[2] = -x * slopes[1];
            slopes[3] = b[0] * power * Math.log(1 + inner) / (b[3] * b[3]);
            return b[0] * power;
        }
    },
    CUBIC_OVER_CUBIC {
        @Override
        double value(double[] b, double x, double[] slopes) {
            double above = b[0] + x * (b[1] + x * (b[2] + x * b[3]));
            double below = 1 + x * (b[4] + x * (b[5] + x * b[6]));
            double power = 1;
            for (int j = 0; j < 4; j++) {
                slopes[j] = power / below;
                power *= x;
            }
            power = x;
            for (int j = 4; j < 7; j++) {
                slopes[j] = -above * power / (below * below);
                power *= x;
            }
            return above / below;
        }
    },
    FADING_OVER_LINE {
        @Override
        double value(double[] b, double x, double[] slopes) {
            double fade = Math.exp(-b[0] * x);
            double below = b[1] + b[2] * x;
            slopes[0] = -x * fade / below;
            slopes[1] = -fade / (below * below);
            slopes[2] = x * slopes[1];
            return fade / below;
        }
    };

    /** The model's value.
     *
     * @param slopes takes the derivatives
     */
    abstract double value(double[] b, double x, double[] slopes);
}
