import * as say from '#words/batch-formula/family-field.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { editAt } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { FAMILY_NAMES } from '../words/family-names.ts';
import { $formula } from './computed.ts';

/** What kind of product it is. Its usual ranges give notes, never limits. */
export function FamilyField() {
  const familyId = useAt('formula.familyId');
  const computed = useShared($formula);
  return (
    <ChoiceField
      label={say.family}
      value={typeof familyId === 'string' ? familyId : ''}
      empty={say.notChosen}
      choices={FAMILY_NAMES}
      onChoose={(id) => editAt('formula.familyId', id === '' ? null : id)}
      hint={say.bringsUsualRangesTradeNotes}
      findings={computed.state === 'ready' ? at(computed.value.findings, 'formula.familyId') : []}
    />
  );
}
