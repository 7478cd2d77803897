/** One figure of one leg: measured, with its 95 % bounds, or left open with the reason in words. */
export type LegFigure =
  | {
      readonly kind: 'measured';
      readonly value: number;
      readonly low: number;
      readonly high: number;
      /** the value is a lower bound */
      readonly atLeast: boolean;
    }
  | { readonly kind: 'open'; readonly why: string };
