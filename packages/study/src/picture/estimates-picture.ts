import type { ComparedArms } from '../compare/compare-arms.ts';
import type { StudyFile } from '../declared/study-document.ts';
import { valueWords } from '../multiverse/analyses.ts';
import type { AnalysisResult, Multiverse } from '../multiverse/multiverse.ts';
import { outcomeHeading } from '../quality/quality-table.ts';
import { contrastWords, estimateWords } from './conclusion-words.ts';
import { decimalsFor, dot, lozenge, plain, roundValues, stroke, svgPage, written } from './svg-page.ts';

const WIDTH = 980;
const FIELD = { left: 40, right: 560, top: 132 } as const;
/** up to so many analyses each line says what was chosen */
const MOST_NAMED = 40;
/** of which as much as the page is wide; the table has all of it */
const MOST_LETTERS = 52;

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

/**
 * The estimates of all analyses in order, each with its interval, the declared one marked, as a page in SVG. What an analysis says is
 * told by the shape of its mark: full, open, or a stroke.
 *
 * @param from - where it comes from, for the file itself
 */
export function estimatesPicture(study: StudyFile, found: Multiverse, from: string): string {
  const { scale } = study.comparison;
  const lines = linesOf(found);
  const step = Math.min(24, Math.max(3, 640 / Math.max(1, lines.length)));
  const bottom = FIELD.top + step * Math.max(1, lines.length) + 10;
  const none = scale === 'ratio' ? 1 : 0;
  const bounds = [none, ...lines.flatMap(({ compared: { estimate } }) => [estimate.low, estimate.high])];
  const [low, high] = [Math.min(...bounds), Math.max(...bounds)];
  const room = (high - low || 1) * 0.04;
  const x = (value: number): number =>
    FIELD.left + ((value - low + room) / (high - low + 2 * room)) * (FIELD.right - FIELD.left);
  const ticks = roundValues(low - room, high + room, 6);
  const decimals = decimalsFor((ticks[1] ?? 1) - (ticks[0] ?? 0)) - 1;
  const radius = Math.min(5, step / 2.4);
  const mark = ({ result, compared }: Line, y: number): string => {
    const place = x(compared.estimate.value);
    if (result.analysis.isDeclared) return lozenge(place, y, 'voice', Math.max(7, radius));
    switch (compared.conclusion.differs) {
      case 'yes':
        return dot(place, y, 'full', radius);
      case 'cannot_tell':
        return dot(place, y, 'open', radius);
      case 'no':
        return stroke(place, y - radius, place, y + radius, 'ink', 2.5);
    }
  };
  const drawn = lines.map((line, row) => ({ line, y: FIELD.top + step * (row + 0.5) }));
  // the declared one lies over the others
  drawn.sort((a, b) => Number(a.line.result.analysis.isDeclared) - Number(b.line.result.analysis.isDeclared));
  const { description, unit } = outcomeHeading(study, study.outcomes.primary);
  const declared = lines.find(({ result }) => result.analysis.isDeclared);
  const contrast = contrastWords(study.comparison);
  const tail = scale === 'ratio' || unit === '1' ? '' : `, ${unit}`;
  const heading = changedWords(found);
  const apart = found.compared - lines.length;
  const what =
    `${contrast}, ${study.outcomes.primary}: ${description}${tail}. ${heading}.` +
    (declared === undefined ? '' : ` Declared: ${estimateWords(declared.compared)}.`);
  return svgPage({ width: WIDTH, height: bottom + 84, name: heading, what, from }, [
    written(FIELD.left, 40, heading, 'word', 20),
    written(FIELD.left, 66, `${contrast}, ${study.outcomes.primary}: ${description}${tail}`, 'quiet'),
    lozenge(FIELD.left + 6, 95, 'voice', 7),
    written(FIELD.left + 20, 100, 'declared', 'quiet', 14),
    dot(FIELD.left + 106, 95, 'full', 5),
    written(FIELD.left + 118, 100, SAID.yes, 'quiet', 14),
    dot(FIELD.left + 216, 95, 'open', 5),
    written(FIELD.left + 228, 100, SAID.cannot_tell, 'quiet', 14),
    stroke(FIELD.left + 326, 90, FIELD.left + 326, 100, 'ink', 2.5),
    written(FIELD.left + 338, 100, SAID.no, 'quiet', 14),
    stroke(x(none), FIELD.top - 8, x(none), bottom, 'hair', 1),
    ...ticks.flatMap((value) => [
      stroke(x(value), bottom, x(value), bottom + 6, 'hair', 1),
      written(x(value), bottom + 24, plain(value, Math.max(0, decimals)), 'quiet', 14, 'middle'),
    ]),
    stroke(FIELD.left, bottom, FIELD.right, bottom, 'hair', 1),
    ...drawn.flatMap(({ line, y }) => [
      stroke(x(line.compared.estimate.low), y, x(line.compared.estimate.high), y, 'ink', Math.min(1.2, step / 4)),
      mark(line, y),
      ...(lines.length <= MOST_NAMED || line.result.analysis.isDeclared
        ? [
            written(
              FIELD.right + 20,
              y + 5,
              chosen(line, found),
              line.result.analysis.isDeclared ? 'word' : 'quiet',
              14,
            ),
          ]
        : []),
    ]),
    written(
      FIELD.left,
      bottom + 52,
      'upright line: no difference; each other line: an analysis with its interval',
      'quiet',
      14,
    ),
    ...(apart === 0
      ? []
      : [written(FIELD.left, bottom + 72, `${apart} on the other scale stand in the table alone`, 'quiet', 14)]),
  ]);
}
