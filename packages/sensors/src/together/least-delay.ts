/** How long the quickest block of a source may have been on its way, from its last sample to the page. Nobody can see it. */
export interface LeastDelay {
  readonly fromMs: number;
  readonly toMs: number;
}

/**
 * For devices on a radio: at most an interval of the radio, because a device may take its samples in step with it. Both ours; some
 * systems ask for longer intervals, and then a device in step is further off.
 */
export const radioDelay: LeastDelay = { fromMs: 0, toMs: 30 };

/** For devices on a cable, whose driver hands on what came every 16 ms at the latest; from memory, and ours. */
export const cableDelay: LeastDelay = { fromMs: 0, toMs: 16 };
