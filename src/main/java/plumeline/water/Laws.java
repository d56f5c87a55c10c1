package plumeline.water;

/// The formulas, in their sources' letters. No range is checked here: that is for those who call.
final class Laws {
    static final double ZERO_CELSIUS_KELVIN = 273.15;

    /// Molar gas constant over the molar mass of water, J/(kg K): 8.314462618/0.018015268.
    static final double VAPOUR_CONSTANT = 461.52308;

    private static final double T_CRITICAL = 647.096;
    private static final double RHO_CRITICAL = 322.0;

    private static final double[] H0 = {1.67752, 2.20462, 0.6366564, -0.241605};

    /// Rows: powers of (1/T̄ − 1), columns: powers of (ρ̄ − 1).
    private static final double[][] H1 = {
        {5.20094e-1, 2.22531e-1, -2.81378e-1, 1.61913e-1, -3.25372e-2, 0, 0},
        {8.50895e-2, 9.99115e-1, -9.06851e-1, 2.57399e-1, 0, 0, 0},
        {-1.08374, 1.88797, -7.72479e-1, 0, 0, 0, 0},
        {-2.89555e-1, 1.26613, -4.89837e-1, 0, 6.98452e-2, 0, -4.35673e-3},
        {0, 0, -2.57040e-1, 0, 0, 8.72102e-3, 0},
        {0, 1.20573e-1, 0, 0, 0, 0, -5.93264e-4}
    };

    private static final double[] N4 = {
        1167.0521452767,
        -724213.16703206,
        -17.073846940092,
        12020.82470247,
        -3232555.0322333,
        14.91510861353,
        -4823.2657361591,
        405113.40542057,
        -0.23855557567849,
        650.17534844798
    };

    /// International alcoholometry: rows of powers of (t − 20), from 0 on; columns of powers of the mass share, from 0
    /// on.
    private static final double[][] SPIRIT = {
        {
            9.982012300e2, -1.929769495e2, 3.891238958e2, -1.668103923e3, 1.352215441e4, -8.829278388e4,
            3.062874042e5, -6.138381234e5, 7.470172998e5, -5.478461354e5, 2.234460334e5, -3.903285426e4
        },
        {
            -2.0618513e-1,
            1.693443461530087e-1,
            -1.046914743455169e1,
            7.196353469546523e1,
            -7.047478054272792e2,
            3.924090430035045e3,
            -1.210164659068747e4,
            2.248646550400788e4,
            -2.605562982188164e4,
            1.852373922069467e4,
            -7.420201433430137e3,
            1.285617841998974e3
        },
        {
            -5.2682542e-3,
            -1.193013005057010e-2,
            2.517399633803461e-1,
            -2.170575700536993,
            1.353034988843029e1,
            -5.029988758547014e1,
            1.096355666577570e2,
            -1.422753946421155e2,
            1.080435942856230e2,
            -4.414153236817392e1,
            7.442971530188783
        },
        {
            3.6130013e-5,
            -6.802995733503803e-4,
            1.876837790289664e-2,
            -2.002561813734156e-1,
            1.022992966719220,
            -2.895696483903638,
            4.810060584300675,
            -4.672147440794683,
            2.458043105903461,
            -5.411227621436812e-1
        },
        {-3.8957702e-7, 4.075376675622027e-6, -8.763058573471110e-6, 6.515031360099368e-6, -1.515784836987210e-6},
        {7.1693540e-9, -2.788074354782409e-8, 1.345612883493354e-8},
        {-9.9739231e-11}
    };

    private static final double[] SUBLIMATION_A = {-21.2144006, 27.3203819, -6.10598130};
    private static final double[] SUBLIMATION_B = {0.00333333333, 1.20666667, 1.70333333};

    private Laws() {}

    /// Density of air-free water at 101325 Pa, kg/m³; t in degC. Tanaka and others 2001, equation 1.
    static double tanaka(double t) {
        double a = t - 3.983035;
        return 999.974950 * (1 - a * a * (t + 301.797) / (522528.9 * (t + 69.34881)));
    }

    /// Viscosity, Pa s; T in K, rho in kg/m³. IAPWS R12-08, equations 10 to 12, without the enhancement near the
    /// critical point, which is nothing in liquid water.
    static double viscosity(double T, double rho) {
        double tBar = T / T_CRITICAL;
        double rhoBar = rho / RHO_CRITICAL;
        double dilute = 0;
        for (int i = 0; i < H0.length; i++) {
            dilute += H0[i] / Math.pow(tBar, i);
        }
        double sum = 0;
        for (int i = 0; i < H1.length; i++) {
            double inner = 0;
            for (int j = 0; j < H1[i].length; j++) {
                inner += H1[i][j] * Math.pow(rhoBar - 1, j);
            }
            sum += Math.pow(1 / tBar - 1, i) * inner;
        }
        return 1e-6 * (100 * Math.sqrt(tBar) / dilute) * Math.exp(rhoBar * sum);
    }

