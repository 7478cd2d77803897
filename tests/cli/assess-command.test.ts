import { describe, expect, test } from 'vitest';
import type { AssessArguments } from '../../apps/cli/src/assess-arguments.ts';
import { assessCommand } from '../../apps/cli/src/assess-command.ts';
import { main } from '../../apps/cli/src/main.ts';
import { csvRows } from '../support/csv-rows.ts';
import { handMadeRefusal } from '../support/hand-made-outcome.ts';
import { madeForce } from '../support/made-hops.ts';
import { madeSamples } from '../support/made-pull.ts';
import { madeRamps, madeRecording } from '../support/made-recording.ts';
import { MemoryIo } from '../support/memory-io.ts';

const GOOD = 'fixtures/recordings/made/heel-three-raises.csv';
const GONE = 'no-such.csv';

const ASKED: AssessArguments = {
  command: 'assess',
  files: [GOOD],
  manifest: undefined,
  lines: undefined,
  given: handMadeRefusal().item.about,
  settings: undefined,
  reliability: undefined,
  vary: undefined,
  recipe: undefined,
  output: { kind: 'text' },
  workers: undefined,
  memoryMb: undefined,
  journal: undefined,
};

async function run(changes: Partial<AssessArguments>) {
  const memory = new MemoryIo();
  const code = await assessCommand({ ...ASKED, ...changes }, memory.io);
  return { code, memory };
}

test('exit code 0 when all are assessed, 1 when one is not, and the refusals come last on standard error', async () => {
  expect((await run({})).code).toBe(0);
  const { code, memory } = await run({ files: [GONE, GOOD] });
  expect(code).toBe(1);
  expect(memory.error).toBe(`Refused, 1 of 2:\n  ${GONE}: there is no such file\n`);
  expect(memory.out).toContain('attempted');
});

test('with tables as output every outcome is in one of them and the files are named', async () => {
  const { memory } = await run({
    files: [GOOD, GONE],
    output: { kind: 'tables', csv: 'out', parquet: undefined, replace: false },
  });
  expect(csvRows(memory.text('out/sets.csv')).map((row) => row['file'])).toEqual([GOOD]);
  expect(csvRows(memory.text('out/refused.csv')).map((row) => row['file'])).toEqual([GONE]);
  expect(memory.out).toContain('repetitions.csv');
  expect(memory.out).not.toContain('Not a diagnosis');
});

test('one JSON object a line and nothing else', async () => {
  const { memory } = await run({ files: [GOOD, GONE], output: { kind: 'json' } });
  const lines = memory.out.trimEnd().split('\n');
  expect(lines.map((line) => (JSON.parse(line) as { status: string }).status)).toEqual(['ok', 'refused']);
});

test('a recording that is in the list twice is assessed twice, and the second says so', async () => {
  const { code, memory } = await run({ files: [GOOD, GOOD], output: { kind: 'json' } });
  expect(code).toBe(0);
  const sentences = memory.out
    .trim()
    .split('\n')
    .map((line) => (JSON.parse(line) as { issues: { code: string; sentence: string }[] }).issues)
    .map((issues) => issues.filter((issue) => issue.code === 'same-bytes').map((issue) => issue.sentence));
  expect(sentences).toEqual([[], [`This recording was in the list before: ${GOOD} is the same.`]]);
});

test('hops beside raises: the second of two twins says so, and both stand in the summary', async () => {
  const { timesS, force } = madeForce({ count: 22, contactS: 0.25, flightS: 0.2, massKg: 70, sampleRateHz: 500 });
  const memory = new MemoryIo();
  memory.files.set(
    'h.csv',
    ['time [s],force [N]', ...[...timesS].map((timeS, i) => `${timeS},${force[i]}`)].join('\n'),
  );
  memory.files.set(
    'm.csv',
    ['file,side,test,placement', 'h.csv,left,hop-series,', 'h.csv,left,hop-series,', `${GOOD},left,,heel`].join('\n'),
  );
  expect(await main(['assess', '--manifest', 'm.csv'], memory.io)).toBe(0);
  expect(memory.out.split('This recording was in the list before: h.csv is the same.')).toHaveLength(2);
  expect(memory.out.match(/^h\.csv +22 hops +15 analysed$/gm)).toHaveLength(2);
});

