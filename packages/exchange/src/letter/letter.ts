import { END_CLASS_SENTENCES, END_REASON_SENTENCES, LETTER_SENTENCES, SCOPE_SENTENCES } from '@surae/shared';
import type { StudyByHand, StudyPerson, StudyResult, StudyTrial, StudyVisit } from '../study.ts';
import { filled, ofTen, withInterval, withUncertainty } from './figures.ts';
import { legLines } from './leg-lines.ts';
import { escaped } from './unbreakable.ts';

/** A letter about one visit, as text and as a page of its own. */
export interface Letter {
  readonly text: string;
  readonly html: string;
}

const words = LETTER_SENTENCES;

function legOf({ side }: StudyTrial): string {
  return words[side ?? 'side-unknown'].text;
}

function notMeasured(trial: StudyTrial): string {
  return filled(words['not-measured'], { leg: legOf(trial), what: words[`what-${trial.test}`].text });
}

/** Where a person judged by hand: on how many both agree, and what was measured alone. */
function byHandLines(byHand: StudyByHand | undefined): string[] {
  if (byHand === undefined) return [];
  const { count, agreed, of } = byHand;
  const figure = withInterval(count.scored, count.scoredLow, count.scoredHigh, 0);
  return [filled(words['judged-by-hand'], { agreed: String(agreed), of: String(of), figure })];
}

function raiseLines(
  leg: string,
  { report: { count, placement, reference, measures }, byHand }: Extract<StudyResult, { test: 'heel-raise' }>,
): string[] {
  const figure = withInterval(count.scored, count.scoredLow, count.scoredHigh, 0);
  const way = measures.displacementM;
  const { heightM = null, heightUM = null } = reference ?? {};
  return [
    filled(words[`raises${placement === 'hand' ? '-by-hand' : ''}${count.censored ? '-at-least' : ''}`], {
      leg,
      figure,
    }),
    filled(words.tried, { figure: withInterval(count.attempted, count.low, count.high, 0) }),
    ...byHandLines(byHand),
    ...(placement === 'hand' ? [words['counted-by-hand'].text] : []),
    ...(heightM === null || heightUM === null
      ? []
      : [filled(words.reference, { figure: withUncertainty(1000 * heightM, 1000 * heightUM, 'mm') })]),
    ...(way === null || way.low === null || way.high === null
      ? []
      : [filled(words.displacement, { figure: withInterval(way.value, way.low, way.high, 2, 'm') })]),
  ];
}

const RULES = { 'best-mean': 'rule-best-mean', 'best-peak': 'rule-best-peak' } as const;

function resultLines(trial: StudyTrial, result: StudyResult): string[] {
  const leg = legOf(trial);
  switch (result.test) {
    case 'heel-raise':
      return raiseLines(leg, result);
    case 'isometric': {
      const { score, calibrationRelativeU } = result.report;
      const { net, unit, rule } = score;
      if (net === null) return [notMeasured(trial)];
      const ruled = words[Object.hasOwn(RULES, rule) ? RULES[rule as keyof typeof RULES] : 'rule-other'].text;
      return [
        filled(words.pushes, { leg, figure: withUncertainty(net.value, net.u, unit), rule: ruled }),
        ...(calibrationRelativeU === null ? [words['no-calibration'].text] : []),
      ];
    }
    case 'hop-series': {
      const { hops, low, high } = result.report.count;
      return [filled(words.hops, { leg, figure: withInterval(hops, low, high, 0) })];
    }
  }
}

/** Whether a result may be interpreted, where anything stands against it. */
function gateLines(result: StudyResult): string[] {
  if (result.test === 'hop-series') return [];
  const { usable } = result.report.gate;
  if (usable === 'yes') return [];
  return [words[usable === 'no' ? 'not-usable' : 'cannot-tell-usable'].text];
}

function trialLines(trial: StudyTrial): string[] {
  const { result } = trial;
  if (trial.setAside) {
    return [filled(words.taken, { leg: legOf(trial), what: words[`what-${trial.test}`].text })];
  }
  if (result === null) return [notMeasured(trial)];
  return [
    ...resultLines(trial, result),
    ...(trial.endReason === null ? [] : [END_REASON_SENTENCES[trial.endReason].text]),
    END_CLASS_SENTENCES[result.report.end.class].text,
    trial.painPeak === null ? words['pain-not-told'].text : filled(words.pain, { figure: ofTen(trial.painPeak) }),
    ...gateLines(result),
  ];
}

/** The sentences of a letter, paragraph by paragraph. */
export function letterParagraphs(
  person: StudyPerson | undefined,
  visit: StudyVisit,
  trials: readonly StudyTrial[],
): string[][] {
  const day = visit.at?.slice(0, 10);
  const head = [
    ...(person?.name == null ? [] : [filled(words.person, { person: person.name })]),
    ...(day === undefined ? [] : [filled(words.visit, { day })]),
  ];
  const sides = new Set(trials.filter(({ setAside, result }) => !setAside && result !== null).map(({ side }) => side));
  const compared = visit.compared();
  return [
    [words.title.text],
    head,
    ...trials.map(trialLines),
    ...compared.map(legLines),
    ...(compared.length === 0 && sides.has('left') && sides.has('right') ? [[words['both-legs'].text]] : []),
    [words.cautions.text],
    [SCOPE_SENTENCES.scope.text],
  ].filter((paragraph) => paragraph.length > 0);
}

/** A figure in one piece: where a break cannot be, all of it is taken when any of it is. */
function htmlOf(sentence: string): string {
  return escaped(sentence).replace(
    /[^\s\u00A0]+(?:\u00A0[^\s\u00A0]+)+/g,
    (figure) => `<span class="figure">${figure}</span>`,
  );
}

/**
 * The letter about a visit. A number stands in it in one piece with its interval or uncertainty, or with the words that it was
 * told and has none; what was not measured says so.
 */
export function letterOf(person: StudyPerson | undefined, visit: StudyVisit, trials: readonly StudyTrial[]): Letter {
  const paragraphs = letterParagraphs(person, visit, trials);
  const [title = [], ...others] = paragraphs;
  const body = others.map((lines) => `<p>${lines.map(htmlOf).join(' ')}</p>`).join('\n');
  return {
    text: `${paragraphs.map((lines) => lines.join('\n')).join('\n\n')}\n`,
    html: [
      '<!doctype html>',
      '<html lang="en">',
      '<head>',
      '<meta charset="utf-8">',
      `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">`,
      `<title>${escaped(title.join(' '))}</title>`,
      '<style>body { max-width: 66ch; margin: 2rem auto; font: 1rem/1.5 sans-serif; } .figure { white-space: nowrap; user-select: all; }</style>',
      '</head>',
      '<body>',
      `<h1>${escaped(title.join(' '))}</h1>`,
      body,
      '</body>',
      '</html>',
      '',
    ].join('\n'),
  };
}
