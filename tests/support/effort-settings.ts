import { effortDefaults, effortSettingsBy } from '@surae/analysis';
import { SEATED_FAST_PULL, SEATED_PULL } from '@surae/shared';

/** Everything that the measurement of efforts takes as given in the seated strength test. */
export const strengthSettings = effortSettingsBy(effortDefaults, SEATED_PULL.parameters);

/** The same in the seated test of the rate of rise. */
export const fastSettings = effortSettingsBy(effortDefaults, SEATED_FAST_PULL.parameters);
