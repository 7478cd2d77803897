import { consume } from '@lit/context';
import type { Side } from '@surae/analysis';
import { betweenTestsS, earlierTest, type TestKind, type Visit } from '@surae/casebook';
import { TEST_CHOICE_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { clockContext, type HostClock } from '../contexts/capabilities.ts';
import { minutesAndSeconds } from '../journey/rest-news.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';

/** What the same leg did before in this visit, by the other test, and how much rest is still to be left. */
@customElement('earlier-test')
export class EarlierTest extends LitElement {
  static override styles = [
    base,
    css`
      p {
        margin-block: var(--gap-2) 0;
      }
    `,
  ];

  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) side!: Side;
  @property({ attribute: false }) test!: TestKind;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @state() private nowIso = '';
  private stopTicking: (() => void) | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.nowIso = this.clock.isoNow();
    this.stopTicking = this.clock.every(1000, () => (this.nowIso = this.clock.isoNow()));
  }

  override disconnectedCallback(): void {
    this.stopTicking?.();
    super.disconnectedCallback();
  }

  override render(): TemplateResult | typeof nothing {
    const before = earlierTest(this.visit, this.side, this.test, this.nowIso);
    if (before === undefined) return nothing;
    const words = TEST_CHOICE_WORDS;
    const ago = before.agoS === null ? words['ago-unknown'].text : minutesAndSeconds(before.agoS);
    const leftS = betweenTestsS - (before.agoS ?? betweenTestsS);
    return html`<p class="voice">
      ${fill(before.test === 'heel-raise' ? words['after-raises'] : words['after-pushes'], { ago })}
      ${
        leftS <= 0
          ? nothing
          : fill(words['leave-rest'], { whole: minutesAndSeconds(betweenTestsS), left: minutesAndSeconds(leftS) })
      }
    </p>`;
  }
}
