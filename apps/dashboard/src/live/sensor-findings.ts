import {
  type Channel,
  type ChannelGroup,
  flexionAxis,
  type Guess,
  gravityAxis,
  KNOWN_UNITS,
  placementGuess,
  pullSign,
  type Quantity,
  type SetupPlacement,
  SIGNED_AXES,
  type Side,
  setupDefaults,
  type Trace,
  turnAgreement,
  unitGuess,
} from '@surae/analysis';
import type { AskedSubject, TestKind } from '@surae/casebook';
import type { SentUnits } from './read-as.ts';
import { restScatter } from './rest-scatter.ts';

/** What a sensor was found to be in one respect, beside what was told of it. */
export interface Finding {
  readonly subject: AskedSubject;
  /** a quantity for unit and sign, a place for the placement, a place and a leg for how it is worn */
  readonly about: string;
  /** what description, choice or an earlier set say; null where nobody says anything */
  readonly told: string | null;
  readonly guess: Guess<string>;
  /** nothing was seen yet that could tell it */
  readonly isUnseen: boolean;
  /** every answer that is offered, the most probable first */
  readonly answers: readonly string[];
}

/** What is known where a sensor is looked at. */
export interface LookedFor {
  readonly test: TestKind;
  readonly placement: SetupPlacement;
  readonly side: Side;
  /** by which the samples became SI, as the description says */
  readonly sentUnits: SentUnits;
  readonly bodyMassKg: number | null;
  /** a calibration by known masses knows unit and sign of its force */
  readonly isCalibrated: boolean;
  /** which way was up in an earlier set of this leg with this sensor; null without one */
  readonly earlierUp: readonly [number, number, number] | null;
}

/** Evidence that says that there was nothing to see. */
const unseen: readonly string[] = [
  'nothing-moves',
  'no-effort',
  'no-movement',
  'no-turn',
  'no-channel',
  'no-gravity',
] as const;

const rule = setupDefaults.guess;

/** What is known before anything moved: nothing. */
const nothing: Guess<string> = {
  answer: null,
  confidence: 0,
  asks: true,
  likely: [],
  evidence: { code: 'nothing-moves', figures: {} },
};

function finding(
  subject: AskedSubject,
  about: string,
  told: string | null,
  guess: Guess<string>,
  all: readonly string[],
): Finding {
  const likely = guess.likely.map(({ answer }) => answer);
  const isUnseen = unseen.includes(guess.evidence.code);
  // an order by weights that nothing was weighed by would say something
  const answers = isUnseen ? all : [...new Set([...likely, ...all])];
  return { subject, about, told, guess, isUnseen, answers };
}

const unitsOf = (quantity: Quantity): readonly string[] => KNOWN_UNITS[quantity].map(({ ucum }) => ucum);

/** Samples as they were sent: SI by the description, undone. */
function asSent({ quantity, samples }: Channel, sentUnits: SentUnits): Float64Array {
  const toSi = KNOWN_UNITS[quantity].find(({ ucum }) => ucum === sentUnits[quantity])?.toSi ?? 1;
  return samples.map((value) => value / toSi);
}

/** Findings of somebody who did nothing yet: whatever the samples look like, nobody is known to have done what tells it. */
export function unlooked(findings: readonly Finding[]): readonly Finding[] {
  return findings.map((one) => ({ ...one, guess: nothing, isUnseen: true }));
}

/** Unit and sign of a load or a height: both are told by an effort, a raise, or by somebody who stands on it. */
function ofLoad({ timesS }: ChannelGroup, channel: Channel, known: LookedFor): readonly Finding[] {
  const { quantity } = channel;
  const { sentUnits, placement, test, bodyMassKg, isCalibrated } = known;
  if (quantity === 'force' && isCalibrated) return [];
  const axes = [asSent(channel, sentUnits)];
  const noise = restScatter(timesS, axes[0]!);
  // an effort is told from the scatter at rest: without that nothing was seen
  const sign: Guess<string> =
    noise === null ? { ...nothing, evidence: { code: 'no-effort', figures: {} } } : pullSign(axes[0]!, noise, rule);
  const stands = quantity === 'force' && placement === 'platform' && test === 'heel-raise';
  const isSeen = sign.evidence.code !== 'no-effort' || stands;
  const question = {
    quantity,
    axes,
    load: stands ? ('standing' as const) : ('efforts' as const),
    ...(stands && bodyMassKg !== null ? { bodyMassKg } : {}),
  };
  const unit = isSeen ? unitGuess(question, rule) : nothing;
  const units = finding('unit', quantity, sentUnits[quantity] ?? null, unit, unitsOf(quantity));
  return [units, finding('sign', quantity, 'up', sign, ['up', 'down'])];
}

function vector(group: ChannelGroup, quantity: Quantity): readonly Channel[] | null {
  const axes = (['x', 'y', 'z'] as const).flatMap(
    (axis) => group.channels.find((one) => one.quantity === quantity && one.axis === axis) ?? [],
  );
  return axes.length === 3 ? axes : null;
}

function samplesOf([x, y, z]: readonly Channel[]): [Float64Array, Float64Array, Float64Array] {
  return [x!.samples, y!.samples, z!.samples];
}

