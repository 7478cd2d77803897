/** A measured figure with its standard uncertainty, in one unit. */
export interface Figure {
  readonly value: number;
  readonly u: number;
}
