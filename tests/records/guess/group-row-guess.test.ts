import { readFileSync } from 'node:fs';
import {
  type Answers,
  findingsOf,
  makeRecipe,
  type Proposal,
  parseRecipe,
  RecordError,
  type RecordedChannel,
  readWithRecipe,
  TableSurvey,
} from '@surae/records';
import { describe, expect, test } from 'vitest';
import { groupRowProbability } from '../../../packages/records/src/guess/group-row-guess.ts';
import { fixturePath } from '../../support/fixture.ts';

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);
const fixture = new Uint8Array(readFileSync(fixturePath('messy/group-row.csv')));
const text = new TextDecoder().decode(fixture);

function look(bytes: Uint8Array, answers: Answers = {}): Proposal {
  const survey = new TableSurvey({ file: 'g.csv', answers });
  survey.push(bytes);
  return survey.end().proposal;
}

const ids = (proposal: Proposal): string[] => proposal.questions.map(({ id }) => id);
const codes = (proposal: Proposal): string[] => findingsOf(proposal).map(({ code }) => code);

/** Rows of a time and what a function gives of it, under lines of one's own. */
const table = (head: readonly string[], row: (i: number) => readonly (number | string)[], mark = ','): Uint8Array =>
  bytesOf([...head, ...Array.from({ length: 100 }, (_, i) => row(i).join(mark)), ''].join('\n'));
const time = (i: number): string => (i / 50).toFixed(2);
const force = (i: number): string => (300 + 20 * Math.sin(i / 8)).toFixed(1);
const twoPlates = (i: number): string[] => [time(i), force(i), time(i), force(i + 5)];

describe('what is a row of groups', () => {
  const form = { decimal: '.', thousands: null, dates: null } as const;
  const pairs = ['Time', 'Force', 'Time', 'Force'];
  test.each([
    [['Left', '', 'Right', ''], pairs, 0.96],
    [['Trial 1', 'Trial 1', 'Trial 2', 'Trial 2'], pairs, 0.96],
    [['Left', 'Right', 'Left', 'Right'], ['Force', 'Force', 'Angle', 'Angle'], 0.96],
    [['', 'Left', '', 'Right', ''], ['Time', 'Force', 'Angle', 'Force', 'Angle'], 0.96],
    [['Left', '', 'Right', '', ''], ['Force', 'Angle', 'Force', 'Angle', 'Temp'], 0.96],
    // the groups hold other columns: asked
    [['Left', '', 'Right', ''], ['Time', 'Force', 'Angle', 'Force'], 0.8],
    [['Name', '', 'Right', ''], pairs, 0.7],
    // nothing stands twice below, or nothing is grouped
    [['Left', '', 'Right', ''], ['Time', 'Force', 'Angle', 'Torque'], undefined],
    [['Name', 'Test', 'Right'], ['Time', 'Force', 'Force'], undefined],
    [['Name', 'Test', 'Side', 'Right'], pairs, undefined],
    // one group has two columns of one name
    [['Subject', 'Anna', '', ''], pairs, undefined],
    [['Left', '', '', ''], pairs, undefined],
    [['Subject', '', '12', ''], pairs, undefined],
    [['Side:', '', 'Right', ''], pairs, undefined],
    [['s', 'N', 's', 'N'], pairs, undefined],
  ])('%j over %j: %s', (groupRow, names, probability) => {
    expect(groupRowProbability(groupRow, names, form)).toBe(probability);
  });
});

