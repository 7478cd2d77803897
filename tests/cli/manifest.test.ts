import { expect, test } from 'vitest';
import { manifestItems } from '../../apps/cli/src/manifest.ts';
import type { GivenAbout } from '../../packages/study/src/listed/work-list.ts';

const NOTHING: GivenAbout = {
  test: undefined,
  placement: undefined,
  side: undefined,
  protocol: undefined,
  heelLeverMm: undefined,
  bodyMassKg: undefined,
  stringRestMm: undefined,
  externalMassKg: undefined,
  loadPercent: undefined,
  ankleLeverMm: undefined,
  ankleAngleDeg: undefined,
};

function read(text: string, given: GivenAbout = NOTHING) {
  return manifestItems('study/list.csv', new TextEncoder().encode(text), given);
}

test('rows come in order, with paths relative to the manifest', () => {
  const items = read(
    'file,person,side,placement,heel_lever_mm,body_mass_kg\nb.csv,P1,left,foot,186,70.5\n/abs/a.csv,P2,,,,\n',
  );
  expect(items.map((item) => [item.file, item.path])).toEqual([
    ['b.csv', 'study/b.csv'],
    ['/abs/a.csv', '/abs/a.csv'],
  ]);
  expect(items[0].about).toMatchObject({ side: 'left', placement: 'foot', heelLeverMm: 186, bodyMassKg: 70.5 });
  expect(items[1].about).toEqual(NOTHING);
});

test('columns that the command does not use are handed on as they came, empty ones left out', () => {
  const [item] = read('file,person,pain_peak,surface,end_reason\na.csv,007,3,floor,\n');
  expect(item.carried).toEqual({ person: '007', pain_peak: '3', surface: 'floor' });
});

test('a number of warm-up pushes is read and handed on; one that is none refuses its row', () => {
  const text = 'file,test,warm_up_pushes\na.csv,isometric,3\nb.csv,isometric,\nc.csv,isometric,some\n';
  const [a, b, c] = read(text, { ...NOTHING, warmUpPushes: 1 });
  expect([a.about.warmUpPushes, a.carried['warm_up_pushes'], b.about.warmUpPushes]).toEqual([3, '3', 1]);
  expect(c.refusal).toContain('column "warm_up_pushes": expected a whole number of 0 to 100 pushes, or nothing');
});

test('an empty cell takes what the command line said, a filled one keeps its own', () => {
  const items = read('file,placement,body_mass_kg\na.csv,,\nb.csv,trunk,80\n', {
    ...NOTHING,
    placement: 'heel',
    bodyMassKg: 70,
  });
  expect(items.map((item) => [item.about.placement, item.about.bodyMassKg])).toEqual([
    ['heel', 70],
    ['trunk', 80],
  ]);
});

test('a row that cannot be followed is refused by row and column, and the others stand', () => {
  const items = read(
    [
      'file,side,test,placement,heel_lever_mm,ankle_lever_mm',
      'a.csv,L,,,,',
      'b.csv,left,hop,,,',
      'c.csv,left,,wrist,,',
      'd.csv,left,,,"186,5",',
      'e.csv,left',
      ',left,,,,',
      'f.csv,left,,,,-3',
      'g.csv,left,heel-raise,heel,,',
    ].join('\n'),
  );
  const places = [
    'row 2, column "side"',
    'row 3, column "test"',
    'row 4, column "placement"',
    'row 5, column "heel_lever_mm"',
  ];
  expect(items.map((item) => item.refusal)).toEqual([
    ...places.map((place) => expect.stringContaining(`study/list.csv, ${place}: expected `) as string),
    expect.stringContaining('row 6'),
    expect.stringContaining('row 7'),
    'study/list.csv, row 8, column "ankle_lever_mm": expected a number of 30 to 300 mm, with a point for decimals, got "-3"',
    undefined,
  ]);
});

test('what the command uses is not handed on a second time', () => {
  const [item] = read('file,protocol,ankle_lever_mm,ankle_angle_deg,external_mass_kg,order\na.csv,p,148,28,10,2\n');
  expect(item?.about).toMatchObject({ protocol: 'p', ankleLeverMm: 148, ankleAngleDeg: 28, externalMassKg: 10 });
  expect(item?.carried).toEqual({ order: '2' });
});

test('a column that bears the name of a result is refused, since the two could not be told apart', () => {
  expect(() => read('file,count\na.csv,3\n')).toThrow('the column "count" has the name of a result');
});

test.each([
  ['no file column', 'person,side\nP1,left\n', 'a column "file"'],
  ['nothing in it', '', 'empty'],
  ['a header alone', 'file,side\n', 'no row'],
  ['a column twice', 'file,side,side\na.csv,left,right\n', 'one column of each name'],
  ['an open quote', 'file\n"a.csv\n', 'closing quotation mark'],
])('a manifest with %s is refused as a whole', (_, text, sentence) => {
  expect(() => read(text)).toThrow(sentence);
});

test('a manifest that is not UTF-8 is refused as a whole', () => {
  expect(() => manifestItems('m.csv', Uint8Array.from([0xff, 0xfe, 0x66, 0x00]), NOTHING)).toThrow('UTF-8');
});
