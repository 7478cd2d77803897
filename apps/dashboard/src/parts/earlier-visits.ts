import { customElement } from 'lit/decorators.js';
import { isOfBeginning } from '../demo/clinic.ts';
import { DemoMaking } from './demo-making.ts';

/** Earlier visits for the invented people: simulated, then assessed as any recording is. Offered while none of them has one. Tells `demo-made`. */
@customElement('earlier-visits')
export class EarlierVisits extends DemoMaking {
  protected readonly words = { ask: 'earlier-visits', running: 'earlier-running', stopped: 'earlier-stopped' } as const;
  protected readonly count = 1;

  protected isOffered(): boolean {
    const invented = this.entries.filter(({ person }) => isOfBeginning(person));
    return invented.length > 0 && invented.every(({ visits }) => visits.length === 0);
  }

  protected async make(told: (done: number, of: number) => void): Promise<void> {
    const { addEarlierVisits } = await import('../demo/earlier-visits.ts');
    const { store, assessor } = this;
    await addEarlierVisits({
      store,
      final: (trace, request) => assessor.final(trace, request),
      pulls: (trace, request) => assessor.pulls(trace, request),
      now: new Date(),
      told,
    });
  }
}
