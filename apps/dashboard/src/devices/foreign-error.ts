import { DeviceError, type DeviceErrorCode } from './device-error.ts';

/** Codes by the name of an error of the browser. */
export type CodesByName = Readonly<Record<string, DeviceErrorCode>>;

/** An error of the browser as one of ours, by its name and by what was being done; ours are left as they are. */
export function deviceError(error: unknown, doing: string, codes: CodesByName): DeviceError {
  if (error instanceof DeviceError) return error;
  const name = error instanceof Error ? error.name : '';
  const said = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
  return new DeviceError(codes[name] ?? 'failed', `${doing}: ${said}`, { cause: error });
}
