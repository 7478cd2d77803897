import { type LegFinding, nestedValues, type PullFinding, type Side } from '@surae/analysis';
import { rounded } from '@surae/exchange';
import { CHANGE_COLUMNS, LEG_COLUMNS, LEGS_COLUMNS, RATIO_COLUMNS } from '@surae/shared';
import type { ComparedSet } from './compared-set.ts';
import { changeRows, legRow, legsRow, type Remark, remarksOf } from './comparison-views.ts';
import type { Comparison, LegsComparison, VariedLegs, VisitsComparison } from './comparisons.ts';
import { softwareName } from './software.ts';

const AGAINST = ['against-ratio', 'against-change'];

/** One comparison as one line of JSON. Null means not measured, or not known; a blocked one has no key of a ratio at all. */
export function comparisonLine(comparison: Comparison): string {
  return JSON.stringify(rounded(comparison.kind === 'legs' ? ofLegs(comparison) : ofVisits(comparison)));
}

function remarkOf({ about, side, since, code, sentence }: Remark): Record<string, unknown> {
  return { about, side, since, code, sentence };
}

function reasonsOf(remarks: readonly Remark[]): Record<string, unknown> {
  return {
    blocks: remarks
      .filter(({ about }) => AGAINST.includes(about))
      .map(({ since, code, sentence, unblock }) => ({
        ...(since === null ? {} : { since }),
        code,
        sentence,
        ...(unblock === null ? {} : { unblock }),
      })),
    remarks: remarks.filter(({ about }) => !AGAINST.includes(about)).map(remarkOf),
  };
}

function legOf(side: Side, set: ComparedSet | null, finding: LegFinding | PullFinding | null): unknown {
  if (set === null || finding === null) return null;
  const { reference } = finding;
  return {
    ...nestedValues(LEG_COLUMNS, legRow(side, set, finding)),
    references:
      reference.kind === 'none'
        ? []
        : reference.references.map(({ entry, place, difference }) => ({
            id: entry.id,
            statistic: entry.statistic,
            value: entry.value,
            place,
            difference,
            sex: entry.group.sex,
            age_from: entry.group.ageFrom,
            age_below: entry.group.ageBelow,
            people: entry.group.people,
            protocols: entry.protocols,
            source: entry.source,
            mark: entry.mark,
            remark: entry.remark,
          })),
  };
}

function variedOf({ cases, robust }: VariedLegs): unknown {
  const countOf = ({ scored, scoredLow, scoredHigh }: VariedLegs['cases'][number]['counts']['left']) => ({
    scored,
    scored_low: scoredLow,
    scored_high: scoredHigh,
  });
  return {
    cases: cases.map(({ value, counts, lower, comparison }) => ({
      value,
      left: countOf(counts.left),
      right: countOf(counts.right),
      kind: comparison.kind,
      lower,
      blocks: comparison.kind === 'blocked' ? comparison.blocks.map(({ code }) => code) : [],
    })),
    robust,
  };
}

function ofLegs(comparison: LegsComparison): unknown {
  const { group, found, varied } = comparison;
  const row = legsRow(comparison);
  return {
    comparison: 'legs',
    software: softwareName(),
    ...nestedValues(LEGS_COLUMNS, row),
    ...(found.comparison.kind === 'ratio' ? nestedValues(RATIO_COLUMNS, row) : {}),
    under_other_reliability: found.underOthers.map(({ reliability, lower, zone }) => ({
      id: reliability.source.id,
      scale: reliability.scale,
      standard_error: reliability.standardError,
      source: reliability.source.citation,
      lower,
      zone,
    })),
    ...reasonsOf(remarksOf(comparison)),
    ...(varied === null ? {} : { varied: variedOf(varied) }),
    legs: {
      left: legOf('left', group.legs.left, found.findings.left),
      right: legOf('right', group.legs.right, found.findings.right),
    },
  };
}

function ofVisits(comparison: VisitsComparison): unknown {
  const { group, ordered, found } = comparison;
  const { person, side, test } = group;
  return {
    comparison: 'visits',
    software: softwareName(),
    person,
    side,
    test,
    visits: ordered.map(({ visit, file, told }, at) => ({
      visit,
      file,
      day: told.date === null ? null : new Date(told.date * 86_400_000).toISOString().slice(0, 10),
      value: found.visits[at]!.value,
      unit: found.visits[at]!.unit,
      not_interpreted: found.visits[at]!.blocks,
    })),
    changes: changeRows(comparison).map((row) => nestedValues(CHANGE_COLUMNS, row)),
    under_other_reliability: found.changes.flatMap(({ since, underOthers }) =>
      underOthers.map(({ reliability, zone, at95, at80 }) => ({
        since,
        id: reliability.source.id,
        scale: reliability.scale,
        standard_error: reliability.standardError,
        source: reliability.source.citation,
        zone,
        at_95: at95,
        at_80: at80,
      })),
    ),
    ...reasonsOf(remarksOf(comparison)),
  };
}
