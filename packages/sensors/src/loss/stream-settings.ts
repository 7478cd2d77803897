/** How packets are put in order and how much is believed of their numbers. All ours. */
export interface StreamSettings {
  /** how long a packet is waited for when a later one has come [ms] */
  readonly waitMs: number;
  /** how many packets wait for one that is missing [-] */
  readonly mostWaiting: number;
  /** a packet this far behind the newest is still one that was overtaken; further, the counter began anew [packets] */
  readonly behindPackets: number;
  /** how far ahead of the earliest possible arrival a number may lie; the first seconds know it worse [s] */
  readonly aheadS: number;
  readonly aheadAtFirstS: number;
  readonly firstS: number;
  /** without a counter: packets later than this are held until it shows whether any were lost before them [s] */
  readonly holdFromS: number;
  /** how long they are held at most [ms] */
  readonly settleMs: number;
  /** after a new connection: a number may lie this far from what the time between asks for, late and early [s] */
  readonly backLateS: number;
  readonly backEarlyS: number;
  /** numbers that begin again sooner than this agree by chance, and then nobody can tell [s] */
  readonly backLeastSpanS: number;
  /** a rate that nobody tells is measured over this stretch before samples are handed on [s] */
  readonly measureRateS: number;
}

/** Values for packets of 5 to 500 a second on a radio whose intervals end at 150 ms; ours. */
export const streamSettings: StreamSettings = {
  waitMs: 120,
  mostWaiting: 64,
  behindPackets: 64,
  aheadS: 0.3,
  aheadAtFirstS: 2,
  firstS: 3,
  holdFromS: 0.25,
  settleMs: 300,
  backLateS: 0.6,
  backEarlyS: 0.3,
  backLeastSpanS: 8,
  measureRateS: 2,
};
