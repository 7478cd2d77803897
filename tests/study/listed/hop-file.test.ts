import { expect, test } from 'vitest';
import { HOP_SHAPES, hopRows } from '../../../apps/cli/src/hop-tables.ts';
import { hopText } from '../../../apps/cli/src/hop-text.ts';
import { jsonLine } from '../../../apps/cli/src/report-json.ts';
import { readSettings, usualSettings } from '../../../apps/cli/src/settings-file.ts';
import { assessHopFile } from '../../../packages/study/src/listed/hop-file.ts';
import type { WorkItem } from '../../../packages/study/src/listed/work-list.ts';
import { madeForce } from '../../support/made-hops.ts';

const { timesS, force } = madeForce({ count: 22, contactS: 0.25, flightS: 0.2, massKg: 70, sampleRateHz: 500 });
const csv = ['time [s],force [N]', ...[...timesS].map((timeS, i) => `${timeS},${force[i]}`)].join('\n');
const bytes = new TextEncoder().encode(csv);
const screen = { width: 100, drawsBlocks: false };
const itemOf = (about: object, carried: Record<string, string> = {}): WorkItem =>
  ({
    file: 'hops.csv',
    path: 'hops.csv',
    about: { test: 'hop-series', ...about },
    carried,
    refusal: undefined,
  }) as unknown as WorkItem;

function assessed(
  about: object = { placement: 'platform', side: 'left' },
  carried: Record<string, string> = {},
  settings = usualSettings(),
) {
  const outcome = assessHopFile(itemOf(about, carried), bytes, settings);
  if (outcome.status === 'refused') throw new Error(outcome.reason);
  return outcome;
}

test('a file of hops is assessed; a force needs no placement', () => {
  const { report } = assessed({});
  expect([report.found, report.count.hops, report.placement]).toEqual(['yes', 22, 'platform']);
});

test('a settings file reaches the method and the protocol of hops, and the hashes tell', () => {
  const by = (json: string) => assessed({}, {}, readSettings('s.json', new TextEncoder().encode(json)));
  const usual = assessed({});
  const method = by('{"hops": {"series": {"hopsLeast": 30}}}');
  expect([method.report.found, usual.report.found]).toEqual(['no', 'yes']);
  expect([method.protocolHash === usual.protocolHash, method.settingsHash === usual.settingsHash]).toEqual([
    true,
    false,
  ]);
  const rules = by('{"hopProtocol": {"analysedTo": 15}}');
  expect([rules.report.count.analysed, usual.report.count.analysed]).toEqual([10, 15]);
  expect(rules.protocol.parameters.analysedTo).toMatchObject({ value: 15, source: 'chosen by the tester' });
  expect(rules.protocolHash).not.toBe(usual.protocolHash);
  expect(() => by('{"hopProtocol": {"analysedTo": 1}}')).toThrow('s.json, hopProtocol.analysedTo: expected 3 to 100 1');
});

test('another placement, an unknown protocol and a file without its columns are refused with words', () => {
  const reasonOf = (about: object) => {
    const outcome = assessHopFile(itemOf(about), bytes, usualSettings());
    return outcome.status === 'refused' ? outcome.reason : '';
  };
  expect(reasonOf({ placement: 'trunk' })).toContain('platform or by a sensor on the foot');
  expect(reasonOf({ protocol: 'single-leg.floor' })).toContain('expected hop-series.own-pace');
  expect(reasonOf({ placement: 'foot' })).toContain('acceleration');
});

test('the text says what was measured, what was not known before, and the caution that never leaves', () => {
  const text = hopText(assessed(undefined, { safety_clear: 'yes', pain_on_raise: '4' }), screen)
    .join('\n')
    .replace(/\s+/g, ' ');
  expect(text).toMatch(/contact +250 ± 1 ms/);
  expect(text).toContain('not met: little pain on a single raise');
  expect(text).toContain('not known: enough valid single-leg raises');
  expect(text).toContain('are no clearance');
});

test('JSON and CSV share their keys', () => {
  const outcome = assessed();
  const line = JSON.parse(jsonLine(outcome)) as { hops: Record<string, unknown>[]; count: object; cautions: string[] };
  expect(line.hops).toHaveLength(22);
  expect(line.hops[7]).toMatchObject({ index: 8, analysed: true });
  expect(line.count).toMatchObject({ hops: 22, analysed: 15 });
  expect(line.cautions).toContain('ratio-is-no-clearance');
  const found = hopRows(outcome);
  expect(Object.keys(found)).toEqual(['hops.csv', 'hop-series.csv']);
  const [hops, series] = HOP_SHAPES.map(({ name, columns }) => ({ columns, rows: found[name] }));
  expect(hops.rows).toHaveLength(22);
  for (const table of [hops, series]) for (const row of table.rows) expect(row).toHaveLength(table.columns.length);
  const at = hops.columns.findIndex(({ key }) => key === 'contact_ms');
  expect(Math.abs(Number(hops.rows[7][at]) - 250)).toBeLessThan(1);
});
