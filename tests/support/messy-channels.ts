/** What is drawn from a seed. */
export interface Dice {
  readonly draw: () => number;
  readonly pick: <Value>(list: readonly Value[]) => Value;
  readonly chance: (p: number) => boolean;
  /** normal, mean 0 and standard deviation 1 */
  readonly normal: () => number;
}

/** The dice of a seed. */
export function diceOf(seed: number): Dice {
  const draw = drawFrom(seed);
  return {
    draw,
    pick: (list) => list[Math.floor(draw() * list.length)],
    chance: (p) => draw() < p,
    normal: () => Math.sqrt(-2 * Math.log(1 - draw())) * Math.cos(2 * Math.PI * draw()),
  };
}

/** Numbers from a seed: mulberry32. */
export function drawFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A signal of somebody in a made table, under one of the names that programs give it. */
export interface Channel {
  readonly quantity: string;
  readonly names: readonly string[];
  readonly axis: string | null;
  readonly side: 'left' | 'right' | null;
  readonly placement: string | null;
  readonly units: readonly (readonly [ucum: string, spelling: string, fromSi: number])[];
  readonly si: (timeS: number) => number;
}

const sideWords = {
  left: ['left', 'Left', 'L', 'links', 'li', 'izq', 'gauche', 'LT', 'sx'],
  right: ['right', 'Right', 'R', 'rechts', 're', 'der', 'droite', 'RT', 'dx'],
} as const;
const forceUnits = [
  ['N', 'N', 1],
  ['kgf', 'kg', 1 / 9.80665],
  ['kgf', 'kgf', 1 / 9.80665],
  ['kN', 'kN', 1e-3],
  ['[lbf_av]', 'lbf', 1 / 4.4482216],
] as const;
const accUnits = [
  ['m/s2', 'm/s²', 1],
  ['m/s2', 'm/s^2', 1],
  ['[g]', 'g', 1 / 9.80665],
  ['m[g]', 'mg', 1000 / 9.80665],
] as const;
const gyroUnits = [
  ['deg/s', '°/s', 180 / Math.PI],
  ['deg/s', 'dps', 180 / Math.PI],
  ['rad/s', 'rad/s', 1],
] as const;
const heightUnits = [
  ['mm', 'mm', 1000],
  ['cm', 'cm', 100],
  ['m', 'm', 1],
] as const;

