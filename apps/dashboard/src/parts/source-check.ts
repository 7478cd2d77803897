import { consume } from '@lit/context';
import type { SetupPlacement, Side, Trace } from '@surae/analysis';
import { SET_UP_WORDS } from '@surae/shared';
import { css, html, LitElement, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { bookContext } from '../contexts/capabilities.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import { sourceLights } from '../live/source-lights.ts';
import { base } from '../styles/base.ts';
import './light-list.ts';

/** The five lights before a test for a source that tests nobody: a simulated person, or a recording that is played. */
@customElement('source-check')
export class SourceCheck extends LitElement {
  static override styles = [
    base,
    css`
      :host {
        margin-block-start: var(--gap-4);
      }
      p {
        margin-block: var(--gap-2);
      }
    `,
  ];

  @property({ attribute: false }) personId = '';
  @property({ attribute: false }) origin: 'simulated' | 'replayed' = 'simulated';
  @property({ attribute: false }) recording: Trace | null = null;
  @property({ attribute: false }) sideOfRecording: Side | null = null;
  @property({ attribute: false }) placement!: SetupPlacement;
  @property({ attribute: false }) side!: Side;
  @consume({ context: bookContext }) private readonly book!: VisitBook;
  /** undefined until it was read */
  @state() private bodyMassKg: number | null | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('personId')) void this.load();
  }

  private async load(): Promise<void> {
    this.bodyMassKg = (await this.book.person(this.personId))?.bodyMassKg ?? null;
  }

  override render(): TemplateResult {
    const { origin, recording, sideOfRecording, placement, side, bodyMassKg } = this;
    if (bodyMassKg === undefined) return html``;
    const lights = sourceLights({ origin, recording, sideOfRecording, placement, side, bodyMassKg, massNeeded: true });
    return html`<light-list .lights=${lights}></light-list>
      <p class="quiet">${SET_UP_WORDS[`source-${origin}`].text}</p>`;
  }
}
