import { doseOf } from './forms.ts';
import type { SpiceForm } from './slice.ts';

/** A spice as it goes in, from one source. */
export interface DosedSpice {
  readonly spiceId: string | null;
  readonly form: SpiceForm;
  readonly gPerKg: number | null;
}

/** All of one spice together, from blends and loose, in whatever form. */
export interface SpiceTotal {
  readonly spiceId: string;
  /** By form, g/kg of the total mix; null while one of them is unknown. */
  readonly gPerKgByForm: Readonly<Partial<Record<SpiceForm, number | null>>>;
  /**
   * Share of the ceiling that is used: each form over its own ceiling, added up. 1 is the ceiling. A floor while
   * `open`; null when a form has no ceiling.
   */
  readonly ceilingShare: number | null;
  /** Some dose is unknown: the share can only be higher. */
  readonly open: boolean;
}

/**
 * Adds up every spice over blends and loose seasonings, and holds it against its ceiling. Dried and fresh thyme count
 * together, each by its own ceiling. Spices of the kitchen's own (no id) are not in it.
 */
export function spiceTotals(dosed: readonly DosedSpice[]): SpiceTotal[] {
  const ids = [...new Set(dosed.flatMap(({ spiceId }) => spiceId ?? []))];
  return ids.map((spiceId) => {
    const mine = dosed.filter((row) => row.spiceId === spiceId);
    const gPerKgByForm: Partial<Record<SpiceForm, number | null>> = {};
    let share: number | null = 0;
    let open = false;
    for (const { form, gPerKg } of mine) {
      const before = gPerKgByForm[form];
      gPerKgByForm[form] = gPerKg === null || before === null ? null : (before ?? 0) + gPerKg;
      if (gPerKg === null) {
        open = true;
        continue;
      }
      const ceiling = doseOf(spiceId, form)?.ceilingGPerKg;
      if (gPerKg === 0) continue;
      share = ceiling === undefined || share === null ? null : share + gPerKg / ceiling;
    }
    return { spiceId, gPerKgByForm, ceilingShare: share, open };
  });
}
