import type { LegFinding, PullFinding, ReferenceBeside, Reliability, Side, SinceVisit } from '@surae/analysis';
import {
  CHANGE_ZONE_SENTENCES,
  COMPARE_CAUTION_SENTENCES,
  COMPARE_SENTENCES,
  type EvidenceMark,
  LEG_COMPARISON_SENTENCES,
  NO_CHANGE_SENTENCES,
  NO_REFERENCE_SENTENCES,
  OWN_RATIO_SENTENCES,
  RATIO_BLOCK_SENTENCES,
  RATIO_ERROR_SENTENCES,
  REFERENCE_CAUTION_SENTENCES,
  type Sentences,
  VALUE_BLOCK_SENTENCES,
} from '@surae/shared';
import type { ComparedSet } from './compared-set.ts';
import type { Comparison, LegsComparison, VisitsComparison } from './comparisons.ts';

/** A thing that is said with a comparison, by code and in words. */
export interface Remark {
  readonly about:
    | 'against-ratio'
    | 'against-change'
    | 'caution'
    | 'reference'
    | 'no-reference'
    | 'ratio-error'
    | 'under-other-reliability'
    | 'own-reliability';
  /** of which leg; null where it is of both */
  readonly side: Side | null;
  /** of which change; null where it is of none */
  readonly since: string | null;
  readonly code: string;
  readonly sentence: string;
  /** what would lift a reason against a figure; null where nothing is against one */
  readonly unblock: string | null;
}

type Row = Readonly<Record<string, unknown>>;

const BLOCK_SENTENCES = { ...RATIO_BLOCK_SENTENCES, ...VALUE_BLOCK_SENTENCES };

function reliabilityRow(reliability: Pick<Reliability, 'source' | 'scale' | 'standardError'> | null): Row | null {
  if (reliability === null) return null;
  const { source, scale, standardError } = reliability;
  return { ...source, scale, standardError };
}

const joined = (codes: readonly string[]): string | null => (codes.length === 0 ? null : codes.join('; '));

/** One row for the legs of a visit, its names those of the shared columns. */
export function legsRow({ group, found }: LegsComparison): Row {
  const { person, visit, test, legs } = group;
  const { comparison, zone, reliability, hangsOnReliability } = found;
  const frame = {
    person,
    visit,
    test,
    leftFile: legs.left?.file ?? null,
    rightFile: legs.right?.file ?? null,
    kind: comparison.kind,
  };
  if (comparison.kind === 'blocked') return frame;
  const { direction, ratio, error, difference, unit, line, underLine, scale } = comparison;
  return {
    ...frame,
    over: direction.over,
    under: direction.under,
    whyOver: direction.why,
    ratio,
    ratioError: error,
    scale,
    line,
    probability: underLine[0].probability,
    lower: underLine[0].verdict,
    difference,
    unit,
    zone,
    reliability: reliabilityRow(reliability),
    hangs: hangsOnReliability,
  };
}

/** One row for what a set says by itself. */
export function legRow(side: Side, set: ComparedSet, finding: LegFinding | PullFinding): Row {
  const { value, reliability, blocks, effort, pain, irritability, reference } = finding;
  return {
    person: set.person,
    visit: set.visit,
    side,
    file: set.file,
    protocol: set.protocol.id,
    value: value.value,
    valueU: value.u,
    unit: value.unit,
    convention: value.convention,
    reliability: reliabilityRow(reliability),
    notInterpreted: joined(blocks),
    effort: effort && {
      good: effort.good,
      reason: 'reasons' in effort ? joined(effort.reasons) : effort.reason,
      used: joined(effort.used),
      missing: joined(effort.missing),
    },
    pain: {
      ...pain,
      shows: pain.countShows,
      tolerated: pain.toleratedRepetitions,
      used: joined(pain.used),
      missing: joined(pain.missing),
    },
    irritability: {
      ...irritability,
      decidedBy: joined(irritability.decidedBy),
      used: joined(irritability.used),
      missing: joined(irritability.missing),
    },
    noReference: reference.kind === 'none' ? joined(reference.reasons) : null,
  };
}

/** How two tests differ in one feature, as one reads it. */
export function differenceWords(one: { feature: string; before: string | null; after: string | null }): string {
  return `${one.feature}: ${one.before ?? 'not known'} / ${one.after ?? 'not known'}`;
}

