import { type Detection, defaultSettings, judge, type Raise } from '@surae/analysis';
import { PROTOCOLS } from '@surae/shared';
import type { Assessed, Refused } from '@surae/study';
import { NOTHING_GIVEN } from '../../packages/study/src/listed/work-list.ts';

export { NOTHING_GIVEN };

/** A raise every two seconds, on the beat: one second of standing, then up, held, down. */
function raise(index: number, heightM: number): Raise {
  const startS = 1 + 2 * index;
  return {
    startS,
    startUS: 0.02,
    topS: startS + 0.8,
    topUS: 0.02,
    endS: startS + 1.6,
    endUS: 0.02,
    highFromS: startS + 0.7,
    highToS: startS + 0.9,
    heightM,
    heightUM: 0.002,
    lowBeforeM: 0,
    lowAfterM: 0,
    probability: 1,
    longestGapS: 0.01,
    topInGap: false,
  };
}

/** A set of the heel with the heights given, judged by the default protocol; person and visit come from a manifest. */
export function handMadeOutcome(heightsMm: readonly number[], bodyMassKg?: number): Assessed {
  const raises = heightsMm.map((heightMm, index) => raise(index, heightMm / 1000));
  const protocol = PROTOCOLS[0];
  const detection: Detection = {
    raises,
    doubtful: [{ startS: 0.2, topS: 0.4, endS: 0.6, heightM: 0.008, probability: 0.02, reason: 'too-small' }],
    countLow: raises.length,
    countHigh: raises.length + 1,
    motion: {
      kind: 'heel-height',
      startS: 0,
      sampleRateHz: 50,
      heightM: new Float64Array(100 * raises.length + 100),
      gaps: [],
    },
    stance: { fromS: 0, toS: 1 },
    stillSdM: 0.0005,
    issues: [{ code: 'gap', severity: 'warning', fromS: 3.2, toS: 3.45, details: { count: 1 } }],
  };
  const subject = bodyMassKg === undefined ? {} : { bodyMassKg };
  const report = judge(detection, { placement: 'heel', side: 'left', protocol, subject }, defaultSettings().judging);
  return {
    status: 'ok',
    test: 'heel-raise',
    item: {
      file: 'left, first.csv',
      path: 'left, first.csv',
      about: { ...NOTHING_GIVEN, side: 'left', placement: 'heel' },
      carried: { person: 'P1', visit: '2' },
      refusal: undefined,
    },
    sha256: 'a'.repeat(64),
    settingsHash: 'b'.repeat(64),
    protocolHash: 'c'.repeat(64),
    protocol,
    report,
    beginS: 0,
    varied: [],
    recording: {
      unusedColumns: [{ column: 'temperature [Cel]', reason: 'unknown-name' }],
      deviceNotes: ['plate 3', 'zeroed'],
    },
  };
}

export function handMadeRefusal(): Refused {
  return {
    status: 'refused',
    item: { file: 'bad.csv', path: 'bad.csv', about: NOTHING_GIVEN, carried: { person: 'P2' }, refusal: undefined },
    sha256: null,
    reason: 'bad.csv: there is no such file',
  };
}
