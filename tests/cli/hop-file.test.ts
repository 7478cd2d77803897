import { expect, test } from 'vitest';
import { asksForHops, assessHopFile } from '../../apps/cli/src/hop-file.ts';
import { hopLine } from '../../apps/cli/src/hop-json.ts';
import { HOP_TABLES, hopTables } from '../../apps/cli/src/hop-tables.ts';
import { hopText } from '../../apps/cli/src/hop-text.ts';
import type { WorkItem } from '../../apps/cli/src/work-list.ts';
import { madeForce } from '../support/made-hops.ts';

const { timesS, force } = madeForce({ count: 22, contactS: 0.25, flightS: 0.2, massKg: 70, sampleRateHz: 500 });
const csv = ['time [s],force [N]', ...[...timesS].map((timeS, i) => `${timeS},${force[i]}`)].join('\n');
const io = { readFile: () => Promise.resolve(new TextEncoder().encode(csv)) };
const screen = { width: 100, drawsBlocks: false };
const itemOf = (about: object, carried: Record<string, string> = {}): WorkItem =>
  ({
    file: 'hops.csv',
    path: 'hops.csv',
    about: { test: 'hop-series', ...about },
    carried,
    refusal: undefined,
  }) as unknown as WorkItem;

async function assessed(about: object = { placement: 'platform', side: 'left' }, carried: Record<string, string> = {}) {
  const outcome = await assessHopFile(itemOf(about, carried), io);
  if (outcome.status === 'refused') throw new Error(outcome.reason);
  return outcome;
}

test('the test or a protocol of hops asks for hops, and nothing else does', () => {
  expect(asksForHops({ test: 'hop-series', protocol: undefined })).toBe(true);
  expect(asksForHops({ test: undefined, protocol: 'hop-series.beat' })).toBe(true);
  expect(asksForHops({ test: undefined, protocol: undefined })).toBe(false);
  expect(asksForHops({ test: 'heel-raise', protocol: 'hop-series.beat' })).toBe(false);
});

test('a file of hops is assessed; a force needs no placement', async () => {
  const { report } = await assessed({});
  expect([report.found, report.count.hops, report.placement]).toEqual(['yes', 22, 'platform']);
});

test('another placement, an unknown protocol and a file without its columns are refused with words', async () => {
  const reasonOf = async (about: object) => {
    const outcome = await assessHopFile(itemOf(about), io);
    return outcome.status === 'refused' ? outcome.reason : '';
  };
  expect(await reasonOf({ placement: 'trunk' })).toContain('platform or by a sensor on the foot');
  expect(await reasonOf({ protocol: 'single-leg.floor' })).toContain('expected hop-series.own-pace');
  expect(await reasonOf({ placement: 'foot' })).toContain('acceleration');
});

test('the text says what was measured, what was not known before, and the caution that never leaves', async () => {
  const text = hopText(await assessed(undefined, { safety_clear: 'yes', pain_on_raise: '4' }), screen)
    .join('\n')
    .replace(/\s+/g, ' ');
  expect(text).toMatch(/contact +250 ± 1 ms/);
  expect(text).toContain('not met: little pain on a single raise');
  expect(text).toContain('not known: enough valid single-leg raises');
  expect(text).toContain('are no clearance');
});

test('JSON and CSV share their keys', async () => {
  const outcome = await assessed();
  const line = JSON.parse(hopLine(outcome)) as { hops: Record<string, unknown>[]; count: object; cautions: string[] };
  expect(line.hops).toHaveLength(22);
  expect(line.hops[7]).toMatchObject({ index: 8, analysed: true });
  expect(line.count).toMatchObject({ hops: 22, analysed: 15 });
  expect(line.cautions).toContain('ratio-is-no-clearance');
  const [hops, series] = hopTables([outcome]);
  expect([hops.name, series.name]).toEqual([...HOP_TABLES]);
  expect(hops.rows).toHaveLength(22);
  for (const table of [hops, series]) for (const row of table.rows) expect(row).toHaveLength(table.columns.length);
  const at = hops.columns.findIndex(({ key }) => key === 'contact_ms');
  expect(Math.abs(Number(hops.rows[7][at]) - 250)).toBeLessThan(1);
});