/** The axis of a sensor that lies nearest to a direction. */
export function axisNearest(up: readonly [number, number, number]): (typeof SIGNED_AXES)[number] {
  const i = up.reduce((best, value, at) => (Math.abs(value) > Math.abs(up[best]!) ? at : best), 0);
  return SIGNED_AXES[2 * i + (up[i]! > 0 ? 0 : 1)]!;
}

/** Which way is up as an accelerometer sees it, unit length; null where there is none. */
export function upSeen(trace: Trace): readonly [number, number, number] | null {
  for (const group of trace.groups) {
    const acceleration = vector(group, 'acceleration');
    if (acceleration !== null) return gravityAxis(samplesOf(acceleration), rule).up;
  }
  return null;
}

/** What gravity tells at any time: the unit of the accelerometer and the axis that points up. */
export function gravityFindings(trace: Trace, known: LookedFor): readonly Finding[] {
  const { placement, side, sentUnits, earlierUp } = known;
  for (const group of trace.groups) {
    const acceleration = vector(group, 'acceleration');
    if (acceleration === null) continue;
    const axes = acceleration.map((channel) => asSent(channel, sentUnits));
    const unit = unitGuess({ quantity: 'acceleration', axes }, rule);
    const told = earlierUp === null ? null : axisNearest(earlierUp);
    const up = gravityAxis(samplesOf(acceleration), rule);
    return [
      finding('unit', 'acceleration', sentUnits.acceleration ?? null, unit, unitsOf('acceleration')),
      finding('gravity-axis', `${placement} ${side}`, told, up, SIGNED_AXES),
    ];
  }
  return [];
}

/** Unit of a gyroscope and the axis about which the foot turns: both need raises. */
function ofTurning(group: ChannelGroup, acceleration: readonly Channel[], known: LookedFor, moved: boolean): Finding[] {
  const { placement, side, sentUnits } = known;
  const turn = vector(group, 'angular-velocity');
  if (turn === null) return [];
  const question = {
    quantity: 'angular-velocity' as const,
    axes: turn.map((channel) => asSent(channel, sentUnits)),
    agreement: turnAgreement(group.timesS, samplesOf(acceleration), [
      asSent(turn[0]!, sentUnits),
      asSent(turn[1]!, sentUnits),
      asSent(turn[2]!, sentUnits),
    ]),
  };
  const unit = moved ? unitGuess(question, rule) : nothing;
  const told = sentUnits['angular-velocity'] ?? null;
  const units = finding('unit', 'angular-velocity', told, unit, unitsOf('angular-velocity'));
  if (placement !== 'foot') return [units];
  const about = moved ? flexionAxis(group.timesS, samplesOf(turn), rule) : null;
  const nearest = about?.nearest?.charAt(0) ?? null;
  const guess: Guess<string> =
    about === null
      ? { ...nothing, evidence: { code: 'no-turn', figures: {} } }
      : {
          answer: nearest,
          confidence: about.confidence,
          // turning that goes about several axes is no axis, however plainly one leads
          asks: about.asks || about.reseat,
          likely: nearest === null ? [] : [{ answer: nearest, probability: about.confidence }],
          evidence: about.evidence,
        };
  return [units, finding('flexion-axis', `${placement} ${side}`, null, guess, ['x', 'y', 'z'])];
}

/** Where a sensor may sit that gives accelerations, and one that gives a force. */
const places = { acceleration: ['foot', 'trunk', 'shank'], force: ['platform', 'cell'] } as const;

function ofPlacement(trace: Trace, known: LookedFor): readonly Finding[] {
  const { placement, test } = known;
  // in a push a plate is loaded now and then like a cell: nothing tells them apart
  if (test === 'isometric') return [];
  const guess = placementGuess(trace, rule);
  if (guess.evidence.code === 'height-column') return [];
  const isForce = guess.evidence.code === 'stood-on' || guess.evidence.code === 'rests-low';
  return [finding('placement', placement, placement, guess, places[isForce ? 'force' : 'acceleration'])];
}

/**
 * What a sensor is found out to be from its last seconds, in which somebody did what the test asks for: three raises, a push,
 * or standing on it. What nobody did yet is told as unseen.
 */
export function sensorFindings(trace: Trace, known: LookedFor): readonly Finding[] {
  const wanted: readonly Quantity[] =
    known.placement === 'heel'
      ? ['heel-height']
      : known.placement === 'foot' || known.placement === 'trunk'
        ? []
        : ['force', 'torque'];
  for (const group of trace.groups) {
    const channel = wanted.flatMap((quantity) => group.channels.find((one) => one.quantity === quantity) ?? [])[0];
    if (channel !== undefined) return [...ofLoad(group, channel, known), ...ofPlacement(trace, known)];
    const acceleration = vector(group, 'acceleration');
    if (wanted.length > 0 || acceleration === null) continue;
    const placement = ofPlacement(trace, known);
    const moved = placement.some(({ isUnseen }) => !isUnseen);
    return [...gravityFindings(trace, known), ...ofTurning(group, acceleration, known, moved), ...placement];
  }
  return [];
}
