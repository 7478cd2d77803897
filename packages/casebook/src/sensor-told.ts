/** The connected sensor that a test was recorded from, as it told of itself. */
export interface SensorTold {
  readonly route: 'bluetooth' | 'serial' | 'motion';
  readonly kindName: string;
  readonly deviceName: string;
  /** id of the document with its description; null where it has none */
  readonly descriptionId: string | null;
  /** charge that it told last [%]; null when it did not say */
  readonly batteryPercent: number | null;
  /** maker, model, versions, as far as it said */
  readonly names: Readonly<Record<string, string | null>>;
}
