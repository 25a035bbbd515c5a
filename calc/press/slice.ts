import type { Entry } from '../quantities/index.ts';

export interface PressSlice {
  boardLength: Entry;
  boardWidth: Entry;
  /** Mass on the board, kg. */
  load: Entry;
  /** Wanted pressure, kPa. */
  pressureTarget: Entry;
  startedAt: string | null;
}
