import type { ReactiveControllerHost } from 'lit';
import { AssessmentError } from './assessment.ts';

/** Something whose report may still be missing. */
export interface Awaited {
  readonly id: string;
  readonly report: object | null;
}

/** The assessments that a page of results has asked for: which are under way, and why others could not be done. */
export class Assessments<Tested extends Awaited> {
  private readonly states = new Map<string, 'running' | AssessmentError>();
  private readonly page: Pick<ReactiveControllerHost, 'requestUpdate'>;
  private readonly assess: (tested: Tested) => Promise<void>;

  /** `assess` makes one report and hands it on. */
  constructor(page: Pick<ReactiveControllerHost, 'requestUpdate'>, assess: (tested: Tested) => Promise<void>) {
    this.page = page;
    this.assess = assess;
  }

  /** Begins all that were not begun before; what failed waits until somebody asks again. */
  begin(those: readonly Tested[]): void {
    for (const tested of those) if (!this.states.has(tested.id)) void this.run(tested);
  }

  async run(tested: Tested): Promise<void> {
    this.note(tested, 'running');
    try {
      await this.assess(tested);
    } catch (error) {
      const known = error instanceof AssessmentError;
      this.note(tested, known ? error : new AssessmentError('unexpected', String(error), { cause: error }));
    }
  }

  /** How far a missing report is; undefined where it is there, or nobody has asked. */
  stateOf({ id, report }: Tested): 'running' | AssessmentError | undefined {
    return report === null ? this.states.get(id) : undefined;
  }

  isAnyRunning(those: readonly Tested[]): boolean {
    return those.some((tested) => this.stateOf(tested) === 'running');
  }

  private note({ id }: Tested, state: 'running' | AssessmentError): void {
    this.states.set(id, state);
    this.page.requestUpdate();
  }
}
