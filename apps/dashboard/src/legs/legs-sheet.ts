import { HOME_WORDS, LEGS_WORDS, SCOPE_SENTENCES } from '@surae/shared';
import { legsShown } from '../result/two-legs.ts';
import { figurePart, type SheetPart } from '../sheet/sheet.ts';
import { canAndCannot, type LegsTest, type LegsView, legsTitle } from './legs-view.ts';
import { redFlags } from './red-flags.ts';
import { twoLines } from './two-lines.ts';
import { twoMarks } from './two-marks.ts';

/** The red flags and whom to ring: they stand before all else. */
export function flagPart(contact: LegsView['contact']): SheetPart {
  const { title, emergency, ring, lines } = redFlags(contact);
  return {
    kind: 'section',
    of: 'flags',
    id: 'flags',
    parts: [
      { kind: 'heading', text: title },
      { kind: 'text', text: emergency },
      { kind: 'text', text: ring },
      { kind: 'list', items: lines },
    ],
  };
}

function testPart({ title, sentences, figures, lines, words }: LegsTest): SheetPart {
  const [lead = '', ...others] = sentences;
  return {
    kind: 'section',
    of: 'test',
    parts: [
      { kind: 'heading', text: title },
      { kind: 'text', of: 'lead', text: lead },
      ...others.map((text): SheetPart => ({ kind: 'text', of: 'said', text })),
      ...figurePart(twoMarks(figures), figures.title),
      ...figurePart(twoLines(lines, words, legsShown(figures)), LEGS_WORDS.course.text, LEGS_WORDS.band.text),
    ],
  };
}

/** The code for a phone of their own: on paper it stands beside the first sentences, where there is room. */
function codePart(address: string): SheetPart {
  const code = { label: HOME_WORDS['code-label'].text, tooLong: HOME_WORDS['code-long'].text };
  return {
    kind: 'section',
    of: 'paper-code',
    parts: [
      { kind: 'code', text: address, ...code },
      { kind: 'text', text: HOME_WORDS['code-title'].text },
    ],
  };
}

/** What was agreed on; nothing where nothing was. */
function planPart(plan: LegsView['plan']): readonly SheetPart[] {
  if (plan.length === 0) return [];
  const parts = [{ kind: 'heading', text: HOME_WORDS.plan.text } as const, { kind: 'list', items: plan } as const];
  return [{ kind: 'section', of: 'can agreed', parts }];
}

/** What somebody is shown of their two legs, on the page, on paper and in the file; an empty address has no code. */
export function legsSheet(view: LegsView, address: string): readonly SheetPart[] {
  const { contact, day, notes, tests, plan } = view;
  return [
    flagPart(contact),
    ...(address === '' ? [] : [codePart(address)]),
    { kind: 'title', text: legsTitle(view), describedBy: 'flags' },
    { kind: 'text', of: 'quiet', text: day },
    ...notes.map((text): SheetPart => ({ kind: 'text', text })),
    ...(tests.length === 0 ? [{ kind: 'text', text: LEGS_WORDS.nothing.text } as const] : tests.map(testPart)),
    ...planPart(plan),
    { kind: 'section', of: 'can', parts: [...numbersPart(view), scope] },
  ];
}

const scope = { kind: 'text', of: 'quiet', text: SCOPE_SENTENCES.scope.text } as const;

/** What such numbers can and cannot say, where there are some. */
function numbersPart(view: LegsView): readonly SheetPart[] {
  if (view.tests.length === 0) return [];
  return [
    { kind: 'heading', text: LEGS_WORDS['can-title'].text },
    { kind: 'list', items: canAndCannot(view) },
  ];
}