describe('a row of groups above the names', () => {
  test('is joined with them, units below and all, and nothing is asked', () => {
    const proposal = look(fixture);
    expect(proposal.labels).toEqual(['Left Time', 'Left Force', 'Right Time', 'Right Force']);
    expect(proposal.form.header.value).toMatchObject({ line: 2, groupRow: ['Left', '', 'Right', ''] });
    expect(proposal.form.header.evidence[1]).toEqual({
      code: 'group-row',
      figures: { line: 1, names: 2, again: 'Time' },
    });
    expect(proposal.form.unitRow.value).toMatchObject({ line: 3 });
    expect(proposal.form.preamble).toEqual([]);
    expect(proposal.questions).toEqual([]);
    expect(codes(proposal)).toEqual(['times-again', 'left-and-right']);
    const { recording } = readWithRecipe(fixture, makeRecipe(proposal, 'plates'));
    const channels: readonly RecordedChannel[] = recording.groups.flatMap((group) => [...group.channels]);
    expect(channels.map(({ column, side, samples }) => [column, side, samples[0]])).toEqual([
      ['Left Force', 'left', 308.9],
      ['Right Force', 'right', 377.6],
    ]);
  });

  test.each([
    ['the same group in every cell', ['Left,Left,Right,Right', 'Time [s],Fz [N],Time [s],Fz [N]']],
    ['lines above it', ['Export', 'Rate: 50 Hz', 'Left,,Right,', 'Time [s],Fz [N],Time [s],Fz [N]']],
    ['cut behind its last group', ['Left,,Right', 'Time [s],Fz [N],Time [s],Fz [N]']],
  ])('%s', (_, head) => {
    const proposal = look(table(head, twoPlates));
    expect(proposal.labels.map((label) => label.split(' ')[0])).toEqual(['Left', 'Left', 'Right', 'Right']);
    expect(proposal.columns.map(({ use, side }) => [use.value, side.value])).toEqual([
      ['force', 'left'],
      ['unused', null],
      ['force', 'right'],
    ]);
    expect(proposal.questions).toEqual([]);
    expect(
      readWithRecipe(table(head, twoPlates), makeRecipe(proposal, 'plates')).recording.groups[0].channels.length,
    ).toBe(2);
  });

  test('a sensor that stands over its axes says where it sat', () => {
    const head = [',Foot IMU,,,Trunk IMU,,', 't [s],ax,ay,az,ax,ay,az'];
    const tilt = (i: number): number => 0.3 * Math.sin(i / 9);
    const row = (i: number): string[] => [
      time(i),
      ...[tilt(i), tilt(i + 3)].flatMap((a) => [
        (9.81 * Math.sin(a)).toFixed(3),
        '0.020',
        (9.81 * Math.cos(a)).toFixed(3),
      ]),
    ];
    const { columns, labels } = look(table(head, row));
    expect(labels[4]).toBe('Trunk IMU ax');
    expect(columns.map(({ use, axis, placement, triple }) => [use.value, axis.value, placement.value, triple])).toEqual(
      [
        ...(['x', 'y', 'z'] as const).map((axis) => ['acceleration', axis, 'foot', [1, 2, 3]]),
        ...(['x', 'y', 'z'] as const).map((axis) => ['acceleration', axis, 'trunk', [4, 5, 6]]),
      ],
    );
  });

  test('a quantity that stands over its axes is read with them', () => {
    const head = ['Clock,Acceleration [m/s2],,,Gyroscope [deg/s],,', 'Time [s],x,y,z,x,y,z'];
    const row = (i: number): string[] => [
      time(i),
      '0.10',
      '0.20',
      (9.8 + (i % 3) / 100).toFixed(2),
      `${i % 7}`,
      '1.0',
      '2.0',
    ];
    const { columns } = look(table(head, row));
    expect(columns.map(({ use, axis, unit }) => [use.value, axis.value, unit.value])).toEqual([
      ...(['x', 'y', 'z'] as const).map((axis) => ['acceleration', axis, 'm/s2']),
      ...(['x', 'y', 'z'] as const).map((axis) => ['angular-velocity', axis, 'deg/s']),
    ]);
  });

  test('stays a line above the table where the names below are there once', () => {
    const one = look(
      table(['Name;Test;Right', 'Time [s];Force [N];Angle [deg]'], (i) => [time(i), force(i), i % 9], ';'),
    );
    expect(one.labels).toEqual(['Time [s]', 'Force [N]', 'Angle [deg]']);
    const two = look(table(['Subject,12', 'Time [s],Force [N]'], (i) => [time(i), force(i)]));
    expect([two.labels[1], two.form.preamble.length]).toEqual(['Force [N]', 1]);
  });

  test('is asked where it may be a line about the recording, and both answers are followed', () => {
    const bytes = table(['Name,,Right,', 'Time [s],Force [N],Time [s],Force [N]'], twoPlates);
    const asked = look(bytes).questions.find(({ topic }) => topic === 'header')!;
    expect(asked.options.map(({ answer }) => answer)).toEqual(['grouped', 'names']);
    expect(look(bytes, { header: 'grouped' }).labels[3]).toBe('Right Force [N]');
    const alone = look(bytes, { header: 'names' });
    expect([alone.labels[3], alone.form.preamble.length]).toEqual(['Force [N] #4', 1]);
    expect(ids(alone)).not.toContain('header');
    const single = bytesOf('a line\ntime [s],force [N]\n0,1\n1,2\n2,3\n');
    expect(() => look(single, { header: 'grouped' })).toThrow(/expected a row of groups above the names, got "a line"/);
  });

  test('is known again in the middle of the rows', () => {
    const lines = text.split('\n');
    const again = bytesOf([...lines.slice(0, 200), ...lines.slice(0, 3), ...lines.slice(200)].join('\n'));
    const proposal = look(again);
    expect(proposal.odd.repeated).toEqual({ count: 3, lines: [201, 202, 203] });
    expect(readWithRecipe(again, makeRecipe(proposal, 'again')).recording.groups[0].timesS.length).toBe(400);
  });
});

