import { RECOUNT_STUDY_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { foldStyle } from '../parts/fold-style.ts';
import { verdictMark } from '../parts/verdict-mark.ts';
import { base } from '../styles/base.ts';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import { readingAt } from './reading-at.ts';
import { actOf, type RecountAct } from './recount-keys.ts';
import { newsWords, tallyWords } from './recount-news.ts';
import type { RecountSession } from './recount-session.ts';
import './recount-trace.ts';
import type { CursorAsked } from './recount-trace.ts';

const VERDICTS = ['yes', 'no', 'cannot_tell'] as const;

/** One recording that somebody counts, without a word on whose it is: its line, the marks put so far, keys and buttons for all of it. */
@customElement('recount-item')
export class RecountItem extends LitElement {
  static override styles = [
    base,
    foldStyle,
    css`
      .stage {
        inline-size: 100%;
        min-block-size: 312px;
      }
      .reading {
        margin-block: var(--gap-2) 0;
        min-block-size: 1.5em;
      }
      .news {
        margin-block: 0 var(--gap-3);
        min-block-size: 2.6em;
      }
      .presses {
        display: grid;
        gap: var(--gap-3);
        grid-template-columns: repeat(2, minmax(0, 1fr));
        margin-block-end: var(--gap-3);
      }
      .presses.three {
        grid-template-columns: repeat(3, minmax(0, 1fr));
      }
      .presses button {
        flex-wrap: wrap;
        min-inline-size: 0;
      }
      @media (min-width: 64rem) {
        .presses.four {
          grid-template-columns: repeat(4, minmax(0, 1fr));
        }
      }
      @media (max-width: 30rem) {
        .presses button {
          font-size: var(--size-1);
          padding-inline: var(--gap-2);
        }
      }
      .presses svg {
        block-size: 1.2em;
        fill: none;
        stroke: currentColor;
        stroke-width: 2;
      }
      kbd {
        border: 1px solid currentColor;
        border-radius: 3px;
        font: inherit;
        font-size: var(--size-1);
        padding-inline: 0.4em;
      }
      .main kbd {
        margin-inline-start: var(--gap-2);
      }
      details {
        margin-block-start: var(--gap-3);
      }
      summary kbd {
        display: inline-block;
      }
      ul {
        margin: 0;
        padding-inline-start: var(--gap-4);
      }
      @media (hover: none), (max-width: 30rem) {
        kbd {
          display: none;
        }
      }
    `,
  ];

  @property({ attribute: false }) session!: RecountSession;
  @state() private help = false;
  @query('.stage') private readonly stage: HTMLElement | null | undefined;
  private followed: RecountSession | undefined;

  private readonly follow = (): void => this.requestUpdate();

  override disconnectedCallback(): void {
    this.followed?.removeEventListener('change', this.follow);
    this.followed = undefined;
    super.disconnectedCallback();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('session') && this.followed !== undefined) return;
    this.followed?.removeEventListener('change', this.follow);
    this.followed = this.session;
    this.session.addEventListener('change', this.follow);
  }

  private readonly press = (event: KeyboardEvent): void => {
    const act = actOf(event);
    // a button that has the focus is pressed by Enter
    if (act === undefined || (act.act === 'done' && event.target instanceof HTMLButtonElement)) return;
    event.preventDefault();
    void this.do(act);
  };

  private async do(act: RecountAct): Promise<void> {
    const { session } = this;
    switch (act.act) {
      case 'move':
        return session.moveBy(act.byS);
      case 'end':
        return session.moveTo(act.direction * Infinity);
      case 'peak':
        return session.toPeak(act.direction);
      case 'item':
        return session.step(act.direction);
      case 'say':
        return session.say(act.verdict);
      case 'take':
        return session.takeAway();
      case 'undo':
        return session.undo();
      case 'done':
        await session.done();
        await this.updateComplete;
        this.stage?.focus();
        return;
      case 'help':
        this.help = !this.help;
    }
  }

  override render(): TemplateResult {
    const words = RECOUNT_STUDY_WORDS;
    const { session } = this;
    const { at, of } = session.place;
    const { left } = session;
    const leftWords = left === 0 ? words['left-none'] : left === 1 ? words['left-one'] : words['left-some'];
    // keys are heard wherever the focus is in here, and nowhere else
    return html`<div @keydown=${this.press}>
      <h2 tabindex="-1">${fill(words.item, { at, total: of })}</h2>
      <p class="quiet">${fill(leftWords, { left })}</p>
      ${this.picture()}
      <p class="news" role="status">${newsWords(session)} ${tallyWords(session)}</p>
      ${this.presses()}
      <details ?open=${this.help} @toggle=${(event: Event) => (this.help = (event.target as HTMLDetailsElement).open)}>
        <summary>${words.help.text} <kbd>?</kbd></summary>
        <ul>
          ${(['move', 'peak', 'say', 'take', 'done', 'help'] as const).map((key) => html`<li>${words[`help-${key}`].text}</li>`)}
        </ul>
        <p class="quiet">${words['peaks-note'].text}</p>
      </details>
    </div>`;
  }

  private picture(): TemplateResult {
    const words = RECOUNT_STUDY_WORDS;
    const { trace, cursorS, marks, markHere } = this.session;
    const reading = trace === undefined ? words.reading.text : readingAt(trace, cursorS);
    const told =
      markHere === undefined
        ? reading
        : fill(words['at-mark'], { reading, place: markHere.place, verdict: words[markHere.verdict].text });
    // it stays while the next recording is read, so that whoever goes on by the keyboard keeps the place
    return html`<div
        class="stage"
        role="slider"
        tabindex="0"
        aria-orientation="horizontal"
        aria-label=${words['cursor-label'].text}
        aria-valuemin=${decimal(trace?.timesS[0] ?? 0, 2)}
        aria-valuemax=${decimal(trace?.timesS.at(-1) ?? 0, 2)}
        aria-valuenow=${decimal(cursorS, 2)}
        aria-valuetext=${told}
      >
        ${
          trace === undefined
            ? nothing
            : html`<recount-trace
                .trace=${trace}
                .lanes=${[{ name: '', marks }]}
                .cursorS=${cursorS}
                @cursor-asked=${({ detail }: CursorAsked) => this.session.moveTo(detail)}
              ></recount-trace>`
        }
      </div>
      <p class="reading">${trace === undefined ? nothing : `${trace.label}: `}${told}</p>`;
  }

  private presses(): TemplateResult {
    const words = RECOUNT_STUDY_WORDS;
    const press = (act: RecountAct, text: string, key: string, icon: TemplateResult | typeof nothing = nothing) =>
      html`<button type="button" @click=${() => void this.do(act)}>${icon}${text}<kbd aria-hidden="true">${key}</kbd></button>`;
    return html`<div class="presses">
        ${press({ act: 'peak', direction: -1 }, words['peak-before'].text, 'A')}
        ${press({ act: 'peak', direction: 1 }, words['peak-next'].text, 'D')}
      </div>
      <div class="presses three">
        ${VERDICTS.map((verdict, at) =>
          press({ act: 'say', verdict }, words[`say-${verdict}`].text, `${at + 1}`, verdictMark(verdict)),
        )}
      </div>
      <div class="presses four">
        ${press({ act: 'take' }, words.take.text, '0')} ${press({ act: 'undo' }, words.undo.text, 'U')}
        ${press({ act: 'item', direction: -1 }, words['item-before'].text, 'B')}
        ${press({ act: 'item', direction: 1 }, words['item-next'].text, 'N')}
      </div>
      <button class="main" type="button" @click=${() => void this.do({ act: 'done' })}>
        ${words.done.text}<kbd aria-hidden="true">Enter</kbd>
      </button>`;
  }
}
