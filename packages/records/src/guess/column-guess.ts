import type { FieldKind } from '../form/row-form.ts';
import { type Axis, type Placement, type Quantity, type Side, sensedPlacements, sides } from '../quantities.ts';
import { type NameReading, wordsOf } from './column-name.ts';
import { columnSizes, normSizes } from './column-values.ts';
import { evidence, type Guessed, guessed, left, unknown } from './guessed.ts';
import type { PreambleReading } from './preamble.ts';
import { type ColumnUse, guessUse } from './quantity-guess.ts';
import { type AxisCandidate, findTriples, type Triple } from './sensor-groups.ts';
import { guessUnit, type ShownSize } from './unit-weights.ts';

/** A column of the table, with what its name says and the numbers in it. */
export interface ColumnInput {
  readonly index: number;
  readonly label: string;
  readonly kind: FieldKind;
  readonly name: NameReading;
  readonly samples: Float64Array;
}

/** What is guessed about a column that holds numbers. */
export interface ColumnProposal {
  readonly index: number;
  readonly label: string;
  readonly use: Guessed<ColumnUse>;
  readonly axis: Guessed<'x' | 'y' | 'z'>;
  /** code of the unit in UCUM */
  readonly unit: Guessed<string>;
  readonly side: Guessed<Side>;
  readonly placement: Guessed<Placement>;
  /** indices of the three columns that are axes of one sensor; empty without */
  readonly triple: readonly number[];
}

interface Known extends ColumnInput {
  readonly use: Guessed<ColumnUse>;
  readonly triple: Triple | undefined;
}

const vectors: readonly ColumnUse[] = ['acceleration', 'angular-velocity'];

/** What each column holds, in which unit, of which side and where its sensor sat. */
export function guessColumns(
  inputs: readonly ColumnInput[],
  preamble: PreambleReading,
  told: ReadonlyMap<number, ColumnUse> = new Map(),
): ColumnProposal[] {
  const numbers = inputs.filter(({ kind }) => kind === 'number');
  const triples = findTriples(numbers satisfies readonly AxisCandidate[]);
  const hasNeighbour = numbers.some(({ name }) => name.quantities.length > 0);
  const known = numbers.map((column): Known => {
    const triple = triples.find(({ indices }) => indices.includes(column.index));
    const { low, high, count } = columnSizes(column.samples);
    const signs = {
      name: column.name,
      gravity: triple?.gravity === undefined ? undefined : { size: triple.gravity },
      isConstant: count === 0 || low === high,
      hasNeighbour,
    };
    const said = (triple?.indices ?? [column.index]).map((index) => told.get(index)).find((use) => use !== undefined);
    const own = told.get(column.index) ?? said;
    return { ...column, use: own === undefined ? guessUse(signs) : guessed(own, 1, [evidence('told')]), triple };
  });
  return known.map((column) => ({
    index: column.index,
    label: column.label,
    use: column.use,
    axis: axisOf(column),
    unit: unitOf(column, known),
    side: sideOf(column, known, preamble),
    placement: placementOf(column, known, preamble),
    triple: column.triple?.indices ?? [],
  }));
}

function axisOf({ use, name, triple, index }: Known): Guessed<'x' | 'y' | 'z'> {
  if (use.value === null || !vectors.includes(use.value)) return left([]);
  const axis: Axis = name.axis;
  if (axis !== null) return guessed(axis, 0.98, [evidence('axis-name', { axis })]);
  if (triple !== undefined) {
    const order = (['x', 'y', 'z'] as const)[triple.indices.indexOf(index)]!;
    return guessed(order, 0.9, [evidence('axis-order', { axis: order })]);
  }
  return unknown([evidence('axis-unknown')], ['x', 'y', 'z']);
}

