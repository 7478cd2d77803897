import { parseArgs } from 'node:util';
import { parsed } from './parsed-options.ts';
import { UsageError } from './usage-error.ts';
import { wholeNumber } from './whole-number.ts';

/** Verdicts of a rater, and the key of the names that the rater was shown. */
export interface RaterFiles {
  readonly verdicts: string;
  readonly key: string;
}

/** Who did something, and when, as it is told: nothing is taken from a clock. */
export interface Who {
  readonly by: string;
  readonly at: string | null;
}

/** One thing that the command does. */
export type StudyAct =
  | {
      readonly act: 'results';
      readonly manifest: string;
      readonly out: string;
      readonly decisions: string | undefined;
      readonly raters: readonly RaterFiles[];
      readonly most: number | undefined;
      readonly json: boolean;
    }
  | {
      readonly act: 'decide';
      readonly manifest: string;
      readonly decisions: string;
      readonly trial: string;
      readonly decision: string;
      readonly who: Who;
      readonly why: string;
    }
  | {
      readonly act: 'blind';
      readonly manifest: string;
      readonly decisions: string | undefined;
      readonly rater: string;
      readonly key: string;
      readonly out: string;
    }
  | { readonly act: 'take-in'; readonly folder: string; readonly rater: RaterFiles }
  | { readonly act: 'lock'; readonly rater: RaterFiles; readonly who: Who }
  | {
      readonly act: 'open';
      readonly rater: RaterFiles;
      readonly who: Who;
      readonly why: string;
      readonly early: boolean;
    }
  | { readonly act: 'check'; readonly record: string };

export interface StudyArguments {
  readonly command: 'study';
  readonly study: string;
  /** study files that this one amends, in any order */
  readonly earlier: readonly string[];
  readonly replace: boolean;
  readonly asked: StudyAct;
}

interface Values {
  manifest?: string;
  out?: string;
  decisions?: string;
  earlier?: string[];
  verdicts?: string[];
  key?: string[];
  blind?: string;
  'take-in'?: string;
  lock?: boolean;
  open?: boolean;
  early?: boolean;
  decide?: string;
  check?: string;
  by?: string;
  on?: string;
  why?: string;
  most?: string;
  json?: boolean;
  replace?: boolean;
  help?: boolean;
}

const ACTS = ['blind', 'take-in', 'lock', 'open', 'decide', 'check'] as const;

/** Options that say something beside each act, apart from those that always do. */
const BESIDE: Readonly<Record<(typeof ACTS)[number] | 'results', readonly (keyof Values)[]>> = {
  results: ['manifest', 'out', 'decisions', 'verdicts', 'key', 'most', 'json'],
  blind: ['manifest', 'out', 'decisions', 'key'],
  'take-in': ['verdicts', 'key'],
  lock: ['verdicts', 'key', 'by', 'on'],
  open: ['verdicts', 'key', 'by', 'on', 'why', 'early'],
  decide: ['manifest', 'decisions', 'by', 'on', 'why'],
  check: [],
};

function given(values: Values, name: keyof Values, where: string): string {
  const value = values[name];
  if (typeof value !== 'string' || value === '') throw new UsageError(`${where} needs --${name}`);
  return value;
}

function one(values: Values, name: 'key' | 'verdicts', where: string): string {
  const [first, ...more] = values[name] ?? [];
  if (first === undefined || first === '') throw new UsageError(`${where} needs --${name}`);
  if (more.length > 0) throw new UsageError(`${where} takes one --${name}`);
  return first;
}

function who(values: Values, where: string): Who {
  return { by: given(values, 'by', where), at: values.on ?? null };
}

function raters({ verdicts = [], key: keys = [] }: Values): RaterFiles[] {
  if (verdicts.length !== keys.length) {
    throw new UsageError(`each --verdicts needs its --key: got ${verdicts.length} and ${keys.length}`);
  }
  return verdicts.map((file, at) => ({ verdicts: file, key: keys[at]! }));
}

