import { parseArgs } from 'node:util';
import type { SensedPlacement } from '@surae/analysis';
import { isPlacement, PULL_PLACEMENTS, SENSED_PLACEMENTS, TESTS } from '@surae/study/words';
import { parsed, unknownWord } from './parsed-options.ts';
import { UsageError } from './usage-error.ts';
import { wholeNumber } from './whole-number.ts';

interface SimulateCommon {
  readonly command: 'simulate';
  readonly level: 'clean' | 'typical' | 'hard' | 'field' | 'free';
  readonly seed: number;
  readonly count: number;
  readonly folder: string;
  readonly replace: boolean;
}

export interface SimulateRaises extends SimulateCommon {
  readonly test: 'heel-raise';
  readonly placement: SensedPlacement;
  readonly gyroscope: boolean;
}

export interface SimulatePulls extends SimulateCommon {
  readonly test: 'isometric';
  readonly placement: 'inline' | 'platform';
  readonly kind: 'ramp' | 'fast';
  readonly rateHz: number;
}

export interface SimulateHops extends SimulateCommon {
  readonly test: 'hop-series';
  readonly placement: 'platform' | 'foot';
  readonly gyroscope: boolean;
  readonly rateHz: number;
}

/** A folder of heel raises as it comes from several hands. */
export interface SimulateMessy extends Omit<SimulateCommon, 'count'> {
  readonly test: 'messy';
  readonly people: number;
}

export type SimulateArguments = SimulateRaises | SimulatePulls | SimulateHops | SimulateMessy;

const LEVELS = ['clean', 'typical', 'hard', 'field', 'free'] as const;
const PULL_KINDS = ['ramp', 'fast'] as const;
const PULL_RATES_HZ = [80, 200, 1000, 2000] as const;
const HOP_PLACEMENTS = ['platform', 'foot'] as const;
/** what such sensors are sold with; a sensor on the foot seldom samples as fast as a platform */
const HOP_RATES_HZ = { platform: [500, 1000, 2000], foot: [200, 400, 1000] } as const;

interface SimulateOptions {
  test?: string;
  placement?: string;
  kind?: string;
  'rate-hz'?: string;
  'no-gyroscope'?: boolean;
  count?: string;
  messy?: boolean;
  people?: string;
}

/**
 * What the command line asks to be simulated; undefined where it asks for help.
 *
 * @throws {@link UsageError} with one sentence when it asks for nothing that can be done
 */
export function readSimulate(args: readonly string[]): SimulateArguments | undefined {
  const { values } = parsed(() =>
    parseArgs({
      args: [...args],
      allowPositionals: false,
      options: {
        test: { type: 'string' },
        placement: { type: 'string' },
        kind: { type: 'string' },
        'rate-hz': { type: 'string' },
        level: { type: 'string' },
        seed: { type: 'string' },
        count: { type: 'string' },
        'no-gyroscope': { type: 'boolean' },
        messy: { type: 'boolean' },
        people: { type: 'string' },
        out: { type: 'string' },
        replace: { type: 'boolean' },
        help: { type: 'boolean', short: 'h' },
      },
    }),
  );
  if (values.help === true) return undefined;
  const test = chosen('--test', values.test ?? 'heel-raise', TESTS);
  const level = chosen('--level', values.level ?? 'typical', LEVELS);
  requireFitting(test, values);
  if (values.out === undefined || values.out === '') throw new UsageError('--out needs the name of a folder');
  const shared = {
    command: 'simulate',
    level,
    seed: wholeNumber('--seed', values.seed ?? '1', 0, 2 ** 31 - 1),
    folder: values.out,
    replace: values.replace === true,
  } as const;
  if (values.messy === true) {
    return { ...shared, test: 'messy', people: wholeNumber('--people', values.people ?? '12', 2, 99) };
  }
  const common = { ...shared, count: wholeNumber('--count', values.count ?? '1', 1, 10_000) } as const;
  switch (test) {
    case 'isometric': {
      const placement = chosen('--placement', values.placement ?? 'inline', PULL_PLACEMENTS);
      const kind = chosen('--kind', values.kind ?? 'ramp', PULL_KINDS);
      return { ...common, test, placement, kind, rateHz: rateOf(values, PULL_RATES_HZ) };
    }
    case 'hop-series': {
      const placement = chosen('--placement', values.placement ?? 'platform', HOP_PLACEMENTS);
      const rateHz = rateOf(values, HOP_RATES_HZ[placement]);
      return { ...common, test, placement, gyroscope: values['no-gyroscope'] !== true, rateHz };
    }
    case 'heel-raise': {
      const placement = values.placement ?? 'heel';
      if (!isPlacement(placement) || placement === 'hand') {
        throw unknownWord('--placement', placement, SENSED_PLACEMENTS);
      }
      return { ...common, test, placement, gyroscope: values['no-gyroscope'] !== true };
    }
  }
}

function chosen<Word extends string>(option: string, given: string, known: readonly Word[]): Word {
  const word = known.find((one) => one === given);
  if (word === undefined) throw unknownWord(option, given, known);
  return word;
}

function rateOf(values: SimulateOptions, known: readonly number[]): number {
  return Number(chosen('--rate-hz', values['rate-hz'] ?? '1000', known.map(String)));
}

/** Options that say how one recording is made; those of a messy folder are made as three assistants would. */
const OF_ONE = ['test', 'placement', 'kind', 'rate-hz', 'no-gyroscope', 'count'] as const;

/** Refuses what says nothing of the test that is simulated. */
function requireFitting(test: (typeof TESTS)[number], values: SimulateOptions): void {
  const idle = OF_ONE.find((option) => values[option] !== undefined);
  if (values.messy === true && idle !== undefined) throw new UsageError(`--${idle} says nothing with --messy`);
  if (values.people !== undefined && values.messy !== true) {
    throw new UsageError('--people says something only with --messy');
  }
  if (values['no-gyroscope'] === true && (values.placement !== 'foot' || test === 'isometric')) {
    throw new UsageError('--no-gyroscope says something only with --placement foot');
  }
  if (values.kind !== undefined && test !== 'isometric') {
    throw new UsageError('--kind says something only with --test isometric');
  }
  if (values['rate-hz'] !== undefined && test === 'heel-raise') {
    throw new UsageError('--rate-hz says something only with --test isometric or hop-series');
  }
}
