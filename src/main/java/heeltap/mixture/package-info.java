/**
 * What a liquid is made of: density, alcohol, sugar, acids and salt.
 *
 * <p>An {@link heeltap.mixture.Analysis} says what is known of an ingredient, {@link
 * heeltap.mixture.PublishedComposition} what published tables say of it; both give {@link heeltap.mixture.Contents} of one
 * ml or g, which {@link heeltap.mixture.Mixtures} adds up by one volume model. {@link heeltap.mixture.TargetSolver} turns
 * the model round, {@link heeltap.mixture.IceDilution} adds the water of ice. Everything is at 20 °C; masses in g,
 * volumes in ml.
 *
 * <p>What it leaves out: invert sugar and other sugars count as sucrose, heat and gas are not followed, alcohol lowers no
 * solubility, and fat, pulp and protein count as water but for the volume that a typed density gives them.
 */
@NullMarked
package heeltap.mixture;

import org.jspecify.annotations.NullMarked;
