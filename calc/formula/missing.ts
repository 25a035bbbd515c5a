import type { MissingInput } from '../findings/index.ts';
import { COMPONENTS, type Component } from './line-composition.ts';
import type { LinedMix } from './lined.ts';
import type { Mix } from './mix.ts';
import { isInBowl, isMeat } from './parts.ts';
import type { ReadLine } from './read-line.ts';

/** Field to fill so that a component of a line becomes known. */
function fieldFor({ line, path }: ReadLine, component: Component): string[] {
  if (line.part !== 'curing-salt' || component !== 'salt') return [`${path}.declared.${component}`];
  const { cure } = line;
  const blank = (['nitrite', 'nitrate'] as const).filter((name) => !cure || cure[name].text.trim() === '');
  return (blank.length > 0 ? blank : (['nitrite'] as const)).map((name) => `${path}.cure.${name}`);
}

/**
 * Inputs that are blank or unreadable, each with the figure that waits for it: `formula.total`,
 * `formula.meat-block`, `formula.water`, `formula.protein`, `formula.fat`, `formula.salt`; of a lining `formula.lined`.
 */
export function formulaMissing(lines: readonly ReadLine[], mix: Mix, lined: LinedMix | null): MissingInput[] {
  if (lines.length === 0) return [{ field: 'formula.lines', neededFor: 'formula.total' }];
  const missing: MissingInput[] = [];
  for (const [index, line] of lines.entries()) {
    const { part } = line.line;
    const massG = mix.lines[index]?.massG ?? null;
    const unreadable = line.actualUnreadable;
    if (massG === null && (unreadable || line.planned.amount === null)) {
      const field = `${line.path}.${unreadable ? 'actual' : 'amount'}`;
      if (isInBowl(part)) missing.push({ field, neededFor: 'formula.total' });
      if (isMeat(part)) missing.push({ field, neededFor: 'formula.meat-block' });
      if (!isInBowl(part)) missing.push({ field, neededFor: 'formula.lined' });
    }
    if (massG === 0) continue;
    for (const component of COMPONENTS) {
      const settled = (isInBowl(part) ? mix : (lined ?? mix))[component].leftOut.includes(line.line.id);
      if (line.composition[component].fraction !== null || settled) continue;
      for (const field of fieldFor(line, component))
        missing.push({ field, neededFor: isInBowl(part) ? `formula.${component}` : 'formula.lined' });
    }
  }
  return missing;
}