function sinceRow(comparison: VisitsComparison, { since, outcome, hangsOnReliability }: SinceVisit): Row {
  const { ordered, found } = comparison;
  const last = ordered.length - 1;
  const from = since === 'first-visit' ? 0 : last - 1;
  const frame = {
    since,
    fromVisit: ordered[from]!.visit,
    toVisit: ordered[last]!.visit,
    fromValue: found.visits[from]!.value,
    toValue: found.visits[last]!.value,
    unit: found.visits[last]!.unit,
    kind: outcome.kind,
  };
  if (outcome.kind === 'side-by-side') {
    const { reasons, differences } = outcome;
    return { ...frame, notSubtracted: joined(reasons), differences: joined(differences.map(differenceWords)) };
  }
  const { change, detectable, real, reliability, ratio, standardError, scale } = outcome;
  return {
    ...frame,
    change,
    // on the log scale it has no unit
    detectable: ratio === null ? detectable : null,
    scale,
    zone: detectable.zone,
    real,
    reliability: reliabilityRow({ source: reliability, scale: ratio === null ? 'natural' : 'log', standardError }),
    hangs: hangsOnReliability,
  };
}

/** One row for each change of a leg, and one for its course where there is one. */
export function changeRows(comparison: VisitsComparison): Row[] {
  const { group, ordered, found } = comparison;
  const { person, side, test } = group;
  const { trend } = found;
  const rows = found.changes.map((one) => sinceRow(comparison, one));
  const course =
    trend === null
      ? []
      : [
          {
            since: 'all-visits',
            fromVisit: ordered[0]!.visit,
            toVisit: ordered.at(-1)!.visit,
            unit: found.visits[0]!.unit,
            kind: trend.kind,
            ...(trend.kind === 'trend'
              ? { slope: trend.slopePerWeek, moves: trend.moves }
              : {
                  notSubtracted: joined(trend.reasons),
                  differences: joined(trend.differences.map(differenceWords)),
                }),
          },
        ];
  return [...rows, ...course].map((row) => ({ person, side, test, ...row }));
}

function said<Code extends string>(
  about: Remark['about'],
  side: Side | null,
  codes: readonly Code[],
  words: Sentences<Code>,
  since: string | null = null,
): Remark[] {
  return codes.map((code) => ({ about, side, since, code, sentence: words[code].text, unblock: null }));
}

/** The size of an error as one reads it: an error of the logarithm is a share of the value. */
export function errorWords({ standardError, scale }: Pick<Reliability, 'standardError' | 'scale'>): string {
  return scale === 'log'
    ? `${Number((100 * standardError).toPrecision(3))} %`
    : `${Number(standardError.toPrecision(3))}`;
}

function named(reliability: Reliability): string {
  return `error ${errorWords(reliability)} (${reliability.source.citation})`;
}

const MARK_WORDS: Readonly<Record<EvidenceMark, string>> = {
  read: '',
  'second-hand': '; second-hand',
  'from-memory': '; from memory, not checked against the paper',
  'common-practice': '; common practice, no source',
  computed: '; computed',
};

/** A published group: what it did, who and how many they were, how they were tested, and who says so. */
export function groupWords({ entry, cautions }: ReferenceBeside): string {
  const { group, statistic, value, source, mark, remark, protocols } = entry;
  const who = group.sex === 'all' ? 'women and men' : group.sex;
  const until = group.ageBelow > 100 ? 'and over' : `to ${group.ageBelow - 1}`;
  const people = group.people === null ? '' : `${group.people} `;
  const minds = cautions.map((one) => ` ${REFERENCE_CAUTION_SENTENCES[one].text}`);
  return `${statistic} ${value} of ${people}${who} of ${group.ageFrom} ${until}, tested by ${protocols.join(', ')} (${source}${MARK_WORDS[mark]}). ${remark}${minds.join('')}`;
}

