import type { ChillBudgetSlice, ChillLot, GrindPass } from '@larderwright/calc/chill-budget';
import * as say from '#words/chill-budget/names.ts';
import { LOT_KIND_NAMES, PASS_KIND_NAMES } from '../words/chill-budget-names.ts';

/** What a lot is called: the kitchen's own word, or its kind. */
export function lotName({ name, kind }: Pick<ChillLot, 'name' | 'kind'>): string {
  return name.trim() || LOT_KIND_NAMES[kind];
}

/** "Pass 2 (grind)". */
export function passName({ kind }: Pick<GrindPass, 'kind'>, place: number): string {
  return say.pass(place + 1, PASS_KIND_NAMES[kind].toLowerCase());
}

const FIELDS: Readonly<Record<string, string>> = {
  'chillBudget.lots': say.whatGoesIn,
  'chillBudget.limit': say.howWarmMayEndTypeChoose,
  'chillBudget.iceTemp': say.theTemperatureOfTheIce,
  'chillBudget.room': say.theTemperatureOfTheRoom,
  'chillBudget.layer': say.howThickTheMeatLies,
};
const LOT_FIELDS: Readonly<Record<string, string>> = {
  mass: say.theWeightOf,
  temp: say.theTemperatureOf,
  fat: say.theFatOf,
};

/** An input of the chill budget in the middle of a sentence. */
export function chillFieldName(field: string, { lots, passes }: ChillBudgetSlice): string {
  const [, list, id, key = ''] = field.split('.');
  if (list === 'lots') {
    const lot = lots.find((each) => each.id === id);
    if (lot) return `${LOT_FIELDS[key] ?? key} ${lotName(lot).toLowerCase()}`;
  }
  if (list === 'passes') {
    const place = passes.findIndex((each) => each.id === id);
    const pass = passes[place];
    if (pass) return say.howFarWarmsIt(passName(pass, place).toLowerCase());
  }
  return FIELDS[field] ?? field;
}
