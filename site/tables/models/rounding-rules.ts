import { ROUNDING_RULE_SETS, type RoundingBand, type RoundingRule } from '@larderwright/calc/label';
import { plainText } from '@larderwright/calc/quantities';
import { column, type TablePart } from '../../lib/table-model.ts';

function declared({ declared: how }: RoundingBand): string {
  if (how.kind === 'zero') return '0';
  return how.kind === 'words' ? how.text : `nearest ${plainText(how.step)}`;
}

function band({ bands }: RoundingRule, at: number): string {
  const of = bands[at];
  if (!of) return '–';
  const text = declared(of);
  if (of.to === null) return at === 0 ? text : `above that: ${text}`;
  return `${of.toIncluded ? 'up to' : 'under'} ${plainText(of.to)}: ${text}`;
}

/** How nutrients are rounded on a label, rule set by rule set. */
export const roundingRules: readonly TablePart[] = ROUNDING_RULE_SETS.map((set) => {
  const most = Math.max(...set.rules.map(({ bands }) => bands.length));
  return {
    id: `${set.id}-rounding`,
    title: `${set.jurisdiction}: ${set.title}`,
    notes: [`For ${set.per}. An exact half goes up.`],
    sources: set.sources,
    columns: [
      column('Nutrient'),
      column('Unit'),
      ...Array.from({ length: most }, (_, at) =>
        column(`${['First', 'Second', 'Third', 'Fourth', 'Fifth'][at]} band`),
      ),
    ],
    rows: set.rules.map((rule) => ({
      id: `${set.id}-${rule.id.toLowerCase()}`,
      cells: [rule.nutrients, rule.unit, ...Array.from({ length: most }, (_, at) => band(rule, at))],
      mark: rule.mark,
      words: ['rounding', 'nutrition label'],
    })),
  };
});
