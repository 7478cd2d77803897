import type { DateOrder } from './date-order.ts';
import type { NumberForm } from './number-form.ts';

/** How numbers and dates are written. */
export interface CellForm extends NumberForm {
  readonly dates: DateOrder | null;
}
