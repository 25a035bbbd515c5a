import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { at, FindingList } from '../parts/finding-list.tsx';
import { gramsText } from '../parts/number-text.ts';
import { useShared } from '../state/use-shared.ts';
import { $mould } from './computed.ts';

/** The batch the moulds are to hold. */
export function BatchWeight() {
  return (
    <Computed of={useShared($mould)}>
      {({ batchG }) => (
        <Answer
          label="Weight of the batch, by the formula"
          value={batchG === null ? null : gramsText(batchG)}
          missing="Cannot tell: the formula is not complete"
          worked={<p>Everything that goes into the bowl, added up, by the batch formula. Derived: a sum.</p>}
        />
      )}
    </Computed>
  );
}

/** What all moulds take, against the batch. */
export function Together() {
  return (
    <Computed of={useShared($mould)}>
      {({ values: { capacityG, leftoverG, actualTotalG }, findings, batchG }) => (
        <>
          <div class="answers">
            <Answer
              label="All moulds take"
              value={capacityG === null ? null : gramsText(capacityG)}
              missing="Cannot tell: a mould is not fully measured, or there is none"
              worked={<p>Fill of each mould × how many of it, added up. Derived.</p>}
            />
            <Answer
              label={leftoverG !== null && leftoverG < 0 ? 'Short of full moulds by' : 'Left over'}
              value={leftoverG === null ? null : gramsText(Math.abs(leftoverG))}
              missing="Cannot tell: formula or moulds are not complete"
              worked={
                <p>
                  {batchG === null || capacityG === null
                    ? 'Mix less what all moulds take.'
                    : `${gramsText(batchG)} of mix less ${gramsText(capacityG)} of moulds.`}{' '}
                  The test poach and what stays in the bowl come off the mix first. Derived.
                </p>
              }
            />
            {actualTotalG === null ? null : (
              <Answer
                label="Filled so far, as weighed"
                value={gramsText(actualTotalG)}
                worked={<p>What each filled mould weighed, net, added up. Derived: a sum.</p>}
              />
            )}
          </div>
          <FindingList findings={at(findings, 'mould.moulds')} />
        </>
      )}
    </Computed>
  );
}
