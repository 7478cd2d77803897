import { consume } from '@lit/context';
import { type OwnRulesEntry, ownNumbersInUse } from '@surae/casebook';
import { type GuidanceRule, RULES_PLACE, RULES_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { numberText } from '../advice/why-words.ts';
import type { AuditTrail } from '../clinic/audit-trail.ts';
import { auditContext, bookContext, clockContext, type HostClock } from '../contexts/capabilities.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import { fieldStyle } from '../parts/field-style.ts';
import '../parts/json-file.ts';
import type { FileRead } from '../parts/json-file.ts';
import { KeptEntries } from '../parts/kept-entries.ts';
import '../parts/own-rule-list.ts';
import { type ChangeTakenBack, ownNumberName } from '../parts/own-rule-list.ts';
import '../parts/rule-fold.ts';
import type { NumberChanged } from '../parts/rule-fold.ts';
import { ruledSectionStyle } from '../parts/ruled-section-style.ts';
import { saveFile } from '../result/save-file.ts';
import { softwareName } from '../result/software.ts';
import { type RuleChange, rulesInUse } from '../rules/own-rules-desk.ts';
import { ruleGroups } from '../rules/rule-view.ts';
import { changesFromFile, RulesFileRefusal, rulesFileText } from '../rules/rules-file.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';

/** Every rule that proposals come from, to be read, and the clinic's own copy of their numbers. */
@customElement('rules-page')
export class RulesPage extends LitElement {
  static override styles = [
    base,
    fieldStyle,
    ruledSectionStyle,
    css`
      .presses {
        display: flex;
        flex-wrap: wrap;
        gap: var(--gap-2);
        margin-block: var(--gap-4);
      }
      rule-fold {
        display: block;
      }
      json-file {
        display: block;
        max-inline-size: 44rem;
      }
    `,
  ];

  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @consume({ context: auditContext }) private readonly audit!: AuditTrail;
  private readonly kept = new KeptEntries<OwnRulesEntry>(
    this,
    () => this.book.ownRules.entries(),
    RULES_WORDS['not-written'].text,
  );
  @state() private changedAlone = false;
  @state() private refused = '';

  override render(): TemplateResult {
    const words = RULES_WORDS;
    const { entries, said } = this.kept;
    const count = ownNumbersInUse(entries ?? []).length;
    return html`
      <h1 tabindex="-1">${RULES_PLACE.title.text}</h1>
      <p>${words.explain.text}</p>
      ${
        entries === undefined
          ? nothing
          : html`<p class="counted">${count === 0 ? words['none-changed'].text : fill(words['changed-count'], { count })}</p>`
      }
      <p role="status" class="voice">${said}</p>
      ${entries === undefined ? nothing : html`${this.changes(entries)} ${this.rules(entries)} ${this.files(entries)}`}
    `;
  }

  private changes(entries: readonly OwnRulesEntry[]): TemplateResult | typeof nothing {
    if (entries.length === 0) return nothing;
    return html`<section>
      <h2>${RULES_WORDS.kept.text}</h2>
      <own-rule-list
        .entries=${entries}
        @change-taken-back=${({ detail }: ChangeTakenBack) => void this.takeBack(detail)}
      ></own-rule-list>
    </section>`;
  }

  private rules(entries: readonly OwnRulesEntry[]): TemplateResult {
    const { rules } = rulesInUse(entries);
    const isChanged = ({ edits = [] }: GuidanceRule): boolean => edits.length > 0;
    const hasChanged = rules.some(isChanged);
    const shown = this.changedAlone && hasChanged ? rules.filter(isChanged) : rules;
    return html`${
      hasChanged
        ? html`<div class="presses">
            <button
              type="button"
              aria-pressed=${this.changedAlone}
              @click=${() => (this.changedAlone = !this.changedAlone)}
            >
              ${RULES_WORDS.filter.text}
            </button>
          </div>`
        : nothing
    }
    ${ruleGroups(shown).map(
      ({ about, title, rules: own }) =>
        html`<section aria-labelledby="about-${about}" @number-changed=${({ detail }: NumberChanged) => void this.change(detail)}>
          <h2 id="about-${about}">${title}</h2>
          ${own.map((rule) => html`<rule-fold data-rule=${rule.code} .rule=${rule}></rule-fold>`)}
        </section>`,
    )}`;
  }

  private files(entries: readonly OwnRulesEntry[]): TemplateResult {
    const words = RULES_WORDS;
    const numbers = ownNumbersInUse(entries);
    return html`<section>
      <h2>${words.files.text}</h2>
      <p>${words['files-explain'].text}</p>
      ${numbers.length === 0 ? html`<p class="quiet">${words['save-none'].text}</p>` : nothing}
      <div class="presses">
        <button type="button" ?disabled=${numbers.length === 0} @click=${() => void this.save(entries)}>
          ${words.save.text}
        </button>
      </div>
      <json-file
        label=${words.file.text}
        @file-read=${({ detail }: FileRead) => void this.takeIn(detail, entries)}
      ></json-file>
      ${this.refused === '' ? nothing : html`<p class="voice" role="alert">${this.refused}</p>`}
    </section>`;
  }

  private async change(change: RuleChange): Promise<void> {
    const { number, unit, value, published } = change;
    const told = { number: ownNumberName(number), value: numberText(value ?? published, unit) };
    const said = fill(RULES_WORDS[value === null ? 'now-back' : 'now-kept'], told);
    if (await this.kept.change(() => this.book.ownRules.keep([change]), said)) await this.audit.write('changed');
  }

  private async takeBack(id: string): Promise<void> {
    const said = RULES_WORDS['now-undone'].text;
    if (await this.kept.change(() => this.book.ownRules.takeBack(id), said)) await this.audit.write('changed', id);
  }

  private async takeIn({ name, text }: FileRead['detail'], entries: readonly OwnRulesEntry[]): Promise<void> {
    this.refused = '';
    try {
      const changes = changesFromFile(name, text, ownNumbersInUse(entries));
      const said = fill(RULES_WORDS['file-taken'], { file: name, count: changes.length });
      if (await this.kept.change(() => this.book.ownRules.keep(changes, name), said)) await this.audit.write('changed');
    } catch (error) {
      if (!(error instanceof RulesFileRefusal)) throw error;
      this.refused = error.message;
    }
  }

  private async save(entries: readonly OwnRulesEntry[]): Promise<void> {
    const day = this.clock.isoNow().slice(0, 10).replaceAll('-', '');
    const numbers = ownNumbersInUse(entries);
    const content = rulesFileText(numbers, softwareName());
    saveFile({ name: `surae-rules-${day}.json`, type: 'application/json', content });
    await this.audit.write('exported', null, { numbers: numbers.length });
  }
}
