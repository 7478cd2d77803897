import { consume } from '@lit/context';
import { FRAME_WORDS, START_WORDS } from '@surae/shared';
import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { bookContext } from '../contexts/capabilities.ts';
import type { Person } from '../journey/person.ts';
import type { Visit } from '../journey/visit.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import { hashOf } from '../route.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';

interface Entry {
  readonly person: Person;
  readonly visits: readonly Visit[];
}

/** Who is here today: everybody in the book, with what they have done. */
@customElement('start-page')
export class StartPage extends LitElement {
  static override styles = [
    base,
    css`
      ul {
        list-style: none;
        margin: 0;
        padding: 0;
      }
      .people > li {
        align-items: center;
        border-block-start: 1px solid var(--hairline);
        display: grid;
        gap: var(--gap-2) var(--gap-6);
        grid-template-columns: minmax(0, 1fr) auto;
        padding-block: var(--gap-4);
      }
      h2 {
        font-size: var(--size-2);
        margin: 0;
      }
      p {
        margin: 0;
      }
      .past {
        display: flex;
        flex-wrap: wrap;
        gap: 0 var(--gap-4);
        grid-column: 1 / -1;
      }
      .past a {
        display: inline-block;
        padding-block: var(--gap-3);
      }
      .intro {
        margin-block-end: var(--gap-6);
      }
      @media (max-width: 32rem) {
        .people > li {
          grid-template-columns: minmax(0, 1fr);
        }
      }
    `,
  ];

  @consume({ context: bookContext }) @state() private book!: VisitBook;
  @state() private entries: readonly Entry[] | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    void this.load();
  }

  private async load(): Promise<void> {
    const people = await this.book.people();
    this.entries = await Promise.all(
      people.map(async (person) => ({ person, visits: await this.book.visitsOf(person.id) })),
    );
  }

  private async begin(person: Person): Promise<void> {
    const visitId = await this.book.beginVisit(person.id);
    location.hash = hashOf({ page: 'visit', visitId });
  }

  override render(): TemplateResult {
    return html`
      <h1>${START_WORDS.title.text}</h1>
      <p class="voice intro">${START_WORDS['demo-clinic'].text}</p>
      ${this.list()}
    `;
  }

  private list(): TemplateResult {
    if (this.entries === undefined) return html`<p class="quiet" role="status">${FRAME_WORDS.loading.text}</p>`;
    if (this.entries.length === 0) return html`<p>${START_WORDS.nobody.text}</p>`;
    return html`<ul class="people">
      ${this.entries.map((entry) => this.entry(entry))}
    </ul>`;
  }

  private entry({ person, visits }: Entry): TemplateResult {
    const open = visits.find((visit) => !visit.closed && visit.sets.length > 0);
    const mass = person.bodyMassKg === null ? fill(START_WORDS['no-mass']) : fill(START_WORDS.mass, { mass: person.bodyMassKg });
    const lever =
      person.heelLeverM === null
        ? fill(START_WORDS['no-lever'])
        : fill(START_WORDS.lever, { lever: (person.heelLeverM * 100).toFixed(1) });
    return html`<li>
      <div>
        <h2>${person.name}</h2>
        <p class="quiet">${mass}, ${lever}</p>
      </div>
      <div class="choices">
        ${
          open === undefined
            ? null
            : html`<a class="button" href=${hashOf({ page: 'visit', visitId: open.id })}
                >${fill(START_WORDS['go-on'], { date: dayOf(open.begunAt) })}</a
              >`
        }
        <button type="button" aria-label=${`${START_WORDS.begin.text}: ${person.name}`} @click=${() => void this.begin(person)}>
          ${START_WORDS.begin.text}
        </button>
      </div>
      ${this.past(visits.filter((visit) => visit.closed))}
    </li>`;
  }

  private past(visits: readonly Visit[]): TemplateResult | null {
    if (visits.length === 0) return null;
    return html`<div class="past">
      ${visits.map(
        ({ id, begunAt }) =>
          html`<a href=${hashOf({ page: 'visit', visitId: id })}>${fill(START_WORDS['past-visit'], { date: dayOf(begunAt) })}</a>`,
      )}
    </div>`;
  }
}
