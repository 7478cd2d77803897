import type { AfterAtHome, Handout } from '@surae/exchange';
import { EXERCISE_HOW_WORDS, HOME_TODAY_WORDS, HOME_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { drawnPicture } from '../parts/drawn-picture.ts';
import '../parts/number-scale.ts';
import type { ScaleChosen } from '../parts/number-scale.ts';
import '../parts/pace-ring.ts';
import '../parts/save-calendar.ts';
import type { CalendarSaved } from '../parts/save-calendar.ts';
import { footPicture } from '../plan/foot-picture.ts';
import { footStyle } from '../plan/foot-style.ts';
import { oftenWords, planLegs, planName, rangeWords, shortNumber } from '../plan/plan-words.ts';
import { capital } from '../result/value-words.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { painRulePicture } from './home-pictures.ts';
import { homePictureStyle } from './home-style.ts';
import { keepPlaces, keptPlaces } from './kept-calendar.ts';
import { keepAfter, keepDone, keptDiary } from './kept-diary.ts';
import type { HomeMemory } from './kept-mornings.ts';
import { morningLine } from './morning-line.ts';
import { afterLegs, daysDone, doneOn, exercisesOn, linesOn, setWords, type TodayLine } from './today-lines.ts';

/** Today's exercises, one at a time: what, how far down, how slowly, how heavy, how sore, and the sets that are left. */
@customElement('home-today')
export class HomeToday extends LitElement {
  static override styles = [
    base,
    footStyle,
    homePictureStyle,
    css`
      .one {
        display: grid;
        gap: var(--gap-4);
        margin-block-end: var(--gap-6);
      }
      .one p {
        margin: 0;
      }
      h2,
      h3 {
        margin: 0;
      }
      .big,
      .left {
        font-size: var(--size-3);
        font-weight: 600;
        line-height: 1.25;
      }
      .ways {
        display: flex;
        flex-wrap: wrap;
        gap: var(--gap-3);
      }
      .again {
        font-size: var(--size-2);
      }
    `,
  ];

  @property({ attribute: false }) handout!: Handout;
  @property({ attribute: false }) memory!: HomeMemory;
  /** the day here */
  @property() day = '';
  @state() private at = 0;
  @state() private notKept = false;

  override render(): TemplateResult {
    const exercises = exercisesOn(this.handout, this.day);
    const current = exercises[Math.min(this.at, exercises.length - 1)];
    return html`
      ${this.thisMorning()}
      ${current === undefined ? html`<p>${HOME_TODAY_WORDS['nothing-today'].text}</p>` : this.exercise(current, exercises)}
      ${this.notKept ? html`<p class="voice" role="alert">${HOME_WORDS['not-kept'].text}</p>` : nothing}
      ${this.afterwards(exercises)} ${this.others()}
      <save-calendar
        .handout=${this.handout}
        day=${this.day}
        places=${keptPlaces(this.memory)}
        @calendar-saved=${({ detail }: CalendarSaved) => keepPlaces(this.memory, detail)}
      ></save-calendar>
    `;
  }

  /** What the morning was answered with, where it was told and an answer was confirmed. */
  private thisMorning(): TemplateResult | typeof nothing {
    const told = keptDiary(this.memory).mornings.find(({ day }) => day === this.day);
    const line = told === undefined ? undefined : morningLine(this.handout, told);
    if (line === undefined) return nothing;
    return html`<p class="again">${HOME_TODAY_WORDS['this-morning'].text} ${line}</p>`;
  }

  private exercise(current: TodayLine, all: readonly TodayLine[]): TemplateResult {
    const words = HOME_TODAY_WORDS;
    const { line } = current;
    const how = line.code !== null && Object.hasOwn(EXERCISE_HOW_WORDS, line.code) ? line.code : null;
    const place = all.indexOf(current);
    return html`<section class="one" aria-labelledby="what">
      <p class="quiet">${fill(words.of, { place: place + 1, count: all.length })}</p>
      <h2 id="what" tabindex="-1">${planName(line)}</h2>
      <p class="big">${capital(planLegs(line))}</p>
      ${how === null ? nothing : html`<p>${EXERCISE_HOW_WORDS[how as keyof typeof EXERCISE_HOW_WORDS].text}</p>`}
      ${this.range(current)} ${this.sets(current)} ${this.pace(current)}
      <p>
        ${line.load === null ? words['no-weight'].text : fill(words.weight, { value: shortNumber(line.load.value), unit: line.load.unit })}
      </p>
      ${this.pain(current)} ${this.often(current)}
      <div class="ways">
        ${place === 0 ? nothing : html`<button type="button" @click=${() => this.go(place - 1)}>${words.back.text}</button>`}
        ${place === all.length - 1 ? nothing : html`<button type="button" @click=${() => this.go(place + 1)}>${words.next.text}</button>`}
      </div>
    </section>`;
  }

  private range({ line }: TodayLine): TemplateResult | typeof nothing {
    if (line.lowestFootDeg === null) return nothing;
    return html`<figure class="range">${drawnPicture(footPicture(line.lowestFootDeg))}</figure>
      <p class="again">${capital(rangeWords(line).join())}.</p>`;
  }

  private sets(current: TodayLine): TemplateResult | typeof nothing {
    const words = HOME_TODAY_WORDS;
    const { sets, repetitions, holdS, restS } = current.line;
    if (sets === null) return nothing;
    const done = this.done(current)?.sets ?? 0;
    const each = setWords({ repetitions, holdS });
    return html`
      <p>${each ?? nothing} ${restS === null ? nothing : fill(words.rest, { seconds: restS })}</p>
      <p class="left" role="status">
        ${done >= sets ? words['no-sets-left'].text : fill(words['sets-left'], { left: sets - done, sets })}
      </p>
      ${
        done >= sets
          ? nothing
          : html`<button class="main" type="button" @click=${() => this.keep(current, done + 1)}>
              ${words['one-set-done'].text}
            </button>`
      }
      ${
        done === 0
          ? nothing
          : html`<button type="button" @click=${() => this.keep(current, done - 1)}>${words['one-set-back'].text}</button>
              <number-scale
                legend=${words['worst-pain'].text}
                low=${HOME_WORDS['pain-low'].text}
                high=${HOME_WORDS['pain-high'].text}
                open=${HOME_WORDS['not-told'].text}
                .value=${this.done(current)?.pain ?? null}
                @scale-chosen=${({ detail }: ScaleChosen) => this.keep(current, done, detail)}
              ></number-scale>`
      }
    `;
  }

  private pace({ line }: TodayLine): TemplateResult | typeof nothing {
    if (line.tempo === null) return nothing;
    return html`<h3>${HOME_TODAY_WORDS['pace-title'].text}</h3>
      <pace-ring .tempo=${line.tempo}></pace-ring>`;
  }

  private pain({ line: { painLimit } }: TodayLine): TemplateResult | typeof nothing {
    if (painLimit === null) return nothing;
    return html`<h3>${HOME_TODAY_WORDS['pain-title'].text}</h3>
      <figure class="drawing">${drawnPicture(painRulePicture(painLimit))}</figure>
      <p>${fill(HOME_TODAY_WORDS['pain-rule'], { limit: painLimit })}</p>`;
  }

  private often({ line, place }: TodayLine): TemplateResult {
    const words = HOME_TODAY_WORDS;
    const days = daysDone(keptDiary(this.memory).done, this.handout.planKey, place, this.day);
    const often = oftenWords(line).map((one) => fill(words.often, { often: one }));
    return html`<p>${often.join(' ')} ${fill(words['done-days'], { days })}</p>`;
  }

  /** Pain in the hours after the exercises of today, once of each leg that was done: it is of the whole session. */
  private afterwards(exercises: readonly TodayLine[]): TemplateResult | typeof nothing {
    const done = exercises.filter((one) => this.done(one) !== undefined).map(({ line }) => line.side);
    const legs = afterLegs(this.handout.asked, done);
    if (legs.length === 0) return nothing;
    const words = HOME_TODAY_WORDS;
    const told = keptDiary(this.memory).after.find(({ day }) => day === this.day);
    return html`<section class="one" aria-labelledby="after">
      <h2 id="after">${words['after-title'].text}</h2>
      <p>${words['after-explain'].text}</p>
      ${legs.map(
        (leg) =>
          html`<number-scale
            data-after=${leg}
            legend=${words[`after-${leg}`].text}
            low=${HOME_WORDS['pain-low'].text}
            high=${HOME_WORDS['pain-high'].text}
            open=${HOME_WORDS['not-told'].text}
            .value=${told?.[leg] ?? null}
            @scale-chosen=${({ detail }: ScaleChosen) => this.keepAfter(told, { [leg]: detail })}
          ></number-scale>`,
      )}
    </section>`;
  }

  private keepAfter(told: AfterAtHome | undefined, change: Partial<AfterAtHome>): void {
    try {
      keepAfter(this.memory, { left: null, right: null, ...told, ...change, day: this.day });
      this.notKept = false;
    } catch {
      this.notKept = true;
    }
    this.requestUpdate();
  }

  /** Advice, and lines of the clinician's own words. */
  private others(): TemplateResult | typeof nothing {
    const lines = linesOn(this.handout, this.day).filter(({ line: { of } }) => of === 'advice' || of === 'words');
    if (lines.length === 0) return nothing;
    return html`<h2>${HOME_TODAY_WORDS.advice.text}</h2>
      <ul>
        ${lines.map(({ line }) => html`<li>${planName(line)}</li>`)}
      </ul>`;
  }

  private done({ place }: TodayLine): ReturnType<typeof doneOn> {
    return doneOn(keptDiary(this.memory).done, this.handout.planKey, place, this.day);
  }

  private keep(current: TodayLine, sets: number, pain = this.done(current)?.pain ?? null): void {
    const { place, line } = current;
    const { day, handout } = this;
    try {
      keepDone(this.memory, {
        day,
        planKey: handout.planKey,
        place,
        code: line.code ?? '',
        side: line.side,
        sets,
        pain,
      });
      this.notKept = false;
    } catch {
      this.notKept = true;
    }
    this.requestUpdate();
  }

  private go(at: number): void {
    this.at = at;
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>('#what')?.focus());
  }
}
