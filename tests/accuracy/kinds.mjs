/** The kinds of recording that are measured, and what of the truth their height is compared with. */
export const kinds = {
  heel: { placement: 'heel', heightOf: (repetition) => repetition.heelHeightM },
  foot: { placement: 'foot', heightOf: (repetition) => repetition.heelHeightM },
  'foot without gyroscope': {
    placement: 'foot',
    gyroscope: false,
    heightOf: (repetition) => repetition.heelHeightM,
  },
  trunk: { placement: 'trunk', heightOf: (repetition) => repetition.bodyRiseM },
  platform: { placement: 'platform', heightOf: (repetition) => repetition.bodyRiseM },
};

export const levels = ['clean', 'typical', 'hard', 'field', 'free'];

/** Tuning uses seeds below 10001; figures are reported from this one on, and nobody looks at those while tuning. */
export const firstSealedSeed = 30001;

/** The request to the simulator for one set. */
export function setRequest(kind, level, seed) {
  const { placement, gyroscope } = kinds[kind];
  return gyroscope === undefined ? { placement, level, seed } : { placement, level, seed, gyroscope };
}
