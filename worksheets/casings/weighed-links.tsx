import type { Finding } from '@larderwright/calc/findings';
import { blankEntry, type Entry, rangeIn } from '@larderwright/calc/quantities';
import * as say from '#words/casings/weighed-links.ts';
import { at, FindingList } from '../parts/finding-list.tsx';
import { NumberBox } from '../parts/number-box.tsx';
import { editAt } from '../state/store.ts';
import { useAt } from '../state/use-shared.ts';
import { withLink } from './link-edits.ts';

const BOXES = 10;
const PATH = 'casings.actualLinks';

/** Ten links on the scale. */
export function WeighedLinks({ findings }: { findings: readonly Finding[] }) {
  const found = useAt(PATH);
  const actual: readonly Entry[] = Array.isArray(found) ? found : [];
  return (
    <>
      <fieldset class="fills">
        <legend>{say.asWeighed}</legend>
        {Array.from({ length: Math.max(BOXES, actual.length) }, (_, index) => (
          <NumberBox
            key={`link-${index + 1}`}
            label={say.link(index + 1)}
            kind="mass"
            range={rangeIn('kg', 0, 10)}
            entry={actual[index] ?? blankEntry('g')}
            onEntry={(entry) => editAt(PATH, withLink(actual, index, entry))}
          />
        ))}
      </fieldset>
      <FindingList findings={at(findings, PATH)} />
    </>
  );
}
