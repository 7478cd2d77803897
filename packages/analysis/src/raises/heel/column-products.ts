/**
 * Sums of the products of one column with four others.
 *
 * Four sums side by side take hardly longer than one, since none waits for another; each is added up in the order of the samples.
 *
 * @param one - holds the one column [any unit]
 * @param oneAt - where it begins [index]
 * @param four - holds the four, one after the other [any unit]
 * @param fourAt - where the first of them begins [index]
 * @param count - length of a column [-]
 * @param from - sample before which a factor of each product is 0 [index]
 * @param sums - receives the four sums [products of the units]
 * @param at - where [index]
 *
 * Source: definition
 */
export function fourProducts(
  one: Float64Array,
  oneAt: number,
  four: Float64Array,
  fourAt: number,
  count: number,
  from: number,
  sums: Float64Array,
  at: number,
): void {
  let a = 0;
  let b = 0;
  let c = 0;
  let d = 0;
  for (let i = from; i < count; i++) {
    const factor = one[oneAt + i];
    const place = fourAt + i;
    a += factor * four[place];
    b += factor * four[place + count];
    c += factor * four[place + 2 * count];
    d += factor * four[place + 3 * count];
  }
  sums[at] = a;
  sums[at + 1] = b;
  sums[at + 2] = c;
  sums[at + 3] = d;
}

/** Room for the normal equations of as many unknowns, a multiple of four: rows are that long, the lower triangle holds. */
export interface ColumnProducts {
  readonly unknowns: number;
  readonly matrix: Float64Array;
  readonly gradient: Float64Array;
}

/**
 * Room for normal equations.
 *
 * @param unknowns - how many at least [-]
 * @returns room for that number, or the next that four divides [-]
 *
 * Source: definition
 */
export function columnProducts(unknowns: number): ColumnProducts {
  const whole = 4 * Math.ceil(unknowns / 4);
  return { unknowns: whole, matrix: new Float64Array(whole * whole), gradient: new Float64Array(whole) };
}

/**
 * Normal equations of a weighted least-squares problem from its whole columns.
 *
 * @param white - derivatives, column after column; those beyond the unknowns are 0 [1/unit of parameter]
 * @param weighted - the same, each times the weight of its sample [1/unit of parameter]
 * @param departures - of each sample [-]
 * @param firsts - sample before which a column is 0, one for each of them [index]
 * @param products - receives matrix and right-hand side, see {@link ColumnProducts} [-]
 *
 * Source: definition
 */
export function normalEquations(
  white: Float64Array,
  weighted: Float64Array,
  departures: Float64Array,
  firsts: ArrayLike<number>,
  { unknowns, matrix, gradient }: ColumnProducts,
): void {
  const count = departures.length;
  for (let a = 0; a < unknowns; a += 4) {
    fourProducts(departures, 0, weighted, a * count, count, 0, gradient, a);
  }
  for (let a = 0; a < unknowns; a++) {
    for (let b = 0; b <= a; b += 4) {
      const least = Math.min(firsts[b], firsts[b + 1], firsts[b + 2], firsts[b + 3]);
      fourProducts(weighted, a * count, white, b * count, count, Math.max(firsts[a], least), matrix, a * unknowns + b);
    }
  }
}
