/** What is known of a voice. */
export interface VoiceAbout {
  readonly lang: string;
  /** it speaks on this device; any other one would send what it reads to somebody */
  readonly localService: boolean;
  readonly default: boolean;
}

/** The voice that reads a page: one of this device that speaks its language, its own choice first; undefined where there is none. */
export function localVoice<Voice extends VoiceAbout>(voices: readonly Voice[], language: string): Voice | undefined {
  const wanted = language.slice(0, 2).toLowerCase();
  const fit = voices.filter(({ lang, localService }) => localService && lang.slice(0, 2).toLowerCase() === wanted);
  return fit.find((voice) => voice.default) ?? fit[0];
}
