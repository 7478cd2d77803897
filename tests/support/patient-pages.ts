import * as shared from '@surae/shared';
import { filesUnder, projectText } from './project.ts';

/** What such pages take from lists that are for the clinic: a unit, a line of the footer, the name of a day. */
const forTheClinic: readonly string[] = [
  'BILATERAL_WORDS',
  'FRAME_WORDS',
  'SAFETY_LIST',
  'SCOPE_SENTENCES',
  'TREND_WORDS',
];

/** Words beside such a page that are for the clinic. */
const notShown: readonly string[] = ['screen.legs.show', 'screen.legs.open', 'screen.legs.back'];

/** What a blank of such a sentence may hold: names as they are said, numbers in digits. */
const blanks: Readonly<Record<string, string>> = {
  leg: 'your left leg',
  name: 'the clinic',
  difference: '5 more',
  unit: 'raises',
  what: 'your left leg did 12',
  side: 'left leg',
  first: 'your left leg did 12',
  second: 'your right leg did 9',
};

/** Names that modules take from the shared data. */
function takenBy(paths: readonly string[]): readonly string[] {
  const taken = paths.flatMap((path) => {
    const imports = [...projectText(path).matchAll(/import \{([^}]*)\} from '@surae\/shared'/g)];
    return imports.flatMap(([, names = '']) => names.match(/\b[A-Z][A-Z_]{3,}\b/g) ?? []);
  });
  return [...new Set(taken)].sort();
}

function isSentence(one: unknown): one is shared.Sentence {
  return typeof one === 'object' && one !== null && 'text' in one && typeof one.text === 'string' && 'id' in one;
}

/** A list of words, or the entries of a table that such a page shows, as far as they are sentences. */
function sentencesOf(name: string): readonly string[] {
  const list = Object.values((shared as unknown as Readonly<Record<string, object>>)[name] ?? {});
  return list
    .filter(isSentence)
    .filter(({ id }) => !notShown.some((one) => id.endsWith(one)))
    .map(({ text }) => text.replace(/\{(\w+)\}/g, (_blank, blank: string) => blanks[blank] ?? '12'));
}

/**
 * The sentences that are read by who was tested, by the list that they stand in: every list that the pages of the legs and the pages
 * at home take. Names of fields and single words are left out, because they would make a page look easier than it is.
 */
export function patientPages(): readonly (readonly [list: string, sentences: readonly string[]])[] {
  const paths = [
    ...filesUnder('apps/dashboard/src/home'),
    ...filesUnder('apps/dashboard/src/legs'),
    'apps/dashboard/src/pages/legs-page.ts',
    'apps/dashboard/src/plan/plan-words.ts',
  ];
  return takenBy(paths)
    .filter((name) => !forTheClinic.includes(name))
    .map((name) => [name, sentencesOf(name).filter((text) => text.split(/\s+/).length >= 4)] as const)
    .filter(([, sentences]) => sentences.length > 0);
}
