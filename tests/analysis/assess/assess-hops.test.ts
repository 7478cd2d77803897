import { assessHops, hopDefaults, hopFingerprint } from '@surae/analysis';
import { HOP_SERIES, HOP_SERIES_BEAT, HOP_SERIES_COLUMNS } from '@surae/shared';
import { expect, test } from 'vitest';
import { columnValue } from '../../../packages/analysis/src/assess/column-values.ts';
import { madeHopTrace } from '../../support/made-hops.ts';

const trace = madeHopTrace({ count: 22, contactS: 0.25, flightS: 0.2, massKg: 70, sampleRateHz: 1000 });
const report = assessHops(
  trace,
  { placement: 'platform', protocol: HOP_SERIES, side: 'left', endReason: 'pain' },
  hopDefaults,
);

test('the series, the conditions before it and its end stand in one report', () => {
  expect(report).toMatchObject({
    test: 'hop-series',
    side: 'left',
    found: 'yes',
    entry: { met: 'cannot_tell' },
    end: { reasonGiven: 'pain', class: 'tolerance' },
  });
  expect(JSON.parse(JSON.stringify(report))).toEqual(report);
});

test('a result has its own fingerprint by protocol and placement', () => {
  const all = [
    hopFingerprint(HOP_SERIES, 'platform'),
    hopFingerprint(HOP_SERIES, 'foot'),
    hopFingerprint(HOP_SERIES_BEAT, 'platform'),
  ];
  expect(new Set(all).size).toBe(3);
  expect(report.protocol.fingerprint).toBe(all[0]);
});

test('every figure of a series on a platform has its column, and contact is in milliseconds', () => {
  const empty = HOP_SERIES_COLUMNS.filter((column) => columnValue(column, report) === null).map(({ key }) => key);
  expect(empty).toEqual(['reason']);
  const contact = HOP_SERIES_COLUMNS.find(({ key }) => key === 'measures.contact_ms')!;
  expect(Math.abs((columnValue(contact, report) as number) - 250)).toBeLessThan(1);
});
