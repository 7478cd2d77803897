import { HopFigures } from './hops-figures.mjs';

export const hopPlacements = ['platform', 'foot'];
export const hopLevels = ['clean', 'typical', 'hard', 'field'];

/** Seeds below 10,000 tune; those from here on are touched to measure, and for nothing else. */
export const firstSealedHops = 61_001;

/** Figures of simulated hop series of one placement and level, with seeds from `from` on. */
export function measureHops({ simulation, analysis, protocol, placement, level, series, from }) {
  const figures = new HopFigures();
  for (let seed = from; seed < from + series; seed++) {
    const { trace, truth } = simulation.simulateHops({ placement, level, seed });
    const found = analysis.findHops(
      trace,
      { placement, parameters: protocol.parameters, ...(placement === 'foot' ? { bodyMassKg: truth.massKg } : {}) },
      analysis.hopDefaults,
    );
    figures.add({ seed, found, truth: truth.hops });
  }
  return figures;
}
