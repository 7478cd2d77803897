import { RECOUNT_STUDY_WORDS } from '@surae/shared';
import type { PairOfCounts, PairOfLists } from '@surae/study';
import { html, nothing, type SVGTemplateResult, svg, type TemplateResult } from 'lit';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import { namesOf } from './agreement-lines.ts';
import { axisValues } from './axis-values.ts';

const WIDTH = 344;
const HEIGHT = 260;
const FIELD = { from: 44, to: 250, top: 30, bottom: 210 } as const;

/** Pairs of counts that fall on one place are one ring with as many round it as there are further ones. */
function rings(points: readonly { readonly mean: number; readonly difference: number }[]): Map<string, number> {
  const found = new Map<string, number>();
  for (const { mean, difference } of points) {
    const place = `${mean} ${difference}`;
    found.set(place, (found.get(place) ?? 0) + 1);
  }
  return found;
}

/**
 * Differences against means of the counts of a pair: a ring a recording (larger where several fall on one place), the mean difference and
 * the limits as lines with their intervals. Source: Bland & Altman (1986), Lancet i:307-310.
 */
export function agreementPlot(list: PairOfLists, { limits, kind, first, second }: PairOfCounts): TemplateResult {
  const words = RECOUNT_STUDY_WORDS;
  const points = list.trials.flatMap(({ counts: [one, other] }) =>
    one === null || other === null ? [] : [{ mean: (one + other) / 2, difference: one - other }],
  );
  if (points.length === 0) return html`${nothing}`;
  const names = namesOf({ kind, first, second });
  const means = points.map(({ mean }) => mean);
  const edges = limits === null ? [] : [limits.lower.low, limits.upper.high];
  const heights = [...points.map(({ difference }) => difference), ...edges, 1, -1];
  const [xLow, xHigh] = [Math.min(...means) - 1, Math.max(...means) + 1];
  const [yLow, yHigh] = [Math.min(...heights) * 1.08, Math.max(...heights) * 1.08];
  const x = (value: number): number => FIELD.from + ((value - xLow) / (xHigh - xLow)) * (FIELD.to - FIELD.from);
  const y = (value: number): number => FIELD.bottom - ((value - yLow) / (yHigh - yLow)) * (FIELD.bottom - FIELD.top);
  const line = (
    code: 'picture-bias' | 'picture-limit',
    value: number,
    low: number,
    high: number,
    beside: number,
  ): SVGTemplateResult =>
    svg`<line class="ink" x1=${FIELD.from} x2=${FIELD.to} y1=${y(value)} y2=${y(value)} />
      <line class="doubt" x1=${FIELD.to + beside} x2=${FIELD.to + beside} y1=${y(high)} y2=${y(low)} />
      <text x=${FIELD.to + 20} y=${y(value) + 5}>${fill(words[code], { value: decimal(value, 1) })}</text>`;
  const label = fill(words.picture, { first: names.first, second: names.second, sets: points.length });
  return html`<svg viewBox="0 0 ${WIDTH} ${HEIGHT}" class="plot" role="img" aria-label=${label} dir="ltr">
    <text x="0" y="14">${words['picture-difference'].text}: ${names.first} − ${names.second}</text>
    ${axisValues(yLow, yHigh, 5).map(
      ({ value, text }) => svg`<text x=${FIELD.from - 8} y=${y(value) + 5} text-anchor="end">${text}</text>`,
    )}
    ${axisValues(xLow, xHigh, 5).map(
      ({
        value,
        text,
      }) => svg`<line class="hair" x1=${x(value)} x2=${x(value)} y1=${FIELD.bottom} y2=${FIELD.bottom + 5} />
        <text x=${x(value)} y=${FIELD.bottom + 21} text-anchor="middle">${text}</text>`,
    )}
    <line class="hair" x1=${FIELD.from} x2=${FIELD.to} y1=${FIELD.bottom} y2=${FIELD.bottom} />
    <line class="hair" x1=${FIELD.from} x2=${FIELD.to} y1=${y(0)} y2=${y(0)} />
    <text x=${FIELD.to} y=${HEIGHT - 8} text-anchor="end">${words['picture-mean'].text}</text>
    ${
      limits === null
        ? nothing
        : svg`${line('picture-limit', limits.upper.value, limits.upper.low, limits.upper.high, 4)}
            ${line('picture-bias', limits.bias.value, limits.bias.low, limits.bias.high, 9)}
            ${line('picture-limit', limits.lower.value, limits.lower.low, limits.lower.high, 14)}`
    }
    ${[...rings(points)].map(([place, count]) => {
      const [mean, difference] = place.split(' ').map(Number);
      return svg`<circle class="ring" cx=${x(mean!)} cy=${y(difference!)} r=${4 + 1.5 * (Math.min(count, 5) - 1)} />`;
    })}
  </svg>`;
}