function asked(act: (typeof ACTS)[number] | 'results', values: Values): StudyAct {
  const where = act === 'results' ? 'surae study' : `--${act}`;
  switch (act) {
    case 'results':
      return {
        act,
        manifest: given(values, 'manifest', where),
        out: given(values, 'out', where),
        decisions: values.decisions,
        raters: raters(values),
        most: values.most === undefined ? undefined : wholeNumber('--most', values.most, 1, 100_000),
        json: values.json === true,
      };
    case 'decide': {
      const text = given(values, 'decide', where);
      const found = /^(.+)=([^=]+)$/.exec(text);
      if (found === null) {
        throw new UsageError(
          `--decide ${text}: expected a trial and include, exclude:REASON or open, such as a.csv=open`,
        );
      }
      const [, trial, decision] = found as unknown as [string, string, string];
      const decisions = given(values, 'decisions', where);
      const manifest = given(values, 'manifest', where);
      return { act, manifest, decisions, trial, decision, who: who(values, where), why: given(values, 'why', where) };
    }
    case 'blind': {
      const [manifest, out] = [given(values, 'manifest', where), given(values, 'out', where)];
      const { decisions } = values;
      return { act, manifest, out, decisions, rater: given(values, 'blind', where), key: one(values, 'key', where) };
    }
    case 'take-in':
    case 'lock':
    case 'open': {
      const rater = { verdicts: one(values, 'verdicts', where), key: one(values, 'key', where) };
      if (act === 'take-in') return { act, folder: given(values, 'take-in', where), rater };
      if (act === 'lock') return { act, rater, who: who(values, where) };
      return { act, rater, who: who(values, where), why: given(values, 'why', where), early: values.early === true };
    }
    case 'check':
      return { act, record: given(values, 'check', where) };
  }
}

/**
 * What the command line asks of a study; undefined when it asks for help.
 *
 * @throws {@link UsageError} with one sentence when it asks for nothing that can be done
 */
export function readStudyArguments(args: readonly string[]): StudyArguments | undefined {
  const text = { type: 'string' } as const;
  const several = { type: 'string', multiple: true } as const;
  const flag = { type: 'boolean' } as const;
  const { values, positionals } = parsed(() =>
    parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        manifest: text,
        out: text,
        decisions: text,
        earlier: several,
        verdicts: several,
        key: several,
        blind: text,
        'take-in': text,
        lock: flag,
        open: flag,
        early: flag,
        decide: text,
        check: text,
        by: text,
        on: text,
        why: text,
        most: text,
        json: flag,
        replace: flag,
        help: { type: 'boolean', short: 'h' },
      },
    }),
  );
  if (values.help === true) return undefined;
  const [study, ...more] = positionals;
  if (study === undefined) throw new UsageError('name the study file');
  if (more.length > 0) throw new UsageError(`name one study file: "${more[0]}" came after "${study}"`);
  const acts = ACTS.filter((act) => values[act] !== undefined);
  if (acts.length > 1) throw new UsageError(`choose --${acts[0]} or --${acts[1]}, not both`);
  const act = acts[0] ?? 'results';
  const always = ['earlier', 'replace', act];
  const idle = (Object.keys(values) as (keyof Values)[]).find(
    (name) => !always.includes(name) && !BESIDE[act].includes(name),
  );
  if (idle !== undefined) {
    const beside = ACTS.filter((name) => BESIDE[name].includes(idle)).map((name) => `--${name}`);
    const where = act === 'results' ? `only with ${beside.join(' or ')}` : `nothing with --${act}`;
    throw new UsageError(`--${idle} says ${where}`.replace('says only', 'says something only'));
  }
  return {
    command: 'study',
    study,
    earlier: values.earlier ?? [],
    replace: values.replace === true,
    asked: asked(act, values),
  };
}
