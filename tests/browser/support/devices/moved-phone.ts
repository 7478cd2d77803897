import type { CDPSession, Page } from 'playwright-core';

export interface Moved {
  /** specific force [m/s2] */
  readonly force: readonly [number, number, number];
  /** turning rate [rad/s] */
  readonly turning: readonly [number, number, number];
}

const types = ['accelerometer', 'linear-acceleration', 'gyroscope'] as const;

/** Puts motion sensors into the machine of a page, before the page listens. */
export class MovedPhone {
  private readonly session: CDPSession;

  private constructor(session: CDPSession) {
    this.session = session;
  }

  static async of(page: Page): Promise<MovedPhone> {
    const session = await page.context().newCDPSession(page);
    for (const type of types) {
      await session.send('Emulation.setSensorOverrideEnabled', {
        enabled: true,
        type,
        metadata: { available: true, minimumFrequency: 1, maximumFrequency: 200 },
      });
    }
    return new MovedPhone(session);
  }

  /** The sensors read so from now on; the browser tells nothing until all three have a reading. */
  async move({ force, turning }: Moved): Promise<void> {
    const xyz = ([x, y, z]: readonly [number, number, number]) => ({ xyz: { x, y, z } });
    const readings = { accelerometer: force, 'linear-acceleration': [0, 0, 0], gyroscope: turning } as const;
    await Promise.all(
      types.map((type) =>
        this.session.send('Emulation.setSensorOverrideReadings', { type, reading: xyz(readings[type]) }),
      ),
    );
  }

  /** Moves through one position after the other, so many a second. */
  async moveThrough(positions: readonly Moved[], rateHz: number): Promise<void> {
    const startMs = performance.now();
    for (const [i, position] of positions.entries()) {
      await this.move(position);
      const waitMs = startMs + ((i + 1) * 1000) / rateHz - performance.now();
      if (waitMs > 0) await new Promise((resolve) => setTimeout(resolve, waitMs));
    }
  }
}
