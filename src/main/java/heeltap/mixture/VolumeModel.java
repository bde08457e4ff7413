package heeltap.mixture;

/**
 * The volume at 20 °C of any mixture of water, ethanol, sugar, acids and salt, from its masses alone.
 *
 * <p>V = V(water, ethanol) by OIML R 22 + Σ mᵢ φᵢ(xᵢ), where φᵢ is the apparent specific volume of the i-th dissolved
 * substance and xᵢ = mᵢ / (mᵢ + water + ethanol). So each pair with water comes out as its published table has it, and
 * several dissolved substances each add what they would add alone; twice the masses give exactly twice the volume. That
 * they do not disturb each other is an assumption: the φ of these substances change by less than a tenth over their whole
 * ranges. What is neither of the named substances (pulp, fat, egg white) counts as water here; {@link Mixtures} carries
 * its true volume along.
 */
final class VolumeModel {
    /** Dissolved substances hardly affect a mixture below this share of its mass. */
    private static final double A_TRACE = 0.02;
    /** Mass fraction of ethanol in the solvent, from which the volumes of dissolved substances in water say little. */
    private static final double STRONG = 0.60;

    private VolumeModel() {}

    /** ml. */
    static double volume(Contents contents) {
        double water = Math.max(0, contents.waterG());
        double solvent = water + contents.ethanolG();
        double citric = contents.citricG() + contents.otherAcidG();
        return EthanolWater.volume(water, contents.ethanolG())
                + contents.sugarG() * SucroseSolution.apparentVolume(share(contents.sugarG(), solvent))
                + contents.saltG() * SaltSolution.VOLUME.at(share(contents.saltG(), solvent))
                + citric * AcidSolution.CITRIC.at(share(citric, solvent))
                + contents.malicG() * AcidSolution.MALIC.at(share(contents.malicG(), solvent))
                + contents.tartaricG() * AcidSolution.TARTARIC_VOLUME;
    }

    /** Whether every part of the formula is used inside the range of its published table. */
    static boolean covers(Contents contents) {
        double solvent = Math.max(0, contents.waterG()) + contents.ethanolG();
        double dissolved = contents.sugarG() + contents.saltG() + contents.acidG();
        boolean tooStrong =
                contents.ethanolG() > STRONG * solvent && dissolved > A_TRACE * Math.max(contents.massG(), 0);
        return !tooStrong
                && share(contents.sugarG(), solvent) <= SucroseSolution.LIMIT
                && share(contents.saltG(), solvent) <= SaltSolution.VOLUME.limit()
                && share(contents.citricG() + contents.otherAcidG(), solvent) <= AcidSolution.CITRIC.limit()
                && share(contents.malicG(), solvent) <= AcidSolution.MALIC.limit()
                && share(contents.tartaricG(), solvent) <= AcidSolution.TARTARIC_LIMIT;
    }

    /** Mass fraction of a dissolved substance in itself and the solvent. */
    static double share(double soluteG, double solventG) {
        return soluteG == 0 ? 0 : soluteG / (soluteG + solventG);
    }
}