/** The signals of one made table. */
export function drawnChannels({ draw, pick, chance, normal }: Dice): {
  readonly kind: string;
  readonly channels: readonly Channel[];
} {
  const mass = 75 * Math.exp(0.2 * normal());
  const height = 0.085 * Math.exp(0.3 * normal());
  const period = 1.6 + 1.6 * draw();
  const from = 1 + 3 * draw();
  const lift = (t: number): number =>
    t < from ? 0 : Math.max(0, Math.sin(((t - from) * 2 * Math.PI) / period)) ** 1.5;
  const noise = (size: number): number => size * normal();
  const tiltOf = (t: number): number => 0.15 + 0.55 * lift(t);

  const imuSide = pick(['left', 'right', null, null] as const);
  const place = pick(['foot', 'trunk'] as const);
  const sideText = (side: 'left' | 'right' | null): string => (side === null ? '' : pick(sideWords[side]));
  const inertial = (): Channel[] => {
    const accName = pick(['acc', 'Acc', 'Accel', 'a', 'Beschleunigung', 'acceleration', 'Aceleracion', 'A']);
    const gyroName = pick(['gyro', 'Gyr', 'g', 'Drehrate', 'omega', 'Angular Velocity', 'w']);
    const join = pick(['_', ' ', '', '.']);
    const word = sideText(imuSide);
    const placeWord = chance(0.4)
      ? pick(place === 'foot' ? ['foot', 'Fuss', 'pied'] : ['sacrum', 'Becken', 'lower back'])
      : '';
    const generic = chance(0.1);
    const axes = ['x', 'y', 'z'] as const;
    const upper = chance(0.5);
    const gravity = (t: number): [number, number, number] => {
      const tilt = place === 'foot' ? tiltOf(t) : 0.1 * tiltOf(t);
      return [9.80665 * Math.sin(tilt) + noise(0.08), noise(0.12) + 0.4, 9.80665 * Math.cos(tilt) + noise(0.1)];
    };
    const turn = (t: number): [number, number, number] => {
      const rate = ((tiltOf(t + 0.01) - tiltOf(t - 0.01)) / 0.02) * (place === 'foot' ? 1 : 0.1);
      return [noise(0.03), rate + noise(0.04), noise(0.03)];
    };
    const named = (base: string, axis: string, i: number): string => {
      if (generic) return `Ch ${i + 1}`;
      const head = base.length === 1 && join === ' ' ? base : `${base}${join}`;
      return [placeWord, word, `${head}${upper && join !== '' ? axis.toUpperCase() : axis}`]
        .filter((part) => part !== '')
        .join(join === '' ? '_' : join);
    };
    const said = { side: generic || word === '' ? null : imuSide, placement: place };
    const acc = axes.map(
      (axis, i): Channel => ({
        quantity: 'acceleration',
        names: [named(accName, axis, i)],
        axis,
        ...said,
        units: accUnits,
        si: (t) => gravity(t)[i],
      }),
    );
    const gyro = axes.map(
      (axis, i): Channel => ({
        quantity: 'angular-velocity',
        names: [named(gyroName, axis, i + 3)],
        axis,
        ...said,
        units: gyroUnits,
        si: (t) => turn(t)[i],
      }),
    );
    return chance(0.75) && !generic ? [...acc, ...gyro] : acc;
  };
  const forceName = (): string =>
    pick([
      'Force',
      'force',
      'Kraft',
      'Fuerza',
      'Fz',
      'load',
      'GRF',
      'F',
      'Vertical Force',
      'Gewicht',
      'Kraftsensor',
      'signal',
      'CH1',
      'Value',
    ]);
  const plate = (share: number, side: 'left' | 'right' | null, name: string): Channel => ({
    quantity: 'force',
    names: [name],
    axis: null,
    side,
    placement: 'platform',
    units: forceUnits,
    si: (t) => share * mass * 9.80665 * (1 + 0.12 * (lift(t + 0.1) - lift(t))) + noise(2),
  });
  const kinds: Record<string, () => Channel[]> = {
    height: () => {
      const side = pick(['left', 'right', null] as const);
      const base = pick([
        'heel',
        'Heel Height',
        'Ferse',
        'Fersenhöhe',
        'Hub',
        'talon',
        'position',
        'Weg',
        'displacement',
        'heel_height',
        'Signal A',
        'Altura del talón',
      ]);
      const word = sideText(side);
      return [
        {
          quantity: 'heel-height',
          names: [word === '' ? base : `${base} ${word}`],
          axis: null,
          side: word === '' ? null : side,
          placement: 'heel',
          units: heightUnits,
          si: (t) => height * lift(t) + noise(0.0004),
        },
      ];
    },
    imu: inertial,
    plate: () => [plate(1, null, forceName())],
    plates: () => {
      const name = forceName();
      const [l, r] = [pick(sideWords.left), pick(sideWords.right)];
      const share = 0.5 + 0.15 * normal() * 0.5;
      return [plate(share, 'left', `${name} ${l}`), plate(1 - share, 'right', `${name} ${r}`)];
    },
    cell: () => {
      const peak = 850 * Math.exp(0.4 * normal());
      return [
        {
          quantity: 'force',
          names: [forceName()],
          axis: null,
          side: null,
          placement: null,
          units: forceUnits,
          si: (t) => peak * lift(t / 3) + 5 + noise(1.5),
        },
      ];
    },
    torque: () => {
      const peak = 90 * Math.exp(0.4 * normal());
      const torque: Channel = {
        quantity: 'torque',
        names: [pick(['Torque', 'Drehmoment', 'moment', 'torque', 'Coppia', 'Ankle Torque'])],
        axis: null,
        side: null,
        placement: null,
        units: [
          ['N.m', 'Nm', 1],
          ['N.m', 'N·m', 1],
        ],
        si: (t) => peak * lift(t / 3) + noise(0.3),
      };
      const angle: Channel = {
        quantity: 'angle',
        names: [pick(['Angle', 'Winkel', 'ankle angle', 'Fußwinkel', 'angolo'])],
        axis: null,
        side: null,
        placement: null,
        units: [
          ['deg', 'deg', 180 / Math.PI],
          ['deg', '°', 180 / Math.PI],
          ['rad', 'rad', 1],
        ],
        si: (t) => 0.5 * lift(t / 3) + 0.05 + noise(0.004),
      };
      return chance(0.5) ? [torque, angle] : [torque];
    },
  };
  const kind = pick(Object.keys(kinds));
  return { kind, channels: kinds[kind]() };
}
