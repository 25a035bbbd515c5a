import type { Params } from '../findings/index.ts';
import type { CuringSaltRefusal } from './curing-salt-for-target.ts';
import type { CureFinding, CureFindingId } from './finding-ids.ts';
import type { CureState } from './state.ts';

const IDS: Readonly<Record<Exclude<CuringSaltRefusal, 'unusable-input'>, CureFindingId>> = {
  'target-over-ceiling': 'cure.target-over-ceiling',
  'other-sources-over-ceiling': 'cure.target-and-carried-over-ceiling',
  'strength-below-target': 'cure.target-above-strength',
  'too-small-to-weigh': 'cure.too-small-to-weigh',
};

/** Why no dose is given for the wanted nitrite. */
export function doseFindings(state: CureState): CureFinding[] {
  const asked = state.values.dose;
  if (asked === null || asked.dose.ok || asked.dose.reason === 'unusable-input') return [];
  const { reason, exactG, leastG } = asked.dose;
  const params: Params = {
    targetPpm: asked.targetPpm,
    ...(asked.ceilingPpm === null ? {} : { ceilingPpm: asked.ceilingPpm }),
    ...(exactG === null ? {} : { massG: exactG }),
    ...(leastG === null ? {} : { leastG }),
    ...(state.readabilityG === null ? {} : { readabilityG: state.readabilityG }),
    ...(exactG !== null && exactG > 0 && state.readabilityG !== null
      ? { errorFraction: state.readabilityG / 2 / exactG }
      : {}),
  };
  const caution = reason === 'too-small-to-weigh' ? 'weigh-curing-salt' : 'nitrite-ceiling-and-floor';
  return [{ id: IDS[reason], severity: 'stop', stage: 'cure', field: 'cure.nitriteTarget', params, caution }];
}