function referenceRemarks(side: Side, { reference }: LegFinding | PullFinding): Remark[] {
  if (reference.kind === 'none') return said('no-reference', side, reference.reasons, NO_REFERENCE_SENTENCES);
  const groups = reference.references.map((beside): Remark => {
    const where = beside.place === null ? '' : `${beside.place} the ${beside.entry.statistic}: `;
    const sentence = where + groupWords(beside);
    return { about: 'reference', side, since: null, code: beside.entry.id, sentence, unblock: null };
  });
  const also = [
    ...(reference.disagree ? (['references-disagree'] as const) : []),
    ...(reference.missing.includes('sex') ? (['sex-not-known'] as const) : []),
  ];
  return [...groups, ...said('reference', side, also, LEG_COMPARISON_SENTENCES)];
}

function legsRemarks({ group, found }: LegsComparison): Remark[] {
  const { comparison, underOthers, findings, hangsOnReliability } = found;
  const of = (['left', 'right'] as const).flatMap((side) => {
    const finding = findings[side];
    return finding === null || group.legs[side] === null ? [] : referenceRemarks(side, finding);
  });
  if (comparison.kind === 'blocked') {
    const against = comparison.blocks.map(
      ({ code, unblock }): Remark => ({
        about: 'against-ratio',
        side: null,
        since: null,
        code,
        sentence: BLOCK_SENTENCES[code].text,
        unblock: unblock.text,
      }),
    );
    return [...against, ...of];
  }
  const others = underOthers.map(({ reliability, lower, zone }): Remark => {
    const words =
      lower === null || zone === null
        ? COMPARE_SENTENCES['no-ratio'].text
        : `${LEG_COMPARISON_SENTENCES[`lower-${lower}`].text} ${LEG_COMPARISON_SENTENCES[`difference-${zone}`].text}`;
    const sentence = `By the ${named(reliability)}: ${words}`;
    return {
      about: 'under-other-reliability',
      side: null,
      since: null,
      code: reliability.source.id,
      sentence,
      unblock: null,
    };
  });
  const hangs = hangsOnReliability === true ? 'hangs-on-reliability' : 'same-by-every-reliability';
  const { from, own } = comparison.error;
  return [
    ...said('ratio-error', null, [from], RATIO_ERROR_SENTENCES),
    ...said('ratio-error', null, own === 'none' ? [] : [own], OWN_RATIO_SENTENCES),
    ...said('under-other-reliability', null, [hangs], LEG_COMPARISON_SENTENCES),
    ...others,
    ...said('caution', null, comparison.cautions, COMPARE_CAUTION_SENTENCES),
    ...of,
  ];
}

function sinceRemarks(side: Side, { since, outcome, underOthers, hangsOnReliability }: SinceVisit): Remark[] {
  if (outcome.kind === 'side-by-side') {
    return said('against-change', side, outcome.reasons, NO_CHANGE_SENTENCES, since);
  }
  const hangs = hangsOnReliability === true ? 'hangs-on-reliability' : 'same-by-every-reliability';
  const others = underOthers.map(
    ({ reliability, zone }): Remark => ({
      about: 'under-other-reliability',
      side,
      since,
      code: reliability.source.id,
      sentence: `By the ${named(reliability)}: ${CHANGE_ZONE_SENTENCES[zone].text}`,
      unblock: null,
    }),
  );
  return [
    ...said('under-other-reliability', side, [hangs], LEG_COMPARISON_SENTENCES, since),
    ...others,
    ...said('caution', side, outcome.cautions, COMPARE_CAUTION_SENTENCES, since),
  ];
}

function visitsRemarks({ group, found }: VisitsComparison): Remark[] {
  const { side } = group;
  const { trend } = found;
  const ofTrend =
    trend === null
      ? []
      : trend.kind === 'trend'
        ? said('caution', side, trend.cautions, COMPARE_CAUTION_SENTENCES, 'all-visits')
        : said('against-change', side, trend.reasons, NO_CHANGE_SENTENCES, 'all-visits');
  return [...found.changes.flatMap((one) => sinceRemarks(side, one)), ...ofTrend];
}

/** Everything that is said with a comparison beside its figures, in the order in which it is shown. */
export function remarksOf(comparison: Comparison): Remark[] {
  const { ownNote: sentence } = comparison;
  const own = { about: 'own-reliability', side: null, since: null, code: 'own-reliability', unblock: null } as const;
  return [
    ...(comparison.kind === 'legs' ? legsRemarks(comparison) : visitsRemarks(comparison)),
    ...(sentence === '' ? [] : [{ ...own, sentence }]),
  ];
}
