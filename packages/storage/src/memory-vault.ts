import { Vault, type VaultOptions } from './keys/vault.ts';
import { MemoryRows } from './memory-rows.ts';

/** An encrypted store that lives as long as the program. */
export function memoryVault(options: VaultOptions = {}): Vault {
  return new Vault(new MemoryRows(), options);
}
