import {
  type Agreement,
  type Bounded,
  type Intraclass,
  intraclassWords,
  type Limits,
  type PairAgreement,
  type Trend,
  type WeightedKappa,
} from '@surae/analysis';
import { rounded } from '@surae/exchange';
import type { Plan } from './agree-plan.ts';
import type { AgreeResult, GroupResult, PairedWords } from './agree-result.ts';
import { softwareName } from './software.ts';

/** The result as one line of JSON. Null means not computed, and never zero. */
export function agreeJson(result: AgreeResult | undefined, plans: readonly Plan[]): string {
  const whole = {
    software: softwareName(),
    ...(result === undefined ? {} : tableOf(result)),
    plans: plans.map(planOf),
  };
  return JSON.stringify(rounded(whole), (_, value: unknown) => (value === undefined ? null : value));
}

function tableOf({ file, sha256, unit, across, settings, groups }: AgreeResult): Record<string, unknown> {
  return {
    file,
    sha256,
    unit,
    across,
    level: settings.level,
    scale: settings.scale,
    reach: settings.reach,
    groups: groups.map((group: GroupResult) => ({
      of: group.of,
      ...(group.kind === 'numbers' ? numbersOf(group.agreement) : { pairs: group.pairs.map(wordsOf) }),
    })),
  };
}

function boundedOf(bounded: Bounded | undefined): unknown {
  return bounded && { value: bounded.value, low: bounded.low, high: bounded.high };
}

function numbersOf(found: Agreement): Record<string, unknown> {
  const { squares, components, error, usable, variation } = found;
  return {
    subjects: found.subjects.length,
    raters: found.raters,
    rater_means: squares.raterMeans,
    left_out: found.leftOut,
    mean_squares: squares.means,
    degrees_of_freedom: squares.df,
    variance: {
      subjects: components.subjects,
      raters: components.raters,
      residual: components.residual,
      below_zero: components.belowZero,
    },
    icc: found.intraclass.map(intraclassOf),
    icc_absolute_interval_narrow: found.absoluteIntervalNarrow,
    standard_error: boundedOf(error?.sem),
    standard_error_use: usable && {
      use: usable.use.replace('-', '_'),
      pairs: usable.pairCount,
      standard_error: usable.use === 'no' ? undefined : usable.sem,
    },
    detectable_change: found.changes.map(({ level, change }) => ({ level, ...change })),
    variation_percent: boundedOf(variation.rawPercent),
    variation_log_percent: boundedOf(variation.logPercent),
    pairs: found.pairs.map(pairOf),
  };
}

function intraclassOf({ form, otherName, estimate, test }: Intraclass): Record<string, unknown> {
  const words = estimate?.interval && intraclassWords(estimate.interval);
  return {
    form,
    other_name: otherName,
    value: estimate?.value,
    low: estimate?.interval?.low,
    high: estimate?.interval?.high,
    low_word: words?.from,
    high_word: words?.to,
    f: test?.f,
    df_above: test?.dfAbove,
    df_below: test?.dfBelow,
    p: test?.p,
  };
}

function trendOf(trend: Trend | undefined): unknown {
  return trend && { slope: boundedOf(trend.slope), p: trend.p };
}

function pairOf({ first, second, limits, counts }: PairAgreement): Record<string, unknown> {
  const of = (found: Limits): Record<string, unknown> => ({
    pairs: found.pairCount,
    bias: boundedOf(found.bias),
    lower_limit: boundedOf(found.lower),
    upper_limit: boundedOf(found.upper),
    sd: found.sd,
    bias_trend: trendOf(found.biasTrend),
    scatter_trend: trendOf(found.scatterTrend),
  });
  return {
    first,
    second,
    limits: limits && of(limits),
    counts: counts && {
      sets: counts.setCount,
      same: counts.same,
      within_one: counts.withinOne,
      largest: counts.largest,
    },
  };
}

function weightedOf({ kappa, interval }: WeightedKappa): Record<string, unknown> {
  return { kappa, low: interval?.low, high: interval?.high };
}

function wordsOf({ first, second, leftOut, kappa, weighted }: PairedWords): Record<string, unknown> {
  return {
    first,
    second,
    items: kappa.itemCount,
    left_out: leftOut,
    kappa: kappa.kappa,
    low: kappa.interval?.low,
    high: kappa.interval?.high,
    observed_agreement: kappa.observedAgreement,
    chance_agreement: kappa.chanceAgreement,
    words: kappa.categories.map((word, i) => ({ word, agreement: kappa.agreementOn[i] })),
    counts: kappa.counts,
    weighted: weighted && {
      order: weighted.linear.words,
      linear: weightedOf(weighted.linear),
      quadratic: weightedOf(weighted.quadratic),
    },
  };
}

function planOf({ wish, value, expected, people }: Plan): Record<string, unknown> {
  return { wish, value, icc_expected: expected, people };
}
