import { customElement } from 'lit/decorators.js';
import { coursePeople, isOfBeginning } from '../demo/clinic.ts';
import { DemoMaking } from './demo-making.ts';

/** Invented people with twelve weeks behind them, for the demo clinic: offered while they are not all there. Tells `demo-made`. */
@customElement('demo-courses')
export class DemoCourses extends DemoMaking {
  protected readonly words = { ask: 'courses', running: 'courses-running', stopped: 'courses-stopped' } as const;
  protected readonly count = coursePeople;

  protected isOffered(): boolean {
    const first = this.entries.filter(({ person }) => isOfBeginning(person)).length;
    const invented = this.entries.filter(({ person }) => person.demo).length;
    return first > 0 && invented - first < coursePeople;
  }

  protected async make(told: (done: number, of: number) => void): Promise<void> {
    const { addCourses } = await import('../demo/courses/add-courses.ts');
    const { store, assessor } = this;
    await addCourses({ store, final: (trace, request) => assessor.final(trace, request), now: new Date(), told });
  }
}
