import * as say from '#words/batch-sheet/blank-model.ts';
import type { SheetModel } from './sheet-model.ts';

/** Boxes for moulds on a sheet nobody has filled. */
const BLANK_MOULDS = 8;

/** The house limits printed in the empty sheet too. Common practice, no source. */
export const TEMPERATURE_LIMITS: SheetModel['temperatures'] = [
  { label: say.grind1, limit: '≤ 7 °C' },
  { label: say.grind2, limit: '≤ 7 °C' },
  { label: say.endMix, limit: '≤ 12 °C' },
  { label: say.fill, limit: '≤ 7 °C' },
];

/** A sheet with nothing filled in: the form a kitchen writes on when the tablet is dead. */
export const BLANK_SHEET: SheetModel = {
  demo: false,
  header: {
    product: null,
    family: null,
    batchNo: null,
    kitchen: null,
    madeBy: null,
    moulds: null,
    portions: null,
  },
  warnings: { allergens: null, audience: null },
  preStart: { probes: null, probeError: null, scaleStep: null },
  materials: {
    meats: [],
    others: [],
    seasonings: [],
    gathered: null,
    seasoningTotal: null,
    total: null,
    meatBlock: null,
    onCard: [],
  },
  cure: null,
  salt: { target: null, total: null, onWater: null, sources: null, lined: null },
  temperatures: TEMPERATURE_LIMITS,
  fill: { moulds: [], density: null, actual: Array.from({ length: BLANK_MOULDS }, () => null) },
  cook: {
    medium: null,
    oven: null,
    limit: null,
    action: null,
    started: null,
    ended: null,
    limitReached: null,
    heldUntil: null,
    peak: null,
    logs: [],
    verdicts: [],
    remarks: [],
    beside: [],
  },
  cool: { press: null, pressure: null, started: null, legs: [], logs: [], verdicts: [], beside: [] },
  curve: null,
  deviations: [],
  yields: { raw: null, finished: null, loss: null },
  label: { useBy: null, trace: null },
  signOffs: { made: null, checked: null, verified: null },
  stops: [],
  foot: {
    ruleSets: { bench: [], record: [] },
    calcVersion: null,
    recordVersion: null,
    printedAt: null,
    batchId: null,
    check: null,
  },
};
