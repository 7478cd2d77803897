/** The two lines that the analysis takes from ml-regression, which ships without types. */
declare module 'ml-regression' {
  /** Ordinary least squares: y = slope x + intercept. */
  export class SLR {
    constructor(x: readonly number[] | Float64Array, y: readonly number[] | Float64Array);
    readonly slope: number;
    readonly intercept: number;
  }
  /** Theil-Sen line; the intercept is the median of y - slope x. */
  export class TheilSenRegression {
    constructor(x: readonly number[] | Float64Array, y: readonly number[] | Float64Array);
    readonly slope: number;
    readonly intercept: number;
  }
}
