import * as v from 'valibot';
import { entry, stamp } from './shared.ts';

/** Crust and lining of a pie, if somebody baked one. */
export const crust = v.strictObject({
  mouldId: stamp,
  thickness: entry,
  lidThickness: entry,
  overlap: entry,
  density: entry,
  spare: entry,
  pasteId: stamp,
  salt: entry,
  pieceWidth: entry,
  pieceOverlap: entry,
  pieceMass: entry,
  pieceSalt: entry,
});
