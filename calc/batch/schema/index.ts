import * as v from 'valibot';
import { BATCH_SCHEMA, type Batch } from '../record.ts';
import { binder } from './binder.ts';
import { blend } from './blend.ts';
import { brine } from './brine.ts';
import { casings } from './casings.ts';
import { chillBudget } from './chill-budget.ts';
import { cookPlan } from './cook-plan.ts';
import { crust } from './crust.ts';
import { residualNitrite } from './cure.ts';
import { dryCure } from './dry-cure.ts';
import { drying } from './drying.ts';
import { gelee } from './gelee.ts';
import { label } from './label.ts';
import { plan } from './plan.ts';
import { seasoning } from './seasoning.ts';
import { declared, entry, linePart, list, person, signatures, stamp, text } from './shared.ts';
import { slicing } from './slicing.ts';
import { storage } from './storage.ts';
import { thermometers } from './thermometers.ts';
import { yieldTests } from './yield.ts';

const formulaLine = v.strictObject({
  id: text,
  name: text,
  part: linePart,
  ingredientId: stamp,
  amount: entry,
  basis: v.picklist(['mass', 'percent-of-meat', 'percent-of-total'] as const),
  actual: entry,
  lot: text,
  declared,
  cure: v.nullable(v.strictObject({ nitrite: entry, nitrate: entry })),
  carriedNitrite: entry,
});

const mould = v.strictObject({
  id: text,
  name: text,
  shape: v.picklist(['rectangular', 'tapered', 'half-cylinder', 'cylinder', 'roof', 'oval'] as const),
  dimensions: v.strictObject({
    length: entry,
    width: entry,
    depth: entry,
    baseLength: entry,
    baseWidth: entry,
    diameter: entry,
  }),
  waterFill: entry,
  headspace: entry,
  liningKind: v.picklist(['none', 'fat', 'bacon', 'caul', 'leaf', 'film', 'parchment'] as const),
  liningThickness: entry,
  count: entry,
  actualFills: list(entry),
});

const reading = v.strictObject({
  id: text,
  at: text,
  temperature: entry,
  enteredAt: stamp,
  initials: person,
  excluded: v.nullable(v.strictObject({ reason: text, initials: person, at: text })),
});

const step = v.strictObject({
  id: text,
  kind: v.picklist(['smoke', 'cook', 'reheat', 'chill'] as const),
  medium: entry,
  oven: entry,
  startedAt: stamp,
  endedAt: stamp,
  note: text,
});

const log = v.strictObject({
  id: text,
  name: text,
  mouldId: stamp,
  probeName: text,
  offset: entry,
  error: entry,
  readings: list(reading),
  thermometerId: v.exactOptional(stamp),
});

const grams = v.nullable(v.number());
const issued = v.strictObject({
  issuedAt: text,
  calcVersion: text,
  ruleSets: list(v.strictObject({ subject: text, id: text, edition: text, reviewed: text })),
  composition: v.record(text, v.strictObject({ waterG: grams, proteinG: grams, fatG: grams, saltG: grams })),
  verdicts: list(v.strictObject({ id: text, state: text, reason: text })),
  figures: v.record(text, grams),
});

const stateChange = v.strictObject({
  id: text,
  state: v.picklist(['planned', 'in-process', 'held', 'released', 'discarded'] as const),
  at: text,
  by: person,
  second: person,
  why: text,
});

const dispatch = v.strictObject({ id: text, at: text, to: text, amount: text, by: person });

const historyEntry = v.strictObject({
  at: text,
  by: person,
  what: text,
  row: text,
  from: text,
  to: text,
  sum: text,
});

/** The record of one batch, version 2. Strict: an unknown key is damage or a newer version. */
export const batchSchema = v.strictObject({
  schema: v.literal(BATCH_SCHEMA),
  id: v.pipe(text, v.minLength(1)),
  demo: v.boolean(),
  createdAt: text,
  updatedAt: text,
  zone: text,
  product: v.strictObject({
    name: text,
    batchNo: text,
    kitchen: text,
    portions: entry,
    madeBy: person,
    finished: entry,
    useBy: text,
  }),
  formula: v.strictObject({ familyId: stamp, lines: list(formulaLine), saltTarget: entry }),
  cure: v.strictObject({
    ruleSetId: stamp,
    nitriteTarget: entry,
    scaleReadability: entry,
    weighedBy: person,
    checkedBy: person,
    residual: v.exactOptional(residualNitrite),
  }),
  mould: v.strictObject({ moulds: list(mould), density: entry }),
  process: v.strictObject({
    cookRuleSetId: stamp,
    cookLimitId: stamp,
    coolRuleSetId: stamp,
    steps: list(step),
    logs: list(log),
  }),
  press: v.strictObject({
    boardLength: entry,
    boardWidth: entry,
    load: entry,
    pressureTarget: entry,
    startedAt: stamp,
  }),
  deviations: list(
    v.strictObject({
      id: text,
      at: text,
      what: text,
      decision: v.picklist(['', 'release', 'reheat', 'discard', 'hold'] as const),
      cause: text,
      prevention: text,
      by: person,
    }),
  ),
  signOffs: signatures(
    v.strictObject({ role: v.picklist(['made', 'checked', 'verified'] as const), name: person, at: text }),
  ),
  notes: text,
  issued: list(issued),
  lifecycle: signatures(stateChange),
  dispatches: signatures(dispatch),
  history: signatures(historyEntry),
  plan: v.exactOptional(plan),
  yield: v.exactOptional(yieldTests),
  blend: v.exactOptional(blend),
  slicing: v.exactOptional(slicing),
  dryCure: v.exactOptional(dryCure),
  brine: v.exactOptional(brine),
  drying: v.exactOptional(drying),
  seasoning: v.exactOptional(seasoning),
  chillBudget: v.exactOptional(chillBudget),
  binder: v.exactOptional(binder),
  gelee: v.exactOptional(gelee),
  casings: v.exactOptional(casings),
  crust: v.exactOptional(crust),
  label: v.exactOptional(label),
  storage: v.exactOptional(storage),
  cookPlan: v.exactOptional(cookPlan),
  thermometers: v.exactOptional(thermometers),
  ruleSetDefaults: v.exactOptional(
    v.strictObject({ cure: v.boolean(), cook: v.boolean(), cool: v.boolean() }),
  ),
}) satisfies v.GenericSchema<unknown, Batch>;
