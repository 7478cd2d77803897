import type { ComparedArms } from '../compare/compare-arms.ts';
import type { StudyFile } from '../declared/study-document.ts';
import { valueWords } from '../multiverse/analyses.ts';
import type { AnalysisResult, Multiverse } from '../multiverse/multiverse.ts';
import { outcomeHeading } from '../quality/quality-table.ts';
import { contrastWords, estimateWords } from './conclusion-words.ts';
import { decimalsFor, dot, lozenge, plain, roundValues, stroke, svgPage, written } from './svg-page.ts';
import { FIGURE_WIDTH, headBlocks, textBlock } from './text-block.ts';

const LEFT = 16;
const RIGHT = 384;
/** up to so many analyses each says what was chosen, above its interval */
const MOST_NAMED = 40;
/** of which as much as the page is wide; the table has all of it */
const MOST_LETTERS = 50;
const NAMED_STEP = 40;
const BARE_STEP = 24;

const SAID = { yes: 'they differ', cannot_tell: 'cannot tell', no: 'differ by less than the margin' } as const;

interface Line {
  readonly result: AnalysisResult;
  readonly compared: ComparedArms;
}

/** The analyses on the declared scale that say something, from the lowest estimate to the highest. */
function linesOf({ results, declared }: Multiverse): Line[] {
  const { scale } = declared.analysis.study.comparison;
  return results
    .flatMap((result): Line[] => {
      const { result: compared } = result.comparison;
      const isOnScale = result.analysis.study.comparison.scale === scale;
      return compared.kind === 'compared' && isOnScale ? [{ result, compared }] : [];
    })
    .sort(
      (a, b) =>
        a.compared.estimate.value - b.compared.estimate.value || (a.result.analysis.id < b.result.analysis.id ? -1 : 1),
    );
}

/** What an analysis chose otherwise than the declared one. */
function chosen({ result: { analysis }, compared }: Line, { declared }: Multiverse): string {
  if (analysis.isDeclared) return `as declared: ${SAID[compared.conclusion.differs]}`;
  const words = [...analysis.choices]
    .filter(([name, value]) => value !== declared.analysis.choices.get(name))
    .map(([name, value]) => `${name.replace(/^(?:protocol|settings|exclusion)\./, '')} ${valueWords(value)}`)
    .join(', ');
  return words.length > MOST_LETTERS ? `${words.slice(0, MOST_LETTERS)}...` : words;
}

/** How many of how many say something else, in a sentence. */
export function changedWords({ changed, compared, results }: Multiverse): string {
  const not = results.length - compared;
  const apart = not === 0 ? '' : `; ${not} can say nothing`;
  if (changed === null) return `The declared analysis says nothing; ${compared} of ${results.length} do`;
  return `${changed} of ${compared} analyses say something else than the declared one${apart}`;
}

/** What the kinds of marks say, two in a row. */
function keyRows(top: number): { parts: string[]; next: number } {
  const [second, below] = [LEFT + 122, top + 24];
  const parts = [
    lozenge(LEFT + 6, top - 5, 'voice', 7),
    written(LEFT + 20, top, 'declared', 'quiet', 14),
    dot(second, top - 5, 'full', 5),
    written(second + 14, top, SAID.yes, 'quiet', 14),
    dot(LEFT + 6, below - 5, 'open', 5),
    written(LEFT + 20, below, SAID.cannot_tell, 'quiet', 14),
    stroke(second, below - 11, second, below + 1, 'ink', 2.5),
    written(second + 14, below, SAID.no, 'quiet', 14),
  ];
  return { parts, next: below + 20 };
}

/** The mark of an analysis: the declared one by its own, the others by what they say. */
function markOf({ result, compared }: Line, x: number, y: number, radius: number): string {
  if (result.analysis.isDeclared) return lozenge(x, y, 'voice', Math.max(7, radius));
  switch (compared.conclusion.differs) {
    case 'yes':
      return dot(x, y, 'full', radius);
    case 'cannot_tell':
      return dot(x, y, 'open', radius);
    case 'no':
      return stroke(x, y - radius, x, y + radius, 'ink', 2.5);
  }
}

