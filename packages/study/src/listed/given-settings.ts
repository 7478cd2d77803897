import type { Settings } from '@surae/analysis';
import type { HopProtocol, Protocol, PullProtocol } from '@surae/shared';

/** The settings of an analysis, and what is changed of whichever protocol a recording is judged by. */
export interface GivenSettings {
  readonly settings: Settings;
  /** the protocol with other parameters in their place */
  readonly adjust: <Which extends Protocol | PullProtocol | HopProtocol>(protocol: Which) => Which;
}
