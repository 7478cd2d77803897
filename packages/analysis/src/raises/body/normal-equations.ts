/**
 * Normal equations of a least-squares problem whose unknowns come in a row of neighbours, and a few last ones that concern all.
 *
 * Only the envelope of the matrix is kept and factored: from the first entry of each row to its diagonal.
 */
export class NormalEquations {
  readonly size: number;
  readonly right: Float64Array;
  readonly #first: Int32Array;
  readonly #rows: Float64Array[];

  /**
   * @param size - number of unknowns [-]
   * @param reach - unknowns before its own that share an equation with an unknown [-]
   * @param common - number of last unknowns that share equations with all [-]
   */
  constructor(size: number, reach: number, common: number) {
    this.size = size;
    this.right = new Float64Array(size);
    this.#first = Int32Array.from({ length: size }, (_, i) => (i >= size - common ? 0 : Math.max(0, i - reach)));
    this.#rows = Array.from({ length: size }, (_, i) => new Float64Array(i - this.#first[i] + 1));
  }

  /** Adds to the entry of a pair of unknowns; the matrix is symmetric. */
  add(i: number, j: number, value: number): void {
    const [row, column] = i >= j ? [i, j] : [j, i];
    this.#rows[row][column - this.#first[row]] += value;
  }

  /** Adds one equation sum(factors x) = value, of unit variance. */
  addEquation(unknowns: readonly number[], factors: readonly number[], value: number): void {
    for (let a = 0; a < unknowns.length; a++) {
      this.right[unknowns[a]] += factors[a] * value;
      for (let b = 0; b <= a; b++) this.add(unknowns[a], unknowns[b], factors[a] * factors[b]);
    }
  }

  /** Cholesky factor of the matrix with its diagonal raised by a share; undefined when it is not positive. */
  factor(damping: number): EnvelopeFactor | undefined {
    const first = this.#first;
    const rows = this.#rows.map((row) => Float64Array.from(row));
    for (let i = 0; i < this.size; i++) {
      const row = rows[i];
      row[row.length - 1] *= 1 + damping;
      for (let j = first[i]; j <= i; j++) {
        const other = rows[j];
        let sum = row[j - first[i]];
        for (let k = Math.max(first[i], first[j]); k < j; k++) sum -= row[k - first[i]] * other[k - first[j]];
        if (j < i) row[j - first[i]] = sum / other[other.length - 1];
        else if (sum > 0) row[j - first[i]] = Math.sqrt(sum);
        else return undefined;
      }
    }
    return new EnvelopeFactor(first, rows);
  }
}

/** Triangular factor of {@link NormalEquations}. */
export class EnvelopeFactor {
  readonly #first: Int32Array;
  readonly #rows: readonly Float64Array[];

  constructor(first: Int32Array, rows: readonly Float64Array[]) {
    this.#first = first;
    this.#rows = rows;
  }

  /** Solution of the equations for a right side. */
  solve(right: Float64Array): Float64Array {
    const x = this.#forward(right);
    for (let i = x.length - 1; i >= 0; i--) {
      const row = this.#rows[i];
      const from = this.#first[i];
      x[i] /= row[row.length - 1];
      for (let k = from; k < i; k++) x[k] -= row[k - from] * x[i];
    }
    return x;
  }

  /** Variance of a weighted sum of unknowns. */
  varianceOf(unknowns: readonly number[], factors: readonly number[]): number {
    const right = new Float64Array(this.#rows.length);
    unknowns.forEach((unknown, i) => {
      right[unknown] += factors[i];
    });
    return this.#forward(right).reduce((sum, value) => sum + value * value, 0);
  }

  #forward(right: Float64Array): Float64Array {
    const x = Float64Array.from(right);
    for (let i = 0; i < x.length; i++) {
      const row = this.#rows[i];
      const from = this.#first[i];
      let sum = x[i];
      for (let k = from; k < i; k++) sum -= row[k - from] * x[k];
      x[i] = sum / row[row.length - 1];
    }
    return x;
  }
}
