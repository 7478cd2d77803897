import { browserVault, type Vault } from '@surae/storage';

/** Name of the database of a clinic of one's own. */
export const ownName = 'surae-own';

/** The encrypted store of a clinic of one's own on this device, locked. */
export function ownVault(isoNow: () => string): Promise<Vault> {
  return browserVault(ownName, { oneWriter: true, isoNow });
}
