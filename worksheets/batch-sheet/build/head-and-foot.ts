import {
  type Assessment,
  BATCH_SCHEMA,
  type Batch,
  mayBringNitrite,
  type RuleSetUsed,
  unconfirmedRuleSets,
} from '@larderwright/calc/batch';
import { recordChecksum } from '@larderwright/calc/exchange';
import { familyOf } from '@larderwright/calc/formula';
import type { Allergen } from '@larderwright/calc/ingredients';
import * as say from '#words/batch-sheet/build/head-and-foot.ts';
import { NOT_CONFIRMED } from '../../words/rule-subjects.ts';
import type { SheetFoot, SheetHeader, SheetWarnings } from '../sheet-model.ts';
import { filled, words } from './filled.ts';

export function buildHeader(batch: Batch): SheetHeader {
  const moulds = batch.mould.moulds.map((mould) => {
    const count = filled('count', mould.count, 'count', false);
    return `${count ? `${count.text} × ` : ''}${mould.name || say.mould}`;
  });
  return {
    product: words(batch.product.name),
    family: familyOf(batch.formula.familyId)?.name ?? null,
    batchNo: words(batch.product.batchNo),
    kitchen: words(batch.product.kitchen),
    madeBy: words(batch.product.madeBy),
    moulds: moulds.length > 0 ? moulds.join(', ') : null,
    portions: filled('count', batch.product.portions, 'count', false),
  };
}

function named({ name, kinds, toCheck }: Allergen): string {
  const inside = kinds.length > 0 ? ` (${kinds.join(', ')})` : '';
  return `${name}${inside}${toCheck ? say.checkPack : ''}`;
}

/** Allergens in the words of both lists; a line nobody knows makes the list open-ended. */
export function buildWarnings(batch: Batch, { formula }: Assessment): SheetWarnings {
  if (batch.formula.lines.length === 0) return { allergens: null, audience: null };
  const { euAllergens, usAllergens, allergensUnknown, liverFraction } = formula.values.facts;
  const lists = [
    euAllergens.length > 0 ? say.euUk2(euAllergens.map(named).join(', ')) : '',
    usAllergens.length > 0 ? say.us2(usAllergens.map(named).join(', ')) : '',
  ];
  const unknown = allergensUnknown.length;
  const list = lists.filter(Boolean).join('. ');
  const open = unknown > 0 ? say.unknownForLineS2(unknown) : '';
  const hasNitrite =
    mayBringNitrite(batch) || batch.formula.lines.some((line) => line.part === 'curing-salt');
  const nitrite = hasNitrite ? say.nitriteNotForUnder3s : '';
  const liver = liverFraction !== null && liverFraction > 0 ? say.liverVitaminA : '';
  return {
    allergens: [list || (unknown > 0 ? '' : say.noneOfTheListedOnesFound), open].filter(Boolean).join('; '),
    audience: say.notPregnancyOver65sBabiesWeak2(liver, nitrite),
  };
}

export function buildFoot(
  batch: Batch,
  { ruleSets, calcVersion }: Assessment,
  printedAt: string | null,
): SheetFoot {
  const isBench = ({ subject }: RuleSetUsed) =>
    subject === 'nitrite' || subject === 'nitrite in whole muscle';
  const unconfirmed = unconfirmedRuleSets(batch).map(({ id }) => id);
  const line = ({ subject, id, jurisdiction, title, edition, reviewed, overdue }: RuleSetUsed) =>
    say.checked2(
      subject,
      jurisdiction,
      title,
      edition,
      reviewed,
      overdue ? say.checkOverdue : '',
      unconfirmed.includes(id) ? NOT_CONFIRMED : '',
    );
  return {
    ruleSets: {
      bench: ruleSets.filter(isBench).map(line),
      record: ruleSets.filter((set) => !isBench(set)).map(line),
    },
    calcVersion,
    recordVersion: BATCH_SCHEMA,
    printedAt,
    batchId: batch.id === 'empty' ? null : batch.id,
    check: batch.id === 'empty' ? null : recordChecksum(batch),
  };
}