    /// Surface tension against its vapour, N/m; T in K. IAPWS R1-76(2014).
    static double surfaceTension(double T) {
        double tau = 1 - T / T_CRITICAL;
        return 0.2358 * Math.pow(tau, 1.256) * (1 - 0.625 * tau);
    }

    /// Refractive index against a vacuum; T in K, rho in kg/m³, lambda in µm. IAPWS R9-97, equation 1.
    static double refractiveIndex(double T, double rho, double lambda) {
        double t = T / 273.15;
        double r = rho / 1000;
        double l2 = Math.pow(lambda / 0.589, 2);
        double uv2 = 0.2292020 * 0.2292020;
        double ir2 = 5.432937 * 5.432937;
        double sum = 0.244257733
                + 9.74634476e-3 * r
                - 3.73234996e-3 * t
                + 2.68678472e-4 * l2 * t
                + 1.58920570e-3 / l2
                + 2.45934259e-3 / (l2 - uv2)
                + 0.900704920 / (l2 - ir2)
                - 1.66626219e-2 * r * r;
        return indexOf(r * sum);
    }

    /// (n² − 1)/(n² + 2).
    static double refraction(double n) {
        return (n * n - 1) / (n * n + 2);
    }

    /// n of (n² − 1)/(n² + 2).
    static double indexOf(double refraction) {
        return Math.sqrt((1 + 2 * refraction) / (1 - refraction));
    }

    /// Saturation pressure over liquid, Pa; T in K. IAPWS R7-97, equation 30.
    static double saturation(double T) {
        double theta = T + N4[8] / (T - N4[9]);
        double a = theta * theta + N4[0] * theta + N4[1];
        double b = N4[2] * theta * theta + N4[3] * theta + N4[4];
        double c = N4[5] * theta * theta + N4[6] * theta + N4[7];
        return 1e6 * Math.pow(2 * c / (-b + Math.sqrt(b * b - 4 * a * c)), 4);
    }

    /// Saturation temperature, K; p in Pa. IAPWS R7-97, equation 31.
    static double saturationTemperature(double p) {
        double beta = Math.pow(p / 1e6, 0.25);
        double e = beta * beta + N4[2] * beta + N4[5];
        double f = N4[0] * beta * beta + N4[3] * beta + N4[6];
        double g = N4[1] * beta * beta + N4[4] * beta + N4[7];
        double d = 2 * g / (-f - Math.sqrt(f * f - 4 * e * g));
        double s = N4[9] + d;
        return (s - Math.sqrt(s * s - 4 * (N4[8] + N4[9] * d))) / 2;
    }

    /// Saturation pressure over liquid water, also below freezing, Pa; t in degC. WMO-No. 8, annex 4.B.
    static double magnus(double t) {
        return 611.2 * Math.exp(17.62 * t / (243.12 + t));
    }

    /// Where [#magnus] gives p, degC; p in Pa.
    static double magnusTemperature(double p) {
        double x = Math.log(p / 611.2);
        return 243.12 * x / (17.62 - x);
    }

    /// Saturation pressure over ice, Pa; T in K. IAPWS R14-08, equation 6.
    static double sublimation(double T) {
        double theta = T / 273.16;
        double sum = 0;
        for (int i = 0; i < SUBLIMATION_A.length; i++) {
            sum += SUBLIMATION_A[i] * Math.pow(theta, SUBLIMATION_B[i]);
        }
        return 611.657 * Math.exp(sum / theta);
    }

    /// Diffusivity of water vapour in air at one atmosphere, m²/s; T in K. Massman 1998.
    static double vapourDiffusivity(double T) {
        return 0.2178e-4 * Math.pow(T / ZERO_CELSIUS_KELVIN, 1.81);
    }

    /// Density of a solution, kg/m³; w mass fraction, t in degC, c the solute's five constants. Laliberté 2009,
    /// equations 5 and 6, on Tanaka's water.
    static double laliberteDensity(double w, double t, double[] c) {
        double volume = (w + c[2] + c[3] * t) / ((c[0] * w + c[1]) * Math.exp(1e-6 * (t + c[4]) * (t + c[4])));
        return 1 / ((1 - w) / tanaka(t) + w * volume);
    }

    /// Viscosity of a solution, Pa s; w mass fraction, t in degC, v the solute's six constants. Laliberté 2009,
    /// equations 11 and 12, on the water of IAPWS.
    static double laliberteViscosity(double w, double t, double[] v) {
        double solute =
                1e-3 * Math.exp((v[0] * Math.pow(w, v[1]) + v[2]) / (v[3] * t + 1)) / (v[4] * Math.pow(w, v[5]) + 1);
        double water = viscosity(t + ZERO_CELSIUS_KELVIN, tanaka(t));
        return Math.exp((1 - w) * Math.log(water) + w * Math.log(solute));
    }

