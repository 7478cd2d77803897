/** The least-squares line that the analysis takes from ml-regression, which ships without types. */
declare module 'ml-regression' {
  /** Ordinary least squares: y = slope x + intercept. */
  export class SLR {
    constructor(x: readonly number[] | Float64Array, y: readonly number[] | Float64Array);
    readonly slope: number;
    readonly intercept: number;
  }
}
