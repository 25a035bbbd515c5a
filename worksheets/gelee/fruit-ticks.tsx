import type { Finding } from '@larderwright/calc/findings';
import type { EnzymeFruit } from '@larderwright/calc/gelee';
import * as say from '#words/gelee/fruit-ticks.ts';
import { at, FindingList } from '../parts/finding-list.tsx';
import { $life, editAt } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { ENZYME_FRUIT_NAMES } from '../words/gelee-names.ts';

/** Raw fruit whose juice digests gelatine. */
export function FruitTicks({ findings }: { findings: readonly Finding[] }) {
  const waking = useShared($life) === 'waking';
  const found = useAt('gelee.rawFruit');
  const ticked: readonly EnzymeFruit[] = Array.isArray(found) ? found : [];
  const tick = (id: EnzymeFruit, on: boolean) =>
    editAt('gelee.rawFruit', on ? [...ticked, id] : ticked.filter((other) => other !== id));
  return (
    <>
      <fieldset class="set-ticks">
        <legend>{say.rawJellyNeitherBoiledNorTinned}</legend>
        {(Object.keys(ENZYME_FRUIT_NAMES) as EnzymeFruit[]).map((value) => (
          <label key={value}>
            <input
              type="checkbox"
              checked={ticked.includes(value)}
              disabled={waking}
              onChange={(event) => tick(value, event.currentTarget.checked)}
            />
            {ENZYME_FRUIT_NAMES[value]}
          </label>
        ))}
      </fieldset>
      <FindingList findings={at(findings, 'gelee.rawFruit')} />
    </>
  );
}