describe('the recipe of such files', () => {
  const recipe = makeRecipe(look(fixture), 'plates');
  const read = (altered: string): unknown => readWithRecipe(bytesOf(altered), recipe, { file: 'n.csv' });

  test('survives its JSON and reads the next one below other lines', () => {
    const again = parseRecipe(JSON.stringify(recipe));
    expect(again).toEqual(recipe);
    const { recording } = readWithRecipe(bytesOf(`Visit 2\n${text}`), again);
    expect(recording.deviceNotes).toEqual(['Visit 2']);
  });

  test.each([
    [
      'another row of groups',
      text.replace('Left,,Right,', 'Right,,Left,'),
      /row 1, .*group in line 1, column 1 "Left", got "Right"/,
    ],
    ['no row of groups', text.replace('Left,,Right,\n', ''), /group in line 1 "Left,,Right,", got no line above/],
    ['a text in its place', text.replace('Left,,Right,', 'Visit 2'), /group in line 1 .*got "Visit 2"/],
    [
      'another name',
      text.replace('Time,Force\n', 'Time,Load\n'),
      /column name in line 2, column 4 "Force", got "Load"/,
    ],
    ['another unit', text.replace('s,N,s,N', 's,N,s,kN'), /unit in line 3, column 4 "N", got "kN"/],
    [
      'another time in one group',
      text.replace(/\n0\.04,([\d.]+),0\.04,/, '\n0.04,$1,0.05,'),
      /row 6, column "Right Time": expected the time of the row in every group: 0\.04 in "Left Time", got 0\.05/,
    ],
  ])('%s is refused by its line', (_, altered, words) => {
    expect(altered).not.toBe(text);
    expect(() => read(altered)).toThrow(words);
  });

  test('tells the row of groups in its fingerprint, and a part that was altered is found', () => {
    const altered = (change: object) => () => parseRecipe(JSON.stringify({ ...recipe, ...change }));
    expect(altered({ groupRow: ['Left', '', 'Left', ''] })).toThrow(/groupRow: expected groups with which the names/);
    expect(altered({ groupRow: ['Left', 'Left', 'Right', ''] })).toThrow(/fits: expected the fingerprint/);
    expect(altered({ time: { ...recipe.time, alike: [0, 9] } })).toThrow(/time\.alike\[1\]/);
  });
});

describe('times that differ from group to group', () => {
  const bytes = table(['Left,,Right,', 'Time [s],Force [N],Time [s],Force [N]'], (i) => [
    time(i),
    force(i),
    (i / 50 + 0.01).toFixed(2),
    force(i + 5),
  ]);

  test('are said and asked; no recording is made of both', () => {
    const proposal = look(bytes);
    expect(ids(proposal)).toEqual(['time']);
    expect(codes(proposal)).toContain('times-apart');
    expect(proposal.questions[0].options.slice(0, 2).map(({ answer, probability }) => [answer, probability])).toEqual([
      ['Left Time [s]', 0.5],
      ['Right Time [s]', 0.5],
    ]);
    expect(() => makeRecipe(proposal, 'both')).toThrow(/answers to time/);
  });

  test.each([
    ['Left', 0],
    ['Right', 0.01],
  ])('%s alone is read with its own', (group, firstS) => {
    const recipe = makeRecipe(look(bytes, { time: `${group} Time [s]` }), group);
    const { groups } = readWithRecipe(bytes, recipe).recording;
    expect(groups.map(({ timesS, channels }) => [timesS[0], channels.map(({ column }) => column)])).toEqual([
      [firstS, [`${group} Force [N]`]],
    ]);
  });

  test('the other group cannot be used with them', () => {
    const answers = { time: 'Left Time [s]', 'use:Right Force [N]': 'force' };
    expect(() => look(bytes, answers)).toThrow(RecordError);
    expect(() => look(bytes, answers)).toThrow(/column "Right Force \[N\]": expected unused.*got "force"/);
  });
});