    /// Density of sea water at one atmosphere, kg/m³; w mass fraction of sea salt, t in degC. Millero and Poisson 1981
    /// (UNESCO's equation of state of 1980), on Tanaka's water; practical salinity is 35/35.16504 of the grams a
    /// kilogram, its temperature scale that of 1968.
    static double seaDensity(double w, double t) {
        double s = 1000 * w * 35 / 35.16504;
        double t68 = 1.00024 * t;
        double first = polynomial(t68, 8.24493e-1, -4.0899e-3, 7.6438e-5, -8.2467e-7, 5.3875e-9);
        double second = polynomial(t68, -5.72466e-3, 1.0227e-4, -1.6546e-6);
        return tanaka(t) + s * (first + Math.sqrt(s) * second + 4.8314e-4 * s);
    }

    /// Viscosity of sea water, Pa s; w mass fraction of sea salt, t in degC. Sharqawy, Lienhard and Zubair 2010,
    /// equation 22, on the water of IAPWS.
    static double seaViscosity(double w, double t) {
        double first = polynomial(t, 1.541, 1.998e-2, -9.52e-5);
        double second = polynomial(t, 7.974, -7.561e-2, 4.724e-4);
        return viscosity(t + ZERO_CELSIUS_KELVIN, tanaka(t)) * (1 + w * (first + w * second));
    }

    /// Refractive index of sea water against air in sodium light; w mass fraction of sea salt, t in degC. Quan and Fry
    /// 1995, equation 3, at 589.3 nm.
    static double seaIndex(double w, double t) {
        double s = 1000 * w * 35 / 35.16504;
        double nanometres = 589.3;
        return 1.31405
                + s * polynomial(t, 1.779e-4, -1.05e-6, 1.6e-8)
                - 2.02e-6 * t * t
                + (15.868 + 0.01155 * s - 0.00423 * t) / nanometres
                - 4382 / (nanometres * nanometres)
                + 1.1455e6 / (nanometres * nanometres * nanometres);
    }

    /// Density of water and ethanol, kg/m³; w mass fraction of ethanol, t in degC. OIML R 22, 1975, general formula.
    static double spiritDensity(double w, double t) {
        double sum = 0;
        for (int i = SPIRIT.length - 1; i >= 0; i--) {
            sum = sum * (t - 20) + polynomial(w, SPIRIT[i]);
        }
        return sum;
    }

    private static double polynomial(double x, double... coefficients) {
        double sum = 0;
        for (int i = coefficients.length - 1; i >= 0; i--) {
            sum = sum * x + coefficients[i];
        }
        return sum;
    }

    /// Density of water and glycerine, kg/m³; w mass fraction of glycerine, t in degC. Volk and Kähler 2018.
    static double volk(double w, double t) {
        double glycerine = 1273.3 - 0.6121 * t;
        double water = 1000 * (1 - Math.pow(Math.abs(t - 3.98) / 615, 1.71));
        if (w <= 0) {
            return water;
        }
        double wave = Math.max(0, Math.sin(Math.pow(w, 1.31) * Math.PI));
        double shrinks = 1 + (1.78e-6 * t * t - 1.82e-4 * t + 1.41e-2) * Math.pow(wave, 0.81);
        return shrinks * (water + (glycerine - water) / (1 + glycerine / water * (1 / w - 1)));
    }

    /// Viscosity of water and glycerine, Pa s; w mass fraction of glycerine, t in degC. Cheng 2008.
    static double cheng(double w, double t) {
        double water = 1.790 * Math.exp((-1230 - t) * t / (36100 + 360 * t));
        double glycerine = 12100 * Math.exp((-1233 + t) * t / (9900 + 70 * t));
        double a = 0.705 - 0.0017 * t;
        double b = (4.9 + 0.036 * t) * Math.pow(a, 2.5);
        double alpha = 1 - w + a * b * w * (1 - w) / (a * w + b * (1 - w));
        return 1e-3 * Math.pow(water, alpha) * Math.pow(glycerine, 1 - alpha);
    }

    /// Water's activity over water and glycerine, fraction of one; w mass fraction of glycerine below 1, T in K.
    /// Wilson's form with the constants of Zhang, Grace and Sun 2022, as a public code has it; within 0.02 of the
    /// humidities kept over glycerine in closed boxes.
    static double activity(double w, double T) {
        double moles = w / 92.094 / (w / 92.094 + (1 - w) / 18.0153);
        double q = moles / (1 - moles);
        double ratio = 0.08685 / 0.0188311;
        double first = Math.exp(-(0.89924067 + 127.07511 / T));
        double second = Math.exp(-(-1.9173013 + 91.465969 / T));
        double logarithm = -Math.log(1 + ratio * q * first)
                + q / (1 / (ratio * first) + q)
                - q * ratio * first / (q + second / ratio);
        return Math.exp(logarithm);
    }
}
