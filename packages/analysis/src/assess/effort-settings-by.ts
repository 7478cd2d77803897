import type { NumberParameter, PullParameters } from '@surae/shared';
import { requireRange } from '../check.ts';
import type { EffortMethod, EffortSettings } from '../efforts/effort-settings.ts';

/** A limit that holds the greater of a fixed figure and a share; without both, nothing is asked. */
function fixed(figure: NumberParameter, share: NumberParameter): number {
  return figure.value ?? (share.value === null ? Number.POSITIVE_INFINITY : 0);
}

function atMost({ value }: NumberParameter): number {
  return value ?? Number.POSITIVE_INFINITY;
}

function atLeast({ value }: NumberParameter): number {
  return value ?? 0;
}

/** A parameter without which nothing can be measured. */
function needed(parameter: NumberParameter): number {
  const value = parameter.value ?? Number.NaN;
  requireRange(value, value > 0, parameter.id, '> 0');
  return value;
}

/**
 * Everything that the measurement of efforts takes as given: the numbers of the method, and the rules that the protocol
 * states. A parameter without a value asks for nothing.
 *
 * @param method - numbers of the method [-]
 * @param parameters - of the protocol [-]
 * @returns the whole; a limit that is not asked for is infinite, or zero for a least one [-]
 * @throws {@link InputError} `out-of-range` without a window of the score, a share of the plateau, a longest gap or a number to average
 *
 * Source: definition
 */
export function effortSettingsBy(method: EffortMethod, parameters: PullParameters): EffortSettings {
  const p = parameters;
  const { pull, rest, onset, measure, accept } = method;
  return {
    pull,
    rest,
    onset,
    measure: {
      ...measure,
      meanWindowS: needed(p.scoreWindow),
      plateauShare: needed(p.plateauShare),
      onsetWithinS: atMost(p.onsetWithinMost),
      rateUncertaintyMost: atMost(p.rateUncertaintyMost),
    },
    accept: {
      ...accept,
      stillN: fixed(p.stillForceMost, p.stillShareMost),
      stillNm: fixed(p.stillTorqueMost, p.stillShareMost),
      stillShare: atLeast(p.stillShareMost),
      dipN: fixed(p.dipForceMost, p.dipShareMost),
      dipNm: fixed(p.dipTorqueMost, p.dipShareMost),
      dipShare: atLeast(p.dipShareMost),
      plateauS: atLeast(p.plateauLeast),
      gapS: needed(p.gapMost),
      tareN: atMost(p.tareForceMost),
      tareNm: atMost(p.tareTorqueMost),
      creepNps: atMost(p.creepForceMost),
      creepNmps: atMost(p.creepTorqueMost),
      riseDipN: atMost(p.riseDipForceMost),
      riseDipNm: atMost(p.riseDipTorqueMost),
    },
    trials: {
      fullShare: atLeast(p.fullShareLeast),
      leastCount: atLeast(p.leastTrials),
      mostCount: atMost(p.mostTrials),
      goodShare: atMost(p.alikeGood),
      fairShare: atMost(p.alikeFair),
      improvingShare: atMost(p.improvement),
      averaged: needed(p.averagedTrials),
    },
  };
}
