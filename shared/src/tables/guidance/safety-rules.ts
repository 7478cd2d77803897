import { PLAN_OPEN_LINES } from '../plan-rules.ts';
import { SAFETY_LIST, type SafetyEntry } from '../safety-list.ts';
import type { GuidanceRule, RuleProposal } from './rule-entry.ts';
import { type Basis, guidanceRule, ruleNumber } from './rule-made.ts';

const before = SAFETY_LIST.filter(({ when }) => when === 'before');

/** Lines that keep from loading: those that keep from a test, but for those that ask for a lighter beginning. */
const locking = before.filter(
  ({ id, effect }) => effect === 'do-not-test' && !PLAN_OPEN_LINES.some(({ line }) => line === id),
);

function lock({ id, override, source, mark }: SafetyEntry): GuidanceRule {
  return guidanceRule({
    code: `lock-${id.slice('safety.'.length)}`,
    about: 'block',
    of: 'person',
    source,
    mark,
    // a line that no reason opens keeps from loading until it is clear; another one until a reason is kept
    when: override === 'with-reason' ? { fact: id, is: 'ticked' } : { not: { fact: id, is: 'clear' } },
    proposes: { kind: 'block', code: id, touches: [], blocks: ['loading'] },
    sentence: 'lock-line',
    changedBy: override === 'with-reason' ? 'lock-line-reason' : 'lock-line',
  });
}

const RUPTURE: Basis = {
  source: 'Maffulli 1998 Am J Sports Med 26:266; union of rules from memory',
  mark: 'from-memory',
};

/** The first line of the safety list asks the same of the person: without an answer that line keeps from loading. */
const ruptureFirst: RuleProposal = {
  kind: 'block',
  code: 'safety.rupture',
  touches: [],
  blocks: ['loading'],
  onlyWhereItHolds: true,
};

/** What keeps from every load: nothing that loads is proposed, and the next step is said in its place. */
export const SAFETY_RULES: readonly GuidanceRule[] = [
  ...locking.map(lock),
  guidanceRule({
    ...RUPTURE,
    code: 'lock-sudden-loss',
    about: 'block',
    when: { fact: 'sudden-loss', is: 'yes' },
    proposes: ruptureFirst,
  }),
  guidanceRule({
    ...RUPTURE,
    code: 'lock-no-raise',
    about: 'block',
    when: { all: [{ fact: 'valid-raises', atMost: 'none' }, { not: { fact: 'rupture-looked', is: 'clear' } }] },
    numbers: { none: ruleNumber('no-raise', 0) },
    standIns: ['rupture-looked'],
    proposes: ruptureFirst,
  }),
  guidanceRule({
    ...RUPTURE,
    code: 'lock-rupture-looked',
    about: 'block',
    when: { fact: 'rupture-looked', is: 'suspected' },
    standIns: ['rupture-looked'],
    proposes: ruptureFirst,
  }),
  ...before
    .filter(({ effect }) => effect === 'no-maximal-isometric')
    .map(({ id, source, mark }) =>
      guidanceRule({
        code: `no-hard-hold-${id.slice('safety.'.length)}`,
        about: 'block',
        of: 'person',
        source,
        mark,
        when: { not: { fact: id, is: 'clear' } },
        proposes: { kind: 'block', code: id, touches: [], blocks: ['hard-hold'] },
        sentence: 'no-hard-hold',
        changedBy: 'lock-line',
      }),
    ),
  ...before
    .filter(({ effect }) => effect === 'caution')
    .map(({ id, source, mark }) =>
      guidanceRule({
        code: `note-${id.slice('safety.'.length)}`,
        about: 'prompt',
        of: 'person',
        source,
        mark,
        when: { not: { fact: id, is: 'clear' } },
        proposes: { kind: 'prompt', code: id, touches: [] },
        sentence: 'note-line',
        changedBy: 'lock-line',
      }),
    ),
];
