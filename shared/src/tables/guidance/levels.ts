import type { Entry } from '../../entry.ts';
import { COMPARISON_RULES } from '../comparison-rules.ts';
import type { DoseLine, DoseSpan } from './dose-line.ts';
import { HEAVY_SLOW, HEAVY_SLOW_LINES } from './heavy-slow.ts';
import { DAILY, DAILY_OR_ALTERNATE, doseLine, SLOW } from './line-made.ts';
import { KEEP_UP } from './return-criteria.ts';
import { type Basis, PRACTICE } from './rule-made.ts';

/** A level of the programme: where somebody can begin, and what is done there. */
export interface LevelEntry extends Entry {
  readonly code: string;
  readonly number: number;
  readonly lines: readonly DoseLine[];
}

const staged: Basis = { source: 'Silbernagel 2020 J Athl Train 55:438, table 2', mark: 'read' };
const adapted: Basis = { source: 'Silbernagel 2020 J Athl Train 55:438, table 2; adapted', mark: 'read' };
const heavy: Basis = { source: 'Beyer 2015 Am J Sports Med 43:1704, as quoted elsewhere', mark: 'second-hand' };
const sport: Basis = {
  source: 'Silbernagel & Crossley 2015 J Orthop Sports Phys Ther 45:876; from memory',
  mark: 'from-memory',
};
const limb = { kind: 'limb' } as const;

function level(number: number, code: string, lines: readonly DoseLine[], basis: Basis): LevelEntry {
  return { id: `level.${code}`, version: '1', unit: '1', ...basis, code, number, lines };
}

const calmPain = COMPARISON_RULES.painMostIrritable.value;
const [firstRow] = HEAVY_SLOW;
const lastRow = HEAVY_SLOW.at(-1);

/** The heavy raises of the last weeks, kept up so often a week; who goes on from them keeps sets, repetitions and load. */
function keptUp(code: string, perWeek: DoseSpan, { source, mark }: Basis): readonly DoseLine[] {
  return (lastRow === undefined ? [] : HEAVY_SLOW_LINES[lastRow.id]).map((line) => ({
    ...line,
    id: `level.${code}.${line.exercise}`,
    source,
    mark,
    perWeek,
  }));
}

/** Levels from the lightest on. Lines at the edge of a step are for no heel that is sore at the bone. */
export const LEVELS: readonly LevelEntry[] = [
  level(
    0,
    'calm',
    [
      doseLine('level.calm', {
        exercise: 'two-leg-hold',
        sets: [5, 5],
        holdS: [30, 45],
        perWeek: [7, 14],
        load: { kind: 'by-pain' },
        painMost: calmPain,
      }),
      doseLine('level.calm', {
        exercise: 'two-leg-raise',
        sets: [2, 3],
        repetitions: [10, 10],
        perWeek: [7, 14],
        load: { kind: 'by-pain' },
        painMost: calmPain,
      }),
    ],
    PRACTICE,
  ),
  level(
    1,
    'learn',
    [
      doseLine(
        'level.learn',
        { exercise: 'two-leg-raise', sets: [3, 3], repetitions: [10, 15], perWeek: DAILY },
        staged,
      ),
      doseLine(
        'level.learn',
        { exercise: 'seated-raise', sets: [3, 3], repetitions: [10, 10], perWeek: DAILY, load: limb },
        staged,
      ),
      doseLine(
        'level.learn',
        { exercise: 'one-leg-lowering', sets: [3, 3], repetitions: [10, 10], perWeek: DAILY },
        staged,
      ),
    ],
    staged,
  ),
  level(
    2,
    'single',
    [
      doseLine(
        'level.single',
        { exercise: 'one-leg-raise', sets: [3, 3], repetitions: [10, 15], tempo: SLOW, perWeek: DAILY_OR_ALTERNATE },
        adapted,
      ),
      doseLine(
        'level.single',
        {
          exercise: 'seated-raise',
          sets: [3, 3],
          repetitions: [15, 15],
          tempo: SLOW,
          perWeek: DAILY_OR_ALTERNATE,
          load: limb,
        },
        adapted,
      ),
    ],
    adapted,
  ),
  level(
    3,
    'range',
    (['step-raise', 'one-leg-lowering', 'seated-raise'] as const).map((exercise) =>
      doseLine(
        'level.range',
        {
          exercise,
          sets: [3, 3],
          repetitions: [15, 15],
          perWeek: DAILY_OR_ALTERNATE,
          ...(exercise === 'seated-raise' ? { load: limb } : {}),
        },
        staged,
      ),
    ),
    staged,
  ),
  // begins with the first weeks, and is kept up twice a week with the last ones
  level(4, 'heavy', HEAVY_SLOW_LINES[firstRow.id], heavy),
  // bounces and hops on days of their own, and the heavy raises kept up on one between them: a week has room for no more of them apart
  level(
    5,
    'springs',
    [
      doseLine(
        'level.springs',
        { exercise: 'quick-rebounds', sets: [3, 3], repetitions: [20, 20], perWeek: [2, 3] },
        staged,
      ),
      doseLine('level.springs', { exercise: 'two-leg-hops', sets: [3, 3], repetitions: [10, 10], perWeek: [2, 3] }),
      doseLine('level.springs', { exercise: 'rope-skipping', sets: [3, 3], repetitions: [20, 20], perWeek: [2, 3] }),
      doseLine('level.springs', {
        exercise: 'one-leg-hops',
        sets: [3, 3],
        repetitions: [10, 10],
        perWeek: [2, 3],
        after: 'two-leg-hops',
      }),
      ...keptUp('springs', [KEEP_UP.leastPerWeek.value, KEEP_UP.mostPerWeek.value], PRACTICE),
    ],
    staged,
  ),
  level(
    6,
    'sport',
    [
      doseLine('level.sport', { exercise: 'forward-hops', sets: [3, 3], repetitions: [10, 10], perWeek: [1, 2] }),
      ...keptUp('sport', [2, 2], sport),
    ],
    sport,
  ),
];
