import type { HopProtocol } from '../hop-protocol.ts';

const practice = { version: '1', source: 'common practice, no source', mark: 'common-practice' } as const;

/** Single-leg hops in place at a pace of one's own. */
export const HOP_SERIES: HopProtocol = {
  ...practice,
  id: 'hop-series.own-pace',
  unit: '1',
  title: 'Repeated single-leg hops in place, 20 to 25, at a pace of one’s own',
  test: 'hop-series',
  parameters: {
    legs: { ...practice, id: 'hop.legs', unit: '1', value: 'single', allowed: ['single', 'double'] },
    cue: { ...practice, id: 'hop.cue', unit: '1', value: 'none', allowed: ['metronome', 'none'] },
    hopRate: { ...practice, id: 'hop.rate', unit: 'Hz', value: null, allowed: { least: 1, most: 4 } },
    hands: { ...practice, id: 'hop.hands', unit: '1', value: 'hips', allowed: ['hips', 'free'] },
    footwear: {
      ...practice,
      id: 'hop.footwear',
      unit: '1',
      value: 'shoe',
      allowed: ['barefoot', 'thin-sock', 'shoe'],
    },
    hopsLeast: { ...practice, id: 'hop.hops-least', unit: '1', value: 20, allowed: { least: 3, most: 100 } },
    hopsMost: { ...practice, id: 'hop.hops-most', unit: '1', value: 25, allowed: { least: 3, most: 100 } },
    analysedFrom: { ...practice, id: 'hop.analysed-from', unit: '1', value: 6, allowed: { least: 2, most: 50 } },
    analysedTo: { ...practice, id: 'hop.analysed-to', unit: '1', value: 20, allowed: { least: 3, most: 100 } },
    platformRateLeast: {
      ...practice,
      id: 'hop.platform-rate-least',
      unit: 'Hz',
      value: 500,
      allowed: { least: 200, most: 2000 },
    },
    footRateLeast: {
      ...practice,
      id: 'hop.foot-rate-least',
      unit: 'Hz',
      value: 200,
      allowed: { least: 100, most: 2000 },
    },
    entryValidRaises: {
      ...practice,
      id: 'hop.entry-valid-raises',
      unit: '1',
      value: 20,
      allowed: { least: 0, most: 100 },
    },
    entryPainMost: { ...practice, id: 'hop.entry-pain-most', unit: '1', value: 2, allowed: { least: 0, most: 10 } },
    entryFlareFree: { ...practice, id: 'hop.entry-flare-free', unit: 'd', value: 7, allowed: { least: 0, most: 90 } },
  },
  requiredSignals: ['force | acceleration with angular-velocity'],
  endConditions: ['fixed-count-done', 'fatigue', 'pain', 'other-stop', 'safety', 'technical'],
  outputs: ['count', 'contact', 'flight', 'height', 'ratio', 'stiffness', 'drift', 'hop-table', 'pain'],
  remarks: [
    'A late test: only with the safety list clear, 20 valid raises, pain of at most 2 and no flare for 7 days.',
    'Last of the day, or on another day.',
    'A hop ratio of the legs that looks normal is no clearance.',
  ],
};

/** The same to a beat of 2.2 hops a second. */
export const HOP_SERIES_BEAT: HopProtocol = {
  ...HOP_SERIES,
  id: 'hop-series.beat',
  title: 'Repeated single-leg hops in place, 20 to 25, to a beat of 2.2 a second',
  parameters: {
    ...HOP_SERIES.parameters,
    cue: { ...HOP_SERIES.parameters.cue, id: 'hop-beat.cue', value: 'metronome' },
    hopRate: { ...HOP_SERIES.parameters.hopRate, id: 'hop-beat.rate', value: 2.2 },
  },
  remarks: [...HOP_SERIES.remarks, 'Never pooled with hops at another pace: stiffness follows the pace.'],
};

/** Every protocol of repeated hops, the default first. */
export const HOP_PROTOCOLS: readonly HopProtocol[] = [HOP_SERIES, HOP_SERIES_BEAT];