describe('isometric tests on the command line', () => {
  /** Semicolons, carriage returns, remarks, kilograms-force of a sensor turned over, a column of no use, a gap and a knock. */
  function messy(): string {
    const { timesS, samples } = madeSamples(madeRamps([1400, 1425, 1410], 85, 500));
    const rows = [...timesS].flatMap((timeS, i) => {
      if (timeS > 1 && timeS < 1.2) return [];
      const knock = i >= 700 && i < 706 ? 400 : 0;
      return [`${(1000 * timeS).toFixed(2)};${(-(samples[i] + knock) / 9.80665).toFixed(5)};${i % 7}`];
    });
    return ['# cell 3', 'Time [ms];Force [kgf];counter', ...rows, ''].join('\r\n');
  }

  async function surae(files: Readonly<Record<string, string>>, ...args: string[]) {
    const memory = new MemoryIo();
    for (const [name, content] of Object.entries(files)) memory.files.set(name, content);
    const code = await main(['assess', ...args], memory.io);
    return { code, memory };
  }

  test('a messy file gives the same forces, and says what is wrong with it', async () => {
    const { code, memory } = await surae(
      { 'a.csv': messy() },
      ...[
        'a.csv',
        '--test',
        'isometric',
        '--placement',
        'platform',
        '--side',
        'left',
        '--body-mass-kg',
        '82',
        '--json',
      ],
    );
    expect(code).toBe(0);
    const line = JSON.parse(memory.out) as Record<string, unknown>;
    expect(line).toMatchObject({
      file: 'a.csv',
      status: 'ok',
      test: 'isometric',
      placement: 'platform',
      protocol: 'isometric.seated',
      side: 'left',
      polarity: { sign: -1, clear: true },
      count: { found: 3, accepted: 3 },
    });
    for (const key of ['sha256', 'settings_hash', 'protocol_hash']) expect(line[key]).toMatch(/^[0-9a-f]{64}$/);
    const { net_n: net, gross_n: gross } = line['score'] as Record<string, number>;
    expect([net, gross].map((force) => Math.round(force))).toEqual([1425, 1510]);
    const best = line['best_mean'] as Record<string, number>;
    expect(best['times_body_weight']).toBeCloseTo(1.77, 2);
    const codes = (line['issues'] as { code: string }[]).map(({ code: one }) => one);
    expect(codes).toEqual(['samples-missing', 'unused-column']);
  });

  test('a manifest of both tests: each row by its own, the tables of both', async () => {
    const manifest = [
      'file,person,visit,side,test,placement,protocol,forefoot_lever_mm,calibration_u_percent,polarity,calibration',
      `${GOOD},P1,1,left,heel-raise,heel,,,,,`,
      'pull.csv,P1,1,left,isometric,platform,,130,0.5,positive,cell 7',
      'torque.csv,P1,1,right,isometric,,isometric.seated,,,,',
      'pull.csv,P1,1,left,isometric,heel,,,,,',
      'pull.csv,P1,1,left,heel-raise,inline,,,,,',
      'pull.csv,P1,1,left,isometric,platform,,9999,,,',
      'pull.csv,P1,1,left,isometric,platform,,,,sideways,',
    ].join('\n');
    const torque = madeRecording({ ...madeRamps([90, 92, 91], 0), noise: 0.02 }, 'torque [N.m]');
    const files = { 'm.csv': manifest, 'pull.csv': madeRecording(madeRamps([900, 920, 910])), 'torque.csv': torque };
    const { code, memory } = await surae(files, '--manifest', 'm.csv', '--csv', 'out');
    expect(code).toBe(1);
    const table = (name: string) => csvRows(memory.text(`out/${name}`));
    expect(table('repetitions.csv')).toHaveLength(3);
    expect(table('efforts.csv').map((row) => [row['file'], row['side'], row['accepted']])).toEqual([
      ...Array<string[]>(3).fill(['pull.csv', 'left', 'yes']),
      ...Array<string[]>(3).fill(['torque.csv', 'right', 'yes']),
    ]);
    const [ofForce, ofTorque] = table('pulls.csv');
    expect(Number(ofForce['best_mean.torque_nm'])).toBeCloseTo(920 * 0.13, 0);
    expect(ofForce['calibration_u_percent']).toBe('0.5');
    expect(ofForce['calibration_id']).toBe('cell 7');
    expect(table('efforts.csv').map((row) => [row['calibration_u_percent'], row['calibration_id']])).toEqual([
      ...Array<string[]>(3).fill(['0.5', 'cell 7']),
      ...Array<string[]>(3).fill(['', '']),
    ]);
    expect([ofTorque['unit'], ofTorque['placement'], ofTorque['score.net_n']]).toEqual(['N.m', 'inline', '']);
    expect(Number(ofTorque['score.net_nm'])).toBeCloseTo(92, 1);
    const described = table('dictionary.csv').filter((row) => row['table'] === 'efforts.csv');
    expect(described.map((row) => row['column'])).toEqual(Object.keys(table('efforts.csv')[0]));
    expect(described.every((row) => row['description'] !== '')).toBe(true);
    expect(table('refused.csv').map((row) => row['reason'])).toEqual([
      'pull.csv: the test isometric is measured inline or on a platform, not at the placement heel',
      'pull.csv: the placement inline belongs to the test isometric: say --test isometric',
      'm.csv, row 7, column "forefoot_lever_mm": expected a number of 40 to 250 mm, with a point for decimals, got "9999"',
      'm.csv, row 8, column "polarity": expected one of positive, negative, or nothing, got "sideways"',
    ]);
  });

  test('the text has a picture, a line an effort and a line for each file', async () => {
    const file = madeRecording(madeRamps([900, 920, 910]));
    const args = ['a.csv', 'b.csv', '--test', 'isometric', '--placement', 'inline'];
    const { memory } = await surae({ 'a.csv': file, 'b.csv': file }, ...args);
    expect(memory.out).toContain('force, N above the load at rest');
    expect(memory.out).toMatch(/a\.csv +3 efforts +3 count/);
    expect(memory.out).toContain('This recording was in the list before: a.csv is the same.');
    expect(memory.out).toContain('Not a diagnosis');
  });

  test('the protocol of the other test, and one that is none, are refused by name', async () => {
    const files = { 'a.csv': madeRecording(madeRamps([900])) };
    const raises = await surae(files, 'a.csv', '--test', 'heel-raise', '--protocol', 'isometric.seated');
    expect(raises.memory.error).toContain('the protocol isometric.seated belongs to the test isometric');
    const pulls = await surae(files, 'a.csv', '--test', 'isometric', '--protocol', 'single-leg.floor');
    expect(pulls.memory.error).toContain('the protocol single-leg.floor belongs to the test heel-raise');
    expect([raises.code, pulls.code]).toEqual([1, 1]);
  });
});
