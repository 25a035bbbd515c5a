import { type BrineSlice, brineStage, newBrineSlice } from '@larderwright/calc/brine';
import type { CureSlice } from '@larderwright/calc/cure';
import { blankEntry, enteredEntry } from '@larderwright/calc/quantities';

function cureSlice(changes: Partial<CureSlice> = {}): CureSlice {
  return {
    ruleSetId: 'us-federal',
    nitriteTarget: blankEntry('ppm'),
    scaleReadability: enteredEntry('0.1', 'g'),
    weighedBy: 'A',
    checkedBy: 'B',
    ...changes,
  };
}

export function pack(nitrite = '6.25', nitrate = '0') {
  return {
    name: 'Curing salt',
    lot: '',
    strength: { nitrite: enteredEntry(nitrite, '%'), nitrate: enteredEntry(nitrate, '%') },
  };
}

/** An invented mutton ham: 2.4 kg of leg in 1.2 kg of water, injected with 8 % and covered. */
export function muttonHam(changes: Partial<BrineSlice> = {}): BrineSlice {
  return {
    ...newBrineSlice(),
    product: 'ham',
    finish: 'cooked',
    method: 'inject-cover',
    skinOff: enteredEntry('2400', 'g'),
    thickness: enteredEntry('110', 'mm'),
    water: enteredEntry('1200', 'g'),
    saltTarget: enteredEntry('2.4', '%'),
    sugar: enteredEntry('1', '%'),
    nitriteTarget: enteredEntry('120', 'ppm'),
    pack: pack(),
    acceleratorForm: 'sodium-salt',
    acceleratorTarget: enteredEntry('361', 'ppm'),
    injection: enteredEntry('8', '%'),
    days: enteredEntry('10', 'd'),
    startedOn: '2026-11-02',
    mixedOn: '2026-11-02',
    use: 'fresh',
    ...changes,
  };
}

export function run(brine: Partial<BrineSlice> = {}, cure: Partial<CureSlice> = {}) {
  const result = brineStage({ cure: cureSlice(cure), brine: muttonHam(brine) });
  const verdict = (id: string) => result.verdicts.find((one) => one.id === `brine.${id}`);
  return { ...result, verdict, ids: result.findings.map(({ id }) => id) };
}
