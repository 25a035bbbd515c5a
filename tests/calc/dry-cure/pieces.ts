import type { CureSlice } from '@larderwright/calc/cure';
import {
  type DryCurePiece,
  type DryCureSlice,
  dryCureStage,
  newDryCurePiece,
  newDryCureSlice,
} from '@larderwright/calc/dry-cure';
import { blankEntry, enteredEntry } from '@larderwright/calc/quantities';

export const grams = (text: string) => enteredEntry(text, 'g');
export const percent = (text: string) => enteredEntry(text, '%');
export const ppm = (text: string) => enteredEntry(text, 'ppm');

export function cureSlice(changes: Partial<CureSlice> = {}): CureSlice {
  return {
    ruleSetId: 'us-federal',
    nitriteTarget: blankEntry('ppm'),
    scaleReadability: grams('0.1'),
    weighedBy: 'A',
    checkedBy: 'B',
    ...changes,
  };
}

export function pack(nitrite = '6.25', nitrate = '0') {
  return { name: 'Curing salt', lot: '', strength: { nitrite: percent(nitrite), nitrate: percent(nitrate) } };
}

export function piece(changes: Partial<DryCurePiece> = {}): DryCurePiece {
  return {
    ...newDryCurePiece('one'),
    name: 'Belly',
    skinOff: grams('5000'),
    thickness: enteredEntry('40', 'mm'),
    ...changes,
  };
}

/** An invented belly of bacon in a bag. */
export function belly(changes: Partial<DryCureSlice> = {}): DryCureSlice {
  return {
    ...newDryCureSlice(),
    product: 'bacon',
    finish: 'cook-before-eating',
    pieces: [piece()],
    saltTarget: percent('2.5'),
    sugar: percent('1'),
    nitriteTarget: ppm('120'),
    pack: pack(),
    startedOn: '2026-11-02',
    ...changes,
  };
}

export function run(dryCure: Partial<DryCureSlice> = {}, cure: Partial<CureSlice> = {}) {
  const result = dryCureStage({ cure: cureSlice(cure), dryCure: belly(dryCure) });
  const verdict = (id: string) => result.verdicts.find((one) => one.id === `dry-cure.${id}`);
  const [first] = result.values.pieces;
  return { ...result, first, verdict, ids: result.findings.map(({ id }) => id) };
}