/**
 * The estimates of all analyses in order, each with its interval, the declared one marked, as a page in SVG. What an analysis says is
 * told by the shape of its mark: full, open, or a stroke.
 *
 * @param from - where it comes from, for the file itself
 */
export function estimatesPicture(study: StudyFile, found: Multiverse, from: string): string {
  const { scale } = study.comparison;
  const lines = linesOf(found);
  const isNamed = lines.length <= MOST_NAMED;
  const step = isNamed ? NAMED_STEP : Math.min(BARE_STEP, Math.max(3, 640 / lines.length));
  const { description, unit } = outcomeHeading(study, study.outcomes.primary);
  const contrast = contrastWords(study.comparison);
  const tail = scale === 'ratio' || unit === '1' ? '' : `, ${unit}`;
  const heading = changedWords(found);
  const outcome = `${contrast}, ${study.outcomes.primary}: ${description}${tail}`;
  const head = headBlocks(heading, [outcome]);
  const keys = keyRows(head.next + 10);
  const top = keys.next;
  const bottom = top + step * Math.max(1, lines.length) + 10;
  const none = scale === 'ratio' ? 1 : 0;
  const bounds = [none, ...lines.flatMap(({ compared: { estimate } }) => [estimate.low, estimate.high])];
  const [low, high] = [Math.min(...bounds), Math.max(...bounds)];
  const room = (high - low || 1) * 0.04;
  const x = (value: number): number => LEFT + ((value - low + room) / (high - low + 2 * room)) * (RIGHT - LEFT);
  const ticks = roundValues(low - room, high + room, 5);
  const decimals = decimalsFor((ticks[1] ?? 1) - (ticks[0] ?? 0)) - 1;
  const radius = isNamed ? 5 : Math.min(5, step / 2.4);
  const drawn = lines.map((line, row) => ({ line, y: top + step * (row + (isNamed ? 0.72 : 0.5)) }));
  // the declared one lies over the others
  drawn.sort((a, b) => Number(a.line.result.analysis.isDeclared) - Number(b.line.result.analysis.isDeclared));
  // words are not crossed by the line of no difference
  const nothing = isNamed
    ? drawn.map(({ y }) => stroke(x(none), y - 9, x(none), y + 8, 'hair', 1))
    : [stroke(x(none), top - 4, x(none), bottom, 'hair', 1)];
  const declared = lines.find(({ result }) => result.analysis.isDeclared);
  const apart = found.compared - lines.length;
  const what =
    `${outcome}. ${heading}.` + (declared === undefined ? '' : ` Declared: ${estimateWords(declared.compared)}.`);
  const notes = notesBelow(bottom + 52, [
    `upright ${isNamed ? 'strokes' : 'line'}: no difference; each other line: an analysis with its interval`,
    isNamed || declared === undefined ? '' : chosen(declared, found),
    apart === 0 ? '' : `${apart} on the other scale stand in the table alone`,
  ]);
  return svgPage({ width: FIGURE_WIDTH, height: notes.next, name: heading, what, from }, [
    ...head.parts,
    ...keys.parts,
    ...nothing,
    ...ticks.flatMap((value) => [
      stroke(x(value), bottom, x(value), bottom + 6, 'hair', 1),
      written(x(value), bottom + 24, plain(value, Math.max(0, decimals)), 'quiet', 14, 'middle'),
    ]),
    stroke(LEFT, bottom, RIGHT, bottom, 'hair', 1),
    ...drawn.flatMap(({ line, y }) => [
      stroke(x(line.compared.estimate.low), y, x(line.compared.estimate.high), y, 'ink', Math.min(1.2, step / 4)),
      markOf(line, x(line.compared.estimate.value), y, radius),
      ...(isNamed
        ? [written(LEFT, y - 12, chosen(line, found), line.result.analysis.isDeclared ? 'word' : 'quiet', 14)]
        : []),
    ]),
    ...notes.parts,
  ]);
}

function notesBelow(top: number, texts: readonly string[]): { parts: string[]; next: number } {
  const parts: string[] = [];
  let next = top;
  for (const text of texts.filter((one) => one !== '')) {
    const block = textBlock(text, { x: LEFT, y: next, width: RIGHT - LEFT, look: 'quiet', size: 14 });
    parts.push(...block.parts);
    next = block.next + 4;
  }
  return { parts, next };
}
