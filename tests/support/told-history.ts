import { noHistory, type VisitHistory } from '@surae/casebook';

const { left, right } = noHistory.legs;

/** Answers of the step before a visit's test: some given, the others not asked. */
export const toldHistory: VisitHistory = {
  legs: {
    left: { ...left, injury: 'over-a-year', confirmed: true },
    right: { ...right, irritability: { ...right.irritability, peakPain: 4, flare: 'no' } },
  },
  about: ['one-sided-sport'],
};
