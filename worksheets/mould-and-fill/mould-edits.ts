import { newMould } from '@larderwright/calc/batch';
import { crustCavity, type MouldItem, type MouldSize } from '@larderwright/calc/mould';
import { blankEntry, defaultEntry, type Entry, enteredEntry } from '@larderwright/calc/quantities';
import * as say from '#words/mould-and-fill/mould-edits.ts';

/** Most boxes for weighed fills shown at once: a full oven of small moulds. */
const MOST_BOXES = 60;

/** What a usual size is called. A pie mould is offered as the room inside its crust: that is what is filled. */
export function sizeName(size: MouldSize): string {
  return size.crustMm === undefined ? size.name : say.insideAMmCrust(size.name, size.crustMm);
}

/** The measures a usual size is filled by. */
export function sizeMeasures(size: MouldSize): MouldSize['measures'] {
  return size.crustMm === undefined ? size.measures : crustCavity(size.measures, size.crustMm);
}

/**
 * A mould begun from a usual size. Its measures are defaults, and marked so, until somebody lays a rule in
 * the mould itself.
 */
export function mouldOfSize(id: string, size: MouldSize): MouldItem {
  const blank = newMould(id);
  const dimensions = { ...blank.dimensions };
  const measures = sizeMeasures(size);
  for (const dimension of Object.keys(dimensions) as (keyof typeof dimensions)[]) {
    const mm = measures[dimension];
    if (mm !== undefined) dimensions[dimension] = defaultEntry(String(mm), 'mm');
  }
  return {
    ...blank,
    name: sizeName(size),
    shape: size.shape,
    dimensions,
    headspace: size.headspaceMm === null ? blank.headspace : defaultEntry(String(size.headspaceMm), 'mm'),
  };
}

/** How many boxes to offer for weighed fills: one a mould, and every box ever written in. */
export function fillBoxes(count: number | null, written: number): number {
  const planned = count !== null && Number.isFinite(count) ? Math.floor(count) : 1;
  return Math.min(MOST_BOXES, Math.max(planned, written, 1));
}

/** The weighed fills with one of them replaced; boxes before it stay blank, which is unknown. */
export function withFill(fills: readonly Entry[], index: number, entry: Entry): Entry[] {
  const next = fills.slice();
  while (next.length < index) next.push(blankEntry('g'));
  next[index] = enteredEntry(entry.text, entry.unit);
  return next;
}