function shownSize({ use, samples, triple }: Known, known: readonly Known[]): ShownSize | undefined {
  const axes = triple?.indices.map((index) => known.find((one) => one.index === index)!.samples);
  const sizes = columnSizes(samples);
  const range = sizes.high - sizes.low;
  switch (use.value) {
    case 'acceleration':
      if (axes === undefined) return undefined;
      return { code: 'size-gravity', size: normSizes(axes).median, usual: 9.80665, spread: 0.03 };
    case 'angular-velocity':
      return {
        code: 'size-turn',
        size: axes === undefined ? Math.max(sizes.high, -sizes.low) : normSizes(axes).high,
        usual: 2,
        spread: 1.1,
      };
    case 'force': {
      const most = Math.max(Math.abs(sizes.high), Math.abs(sizes.low));
      const others = known.filter((one) => one.use.value === 'force').length > 1;
      if (Math.abs(sizes.median) >= 0.5 * most) {
        return {
          code: 'size-standing',
          size: Math.abs(sizes.median),
          usual: 75 * 9.80665 * (others ? 0.7 : 1),
          spread: others ? 0.45 : 0.28,
        };
      }
      return { code: 'size-effort', size: range, usual: 850, spread: 0.6 };
    }
    case 'heel-height':
      return { code: 'size-range', size: range, usual: 0.08, spread: 0.45 };
    case 'torque':
      return { code: 'size-range', size: range, usual: 90, spread: 0.6 };
    case 'angle':
      return { code: 'size-range', size: range, usual: 0.5, spread: 0.8 };
    default:
      return undefined;
  }
}

function unitOf(column: Known, known: readonly Known[]): Guessed<string> {
  const { use, name } = column;
  if (use.value === null || use.value === 'unused') return left([]);
  const first = column.triple === undefined ? column : known.find(({ index }) => index === column.triple!.indices[0])!;
  return guessUnit(use.value satisfies Quantity, name.unit ?? first.name.unit, shownSize(column, known));
}

/** Words of two letters or more that can only name this side. */
const clearWords: Readonly<Record<Side, RegExp>> = {
  left: /^(?:left|links|linke[rs]?|izq|izquierd[ao]|gauche|sinistr[ao]|esquerd[ao]|li|lt|lks|sx)$/,
  right: /^(?:right|rechts|rechte[rs]?|dcha|derech[ao]|droite?|destr[ao]|direit[ao]|re|rt|dx|der)$/,
};

function sideOf(column: Known, known: readonly Known[], preamble: PreambleReading): Guessed<Side> {
  const { use, name, label } = column;
  if (use.value === null || use.value === 'unused') return left([]);
  const [side, second] = name.sides;
  if (second !== undefined) return unknown([evidence('side-both')], sides);
  if (side !== undefined) {
    const clear = wordsOf(label).filter((word) => clearWords[side].test(word));
    const hasPartner = known.some(
      (one) => one.use.value === use.value && one.name.sides.some((other) => other !== side),
    );
    const confidence = clear.some((word) => word.length > 2) ? 0.98 : hasPartner ? 0.96 : clear.length > 0 ? 0.9 : 0.75;
    return guessed(side, confidence, [evidence('side-name', { side })]);
  }
  const isTwin = known.some(
    (one) =>
      one.index !== column.index &&
      one.use.value === use.value &&
      one.name.axis === name.axis &&
      one.name.sides.length === 0 &&
      (one.triple === undefined || one.triple !== column.triple),
  );
  if (isTwin) return unknown([evidence('side-twin')], sides);
  if (preamble.side !== undefined) {
    return guessed(preamble.side.value, 0.93, [evidence('side-told', { line: preamble.side.line })]);
  }
  return left([evidence('side-unknown')]);
}

function placementOf(column: Known, known: readonly Known[], preamble: PreambleReading): Guessed<Placement> {
  const { use, name } = column;
  if (use.value === null || use.value === 'unused') return left([]);
  if (use.value === 'heel-height') return guessed('heel', 0.95, [evidence('placement-height')]);
  const inertial = vectors.includes(use.value);
  const allowed: readonly Placement[] = inertial
    ? ['foot', 'trunk']
    : use.value === 'force'
      ? ['platform']
      : sensedPlacements;
  const named = name.placements.filter((one) => allowed.includes(one));
  if (named.length === 1) return guessed(named[0]!, 0.95, [evidence('placement-name', { placement: named[0]! })]);
  if (!inertial) return left([evidence('placement-open')]);
  const sibling = known.find(
    (one) => vectors.includes(one.use.value!) && one.name.placements.some((place) => allowed.includes(place)),
  );
  if (sibling !== undefined) {
    const placement = sibling.name.placements.find((place) => allowed.includes(place))!;
    return guessed(placement, 0.92, [evidence('placement-name', { placement })]);
  }
  if (preamble.placement !== undefined && allowed.includes(preamble.placement.value)) {
    return guessed(preamble.placement.value, 0.93, [evidence('placement-told', { line: preamble.placement.line })]);
  }
  return unknown([evidence('placement-unknown')], ['foot', 'trunk']);
}
