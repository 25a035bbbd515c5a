import type { Extender } from '@larderwright/calc/binder';
import { Fragment } from 'preact';
import * as say from '#words/binder-and-garnish/extenders.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { Computed } from '../parts/computed.tsx';
import { RemovedRowLine } from '../parts/row-tools.tsx';
import { VerdictLine } from '../parts/verdict-line.tsx';
import { editAt } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { EXTENDER_NAMES } from '../words/binder-names.ts';
import { $binder } from './computed.ts';
import { PartRow } from './part-row.tsx';

const LIST = 'binder.extenders';
const KINDS = Object.entries(EXTENDER_NAMES).map(([value, label]) => ({ value, label }));

/** Binders beside the panade, and the federal limits on them where they apply. */
export function ExtenderList() {
  const rows = useAt(LIST) as readonly Extender[];
  return (
    <>
      <ol class="ledger">
        {rows.map((row, place) => (
          <Fragment key={row.id}>
            <RemovedRowLine list={LIST} place={place} as="li" />
            <PartRow
              list={LIST}
              row={row}
              place={place}
              last={place === rows.length - 1}
              fallback={say.binder}
            >
              <ChoiceField
                label={say.countedAs(row.name || say.binder2(place + 1))}
                value={row.kind}
                choices={KINDS}
                onChoose={(kind) => editAt(`${LIST}.${row.id}.kind`, kind)}
              />
            </PartRow>
          </Fragment>
        ))}
        <RemovedRowLine list={LIST} place={rows.length} as="li" />
      </ol>
      <Computed of={useShared($binder)}>
        {({ verdicts }) => (
          <div aria-live="polite">
            {verdicts.map((verdict) => (
              <VerdictLine key={`${verdict.id}-${verdict.subjectId}-${verdict.basis}`} verdict={verdict} />
            ))}
          </div>
        )}
      </Computed>
    </>
  );
}
