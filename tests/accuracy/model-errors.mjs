/** Uncertainty of a heel lever measured with a tape, as a share of a lever of 185 mm; common practice, no source. */
const leverSpread = 5 / 185;
/** The pivot moves towards the toes late in the rise: an error of up to this share of the height; common practice, no source. */
const greatestMigration = 0.1;

/** Amounts of the errors of the body model for one seed, as wide as the uncertainties that the instrument states for them. */
export function modelErrors(seed) {
  return { leverError: leverSpread, pivotMigration: greatestMigration * ((seed * 0.6180339887498949) % 1) };
}
