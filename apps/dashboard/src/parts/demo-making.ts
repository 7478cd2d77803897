import { consume } from '@lit/context';
import type { CaseloadEntry } from '@surae/casebook';
import { type Sentence, START_WORDS } from '@surae/shared';
import type { RecordStore } from '@surae/storage';
import { css, html, LitElement, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import { type Assessor, assessorContext, storeContext } from '../contexts/capabilities.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';

/** How far something for the demo clinic is made. */
interface Making {
  readonly done: number;
  readonly of: number;
}

/** Something that is made for the demo clinic by a press: offered, on its way, or stopped. */
export abstract class DemoMaking extends LitElement {
  static override styles = [
    base,
    css`
      p,
      button {
        margin-block-end: var(--gap-6);
      }
      button {
        padding-inline: 0;
        text-align: start;
      }
    `,
  ];

  @property({ attribute: false }) entries: readonly CaseloadEntry[] = [];
  @consume({ context: storeContext }) protected readonly store!: RecordStore;
  @consume({ context: assessorContext }) protected readonly assessor!: Assessor;
  /** what is being made, or that it went wrong */
  @state() private making: Making | 'stopped' | undefined;

  /** words of its states: asked for, on its way, stopped */
  protected abstract readonly words: Readonly<Record<'ask' | 'running' | 'stopped', keyof typeof START_WORDS>>;
  /** how many there are, before it is known better */
  protected abstract readonly count: number;

  /** Whether there is anything to make. */
  protected abstract isOffered(): boolean;

  /** Makes it, tells how far it is, and loads what that takes. */
  protected abstract make(told: (done: number, of: number) => void): Promise<void>;

  override render(): TemplateResult | null {
    const text = (code: keyof typeof START_WORDS): Sentence => START_WORDS[code];
    if (this.making === 'stopped') return html`<p class="voice" role="alert">${text(this.words.stopped).text}</p>`;
    if (this.making !== undefined) {
      const { done, of } = this.making;
      return html`<p class="voice" role="status">${fill(text(this.words.running), { done: done + 1, of })}</p>`;
    }
    if (!this.isOffered()) return null;
    return html`<button class="plain" type="button" @click=${() => void this.begin()}>
      ${text(this.words.ask).text}
    </button>`;
  }

  private async begin(): Promise<void> {
    this.making = { done: 0, of: this.count };
    try {
      await this.make((done, of) => (this.making = done < of ? { done, of } : undefined));
    } catch {
      this.making = 'stopped';
    }
    this.dispatchEvent(new CustomEvent('demo-made'));
  }
}
