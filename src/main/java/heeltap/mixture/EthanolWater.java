package heeltap.mixture;

import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Mixtures of ethanol and water.
 *
 * <p>ρ(p, t) = A₁ + Σ Aₖ pᵏ⁻¹ + Σ Bₖ (t-20)ᵏ + Σ Σ Cᵢₖ pᵏ (t-20)ⁱ in kg/m³, p the mass fraction of ethanol and t in °C,
 * valid from -20 to +40 °C. Source: OIML R 22 (1975), International alcoholometric tables; the same formula stands in the
 * Annex to Council Directive 76/766/EEC.
 */
final class EthanolWater {
    private static final double[] A = {
        998.20123,
        -192.9769495,
        389.1238958,
        -1668.103923,
        13522.15441,
        -88292.78388,
        306287.4042,
        -613838.1234,
        747017.2998,
        -547846.1354,
        223446.0334,
        -39032.85426
    };
    private static final double[] B = {
        0, -0.20618513, -0.0052682542, 3.6130013e-05, -3.8957702e-07, 7.169354e-09, -9.9739231e-11
    };
    /** Row i holds the factors of pᵏ (t-20)ⁱ⁺¹, k from 0. */
    private static final double[][] C = {
        {
            0,
            0.1693443461530087,
            -10.46914743455169,
            71.96353469546523,
            -704.7478054272792,
            3924.090430035045,
            -12101.64659068747,
            22486.46550400788,
            -26055.62982188164,
            18523.73922069467,
            -7420.201433430137,
            1285.617841998974
        },
        {
            0,
            -0.0119301300505701,
            0.2517399633803461,
            -2.170575700536993,
            13.53034988843029,
            -50.29988758547014,
            109.635566657757,
            -142.2753946421155,
            108.043594285623,
            -44.14153236817392,
            7.442971530188783
        },
        {
            0,
            -0.0006802995733503803,
            0.01876837790289664,
            -0.2002561813734156,
            1.02299296671922,
            -2.895696483903638,
            4.810060584300675,
            -4.672147440794683,
            2.458043105903461,
            -0.5411227621436812
        },
        {0, 4.075376675622027e-06, -8.76305857347111e-06, 6.515031360099368e-06, -1.51578483698721e-06},
        {0, -2.788074354782409e-08, 1.345612883493354e-08}
    };

    private EthanolWater() {}

    /** g/ml of a mixture with this mass fraction of ethanol, 0 to 1, at a temperature of -20 to +40 °C. */
    static double density(double massFraction, double celsius) {
        double above20 = celsius - 20;
        double sum = polynomial(A, massFraction) + polynomial(B, above20);
        double power = 1;
        for (double[] row : C) {
            power *= above20;
            sum += polynomial(row, massFraction) * power;
        }
        return sum / 1000;
    }

    /** g/ml at 20 °C. */
    static double density(double massFraction) {
        return density(massFraction, 20);
    }

    /** ml at 20 °C that so many g of water and of ethanol fill together. */
    static double volume(double waterG, double ethanolG) {
        double mass = waterG + ethanolG;
        return mass == 0 ? 0 : mass / density(ethanolG / mass);
    }

    /** Alcohol by volume in percent at a temperature: q = 100 p ρ(p, t) / ρ(1, t). */
    static double abvPercent(double massFraction, double celsius) {
        return 100 * massFraction * density(massFraction, celsius) / density(1, celsius);
    }

    /** Mass fraction of ethanol of a mixture with this alcohol by volume, 0 to 100 %, at a temperature. */
    static double massFraction(double abvPercent, double celsius) {
        if (abvPercent <= 0) {
            return 0;
        }
        if (abvPercent >= 100) {
            return 1;
        }
        return new BrentSolver(1e-15, 1e-16)
                .solve(200, fraction -> abvPercent(fraction, celsius) - abvPercent, 0, 1, abvPercent / 125);
    }

    /**
     * How much less the mixture fills than its parts did, in ml at 20 °C: volume of the water alone and of the ethanol
     * alone less the volume together.
     */
    static double contraction(double waterG, double ethanolG) {
        return volume(waterG, 0) + volume(0, ethanolG) - volume(waterG, ethanolG);
    }

    static double polynomial(double[] coefficients, double x) {
        double sum = 0;
        for (int i = coefficients.length - 1; i >= 0; i--) {
            sum = sum * x + coefficients[i];
        }
        return sum;
    }
}
