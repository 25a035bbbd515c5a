import type { Finding, MissingInput, Params, Severity, StageResult } from '../findings/index.ts';
import { type Entry, entryValue } from '../quantities/index.ts';
import { pressBandOfFamily } from './band-of-family.ts';
import { HIGHEST_BOARD_KPA, type PressBand } from './bands.ts';
import { pressLoadKg, pressPressureKPa } from './press-pressure.ts';
import type { PressSlice } from './slice.ts';

/** What the press worksheet may have to say. */
export type PressFindingId =
  | 'press.below-band'
  | 'press.above-band'
  | 'press.not-pressed'
  | 'press.box-only'
  | 'press.board-too-large'
  | 'press.slows-cooling';

/** Null is unknown. */
export interface PressValues {
  readonly boardAreaMm2: number | null;
  /** Mass on the board of one mould. */
  readonly loadKg: number | null;
  /** What that mass presses with. */
  readonly pressureKPa: number | null;
  readonly targetKPa: number | null;
  /** Mass to lay on for the wanted pressure. */
  readonly loadForTargetKg: number | null;
  readonly band: PressBand | null;
}

/**
 * Load and pressure of the press.
 *
 * @param slice board, load and wanted pressure of one mould; left blank altogether when nothing is pressed
 * @param context product family, and the plan of the smallest mould's fill where it is known
 */
export function pressStage(
  slice: PressSlice,
  context: { readonly familyId: string | null; readonly planAreaMm2: number | null },
): StageResult<PressValues, PressFindingId> {
  const lengthMm = positive('length', slice.boardLength);
  const widthMm = positive('length', slice.boardWidth);
  const boardAreaMm2 = lengthMm !== null && widthMm !== null ? lengthMm * widthMm : null;
  const loadG = entryValue('mass', slice.load);
  const loadKg = loadG === null ? null : loadG / 1000;
  const targetKPa = entryValue('pressure', slice.pressureTarget);
  const pressureKPa =
    loadKg !== null && boardAreaMm2 !== null ? pressPressureKPa(loadKg, boardAreaMm2) : null;
  const loadForTargetKg =
    targetKPa !== null && boardAreaMm2 !== null ? pressLoadKg(targetKPa, boardAreaMm2) : null;
  const band = pressBandOfFamily(context.familyId);
  const values: PressValues = { boardAreaMm2, loadKg, pressureKPa, targetKPa, loadForTargetKg, band };
  return {
    values,
    findings: pressFindings(values, context.planAreaMm2),
    verdicts: [],
    missing: missingInputs(slice, values),
  };
}

function pressFindings(values: PressValues, planAreaMm2: number | null): Finding<PressFindingId>[] {
  const { band, boardAreaMm2 } = values;
  const found: Finding<PressFindingId>[] = [];
  const tell = (id: PressFindingId, severity: Severity, field: string, params: Params, caution?: string) =>
    found.push({
      id,
      severity,
      stage: 'press',
      field: `press.${field}`,
      params,
      ...(caution ? { caution } : {}),
    });

  // What lies on the board is judged; before that, what is wanted.
  const field = values.pressureKPa === null ? 'pressureTarget' : 'load';
  const kPa = values.pressureKPa ?? values.targetKPa;
  const pressed = (kPa ?? 0) > 0 || (values.loadKg ?? 0) > 0;
  if (band !== null && pressed && band.highKPa === 0) tell('press.not-pressed', 'note', field, {});
  if (kPa !== null && kPa > 0) {
    if (band !== null && band.highKPa > 0) {
      const params = { kPa, lowKPa: band.lowKPa, highKPa: band.highKPa };
      if (kPa < band.lowKPa) tell('press.below-band', 'note', field, params);
      if (kPa > band.highKPa) tell('press.above-band', 'note', field, params);
    }
    if (kPa > HIGHEST_BOARD_KPA)
      tell('press.box-only', 'caution', field, { kPa, highestKPa: HIGHEST_BOARD_KPA });
  }
  if (boardAreaMm2 !== null && planAreaMm2 !== null && boardAreaMm2 > planAreaMm2) {
    tell('press.board-too-large', 'caution', 'boardLength', { boardAreaMm2, planAreaMm2 });
  }
  if (pressed) tell('press.slows-cooling', 'caution', field, {}, 'press-slows-cooling');
  return found;
}

/** A batch may go without a press: only a press half filled in has something missing. */
function missingInputs(slice: PressSlice, values: PressValues): MissingInput[] {
  const used = [slice.boardLength, slice.boardWidth, slice.load, slice.pressureTarget].some(
    (entry) => entry.text.trim() !== '',
  );
  if (!used) return [];
  const missing: MissingInput[] = [];
  if (positive('length', slice.boardLength) === null) {
    missing.push({ field: 'press.boardLength', neededFor: 'press.pressure' });
  }
  if (positive('length', slice.boardWidth) === null) {
    missing.push({ field: 'press.boardWidth', neededFor: 'press.pressure' });
  }
  if (values.loadKg === null && values.targetKPa === null) {
    missing.push({ field: 'press.load', neededFor: 'press.pressure' });
  }
  return missing;
}

function positive(kind: 'length', entry: Entry): number | null {
  const value = entryValue(kind, entry);
  return value !== null && value > 0 ? value : null;
}
