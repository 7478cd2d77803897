import type { Handout, HandoutLine } from '@surae/exchange';
import { HOME_TODAY_WORDS, HOME_WORDS, RUN_WHY_CHOICES } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { drawnPicture } from '../parts/drawn-picture.ts';
import '../parts/number-scale.ts';
import type { ScaleChosen } from '../parts/number-scale.ts';
import '../parts/number-stepper.ts';
import '../parts/run-file.ts';
import type { Stepped } from '../parts/number-stepper.ts';
import type { RunFileRead } from '../parts/run-file.ts';
import { runWords, shortNumber } from '../plan/plan-words.ts';
import { capital } from '../result/value-words.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import { painRulePicture } from './home-pictures.ts';
import { homePictureStyle } from './home-style.ts';
import { keepRun, keptDiary } from './kept-diary.ts';
import type { HomeMemory } from './kept-mornings.ts';
import { keepRunFile, keptRunFiles } from './kept-run-files.ts';
import { emptyRun, isRunPressable, type RunDraft, runFilled, runOf, runPressed } from './run-draft.ts';
import { isOver, runBreak, runLimitOn } from './today-lines.ts';

/** Today's limit for a run and why, and a run that is written down. It is there only where a clinician confirmed a limit. */
@customElement('home-running')
export class HomeRunning extends LitElement {
  static override styles = [
    base,
    homePictureStyle,
    css`
      .limit {
        font-size: var(--size-3);
        font-weight: 600;
        line-height: 1.25;
      }
      h2 {
        font-size: var(--size-2);
        margin-block: var(--gap-6) var(--gap-2);
      }
      .parts {
        display: grid;
        gap: var(--gap-6);
        margin-block: var(--gap-4);
      }
    `,
  ];

  @property({ attribute: false }) handout!: Handout;
  @property({ attribute: false }) memory!: HomeMemory;
  /** the day here */
  @property() day = '';
  @state() private draft: RunDraft | undefined;
  @state() private said: 'written' | 'over-limit' | 'not-kept' | undefined;

  override render(): TemplateResult | typeof nothing {
    const line = runLimitOn(this.handout, this.day);
    if (line === undefined) return nothing;
    const words = HOME_TODAY_WORDS;
    const [limit = '', ...more] = runWords(line);
    const { painLimit } = line;
    const isPause = line.run?.mostS === 0 || line.run?.mostM === 0;
    return html`
      <p class="quiet">${words['run-limit'].text}</p>
      <p class="limit">${capital(limit)}.</p>
      ${more.map((one) => html`<p>${capital(one)}.</p>`)} ${this.rest(line)}
      <h2>${words['run-why'].text}</h2>
      <p>${this.why(line)}</p>
      ${
        painLimit === null || isPause
          ? nothing
          : html`<h2>${words['pain-title'].text}</h2>
              <figure class="drawing">${drawnPicture(painRulePicture(painLimit))}</figure>
              <p>${fill(words['pain-rule-run'], { limit: painLimit })}</p>`
      }
      ${this.log(line)}
    `;
  }

  private why({ why }: HandoutLine): string {
    if (why === null || !Object.hasOwn(RUN_WHY_CHOICES, why)) return HOME_TODAY_WORDS['run-why-none'].text;
    return RUN_WHY_CHOICES[why as keyof typeof RUN_WHY_CHOICES].text;
  }

  private rest(line: HandoutLine): TemplateResult {
    const words = HOME_TODAY_WORDS;
    const found = runBreak(keptDiary(this.memory).runs, line, this.day);
    if (found === undefined) return html`<p>${words['runs-none'].text}</p>`;
    const next = found.next === null ? nothing : fill(words['next-run'], { day: dayOf(found.next) });
    return html`<p>${fill(words['last-run'], { day: dayOf(found.last) })} ${next}</p>`;
  }

  private log(line: HandoutLine): TemplateResult {
    const words = HOME_TODAY_WORDS;
    const draft = this.draft ?? emptyRun(line);
    const isTime = draft.by === 'time';
    const what = words[isTime ? 'minutes' : 'way'].text;
    const asked = this.handout.asked === 'both' ? (['left', 'right'] as const) : [this.handout.asked];
    return html`<h2>${words['log-run'].text}</h2>
      <div class="parts">
        <run-file
          today=${this.day}
          .taken=${keptRunFiles(this.memory)}
          @run-read=${({ detail }: RunFileRead) => this.set(runFilled(draft, detail))}
        ></run-file>
        <number-stepper
          legend=${what}
          told=${
            isTime
              ? fill(words['run-minutes'], { value: shortNumber(draft.amount) })
              : fill(words['run-way'], { value: shortNumber(draft.amount / 1000) })
          }
          less=${fill(words['run-less'], { what })}
          more=${fill(words['run-more'], { what })}
          ?no-less=${!isRunPressable(draft, -1)}
          ?no-more=${!isRunPressable(draft, 1)}
          @stepped=${({ detail }: Stepped) => this.set(runPressed(draft, detail))}
        ></number-stepper>
        ${asked.map(
          (side) =>
            html`<number-scale
              legend=${words[`run-pain-${side}`].text}
              low=${HOME_WORDS['pain-low'].text}
              high=${HOME_WORDS['pain-high'].text}
              open=${HOME_WORDS['not-told'].text}
              .value=${draft.pain[side] ?? null}
              @scale-chosen=${({ detail }: ScaleChosen) =>
                this.set({ ...draft, pain: { ...draft.pain, [side]: detail } })}
            ></number-scale>`,
        )}
        <button class="main" type="button" @click=${() => this.write(line, draft)}>
          ${words['write-run'].text}
        </button>
        <p role="status">${this.saidWords()}</p>
      </div>`;
  }

  private saidWords(): string {
    if (this.said === undefined) return '';
    if (this.said === 'not-kept') return HOME_WORDS['not-kept'].text;
    const written = HOME_TODAY_WORDS.written.text;
    return this.said === 'written' ? written : `${written} ${HOME_TODAY_WORDS['over-limit'].text}`;
  }

  private set(draft: RunDraft): void {
    this.draft = draft;
    this.said = undefined;
  }

  private write(line: HandoutLine, draft: RunDraft): void {
    const run = runOf(draft, this.day);
    try {
      keepRun(this.memory, run);
      if (draft.read !== undefined) keepRunFile(this.memory, draft.read);
      this.draft = undefined;
      this.renderRoot.querySelector('run-file')?.clear();
      this.said = isOver(line, run) ? 'over-limit' : 'written';
    } catch {
      this.said = 'not-kept';
    }
  }
}
