import type { MissingInput } from '../findings/index.ts';
import { curingSalts } from './cure-line.ts';
import { readResidual } from './residual.ts';
import type { CureState } from './state.ts';

/** Inputs without which some figure or verdict of the cure cannot be told. */
export function cureMissing(state: CureState): MissingInput[] {
  const { slices, lines, readabilityG } = state;
  const missing: MissingInput[] = [];
  if (slices.cure.ruleSetId === null) missing.push({ field: 'cure.ruleSetId', neededFor: 'cure.verdict' });
  const cures = curingSalts(lines).filter((line) => line.massG !== 0);
  for (const { id, curingSalt, massG } of cures) {
    const path = `formula.lines.${id}`;
    if (curingSalt.problem === 'missing') {
      missing.push({ field: `${path}.cure.nitrite`, neededFor: 'cure.nitrite' });
    }
    if (curingSalt.nitrateFraction === null) {
      missing.push({ field: `${path}.cure.nitrate`, neededFor: 'cure.nitrate' });
    }
    if (massG === null) missing.push({ field: `${path}.amount`, neededFor: 'cure.nitrite' });
  }
  if (cures.length > 0 && readabilityG === null) {
    missing.push({ field: 'cure.scaleReadability', neededFor: 'cure.dose' });
  }
  const residual = slices.cure.residual;
  if (readResidual(residual) === 'incomplete') {
    const field = residual?.as === null ? 'as' : 'found';
    missing.push({ field: `cure.residual.${field}`, neededFor: 'cure.residual' });
  }
  return missing;
}
