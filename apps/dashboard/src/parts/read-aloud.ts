import { HOME_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { localVoice } from '../legs/local-voice.ts';
import { readableTexts } from '../legs/readable-texts.ts';
import { base } from '../styles/base.ts';

/** a little slower than speech is by itself; ours */
const rate = 0.9;

/** Reads the page around it, by a voice of this device; not there where there is none. It falls silent when the page is left. */
@customElement('read-aloud')
export class ReadAloud extends LitElement {
  static override styles = [
    base,
    css`
      button {
        margin-block: var(--gap-3);
      }
      @media print {
        :host {
          display: none;
        }
      }
    `,
  ];

  /** which page it reads: what was said of another one is no longer read */
  @property() of = '';
  @state() private voice: SpeechSynthesisVoice | undefined;
  @state() private reads = false;
  private readonly speech: SpeechSynthesis | undefined = globalThis.speechSynthesis;

  override connectedCallback(): void {
    super.connectedCallback();
    this.speech?.addEventListener('voiceschanged', this.choose);
    addEventListener('pagehide', this.stop);
    document.addEventListener('visibilitychange', this.stopHidden);
    this.choose();
  }

  override disconnectedCallback(): void {
    this.stop();
    this.speech?.removeEventListener('voiceschanged', this.choose);
    removeEventListener('pagehide', this.stop);
    document.removeEventListener('visibilitychange', this.stopHidden);
    super.disconnectedCallback();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('of') && changed.get('of') !== undefined) this.stop();
  }

  /** Voices come when the browser has found them. */
  private readonly choose = (): void => {
    this.voice = localVoice(this.speech?.getVoices() ?? [], document.documentElement.lang || 'en');
  };

  private readonly stopHidden = (): void => {
    if (document.visibilityState === 'hidden') this.stop();
  };

  private readonly stop = (): void => {
    if (!this.reads) return;
    this.reads = false;
    this.speech?.cancel();
  };

  private read(): void {
    const { speech, voice } = this;
    const root = this.getRootNode();
    if (speech === undefined || voice === undefined || !(root instanceof ShadowRoot)) return;
    const told = readableTexts(root).map((text) => {
      const utterance = new SpeechSynthesisUtterance(text);
      Object.assign(utterance, { voice, lang: voice.lang, rate });
      return utterance;
    });
    told.at(-1)?.addEventListener('end', () => (this.reads = false));
    speech.cancel();
    this.reads = told.length > 0;
    for (const utterance of told) speech.speak(utterance);
  }

  override render(): TemplateResult | typeof nothing {
    if (this.voice === undefined) return nothing;
    return html`<button type="button" aria-pressed=${this.reads} @click=${() => (this.reads ? this.stop() : this.read())}>
      ${HOME_WORDS[this.reads ? 'read-stop' : 'read-aloud'].text}
    </button>`;
  }
}
