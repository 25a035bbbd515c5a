import { createContext } from 'preact';
import { useContext, useState } from 'preact/hooks';
import * as say from '#words/readers-copy/copy-head.ts';
import { $batch } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { $copy, takeCopy } from './copy.ts';

/** Address of the batch sheet. */
export const Sheet = createContext('');

/** Says that this is a reader's copy, and lays it on the bench if asked. */
export function CopyHead() {
  const copy = useShared($copy);
  const batch = useShared($batch);
  const sheet = useContext(Sheet);
  const [problem, setProblem] = useState('');
  if (copy.state === 'opening') return <p class="not-yet">{say.readingTheLink}</p>;
  if (copy.state === 'refused')
    return (
      <div class="finding" data-severity="caution" role="alert">
        <p>{copy.words}</p>
      </div>
    );
  const take = () => {
    setProblem('');
    takeCopy().catch((error) => setProblem(error instanceof Error ? error.message : String(error)));
  };
  return (
    <div class="worksheet-example">
      <p class="worksheet-batch">
        <strong>{say.readersCopy}</strong> {batch.product.name || say.unnamedBatch}
        {batch.product.batchNo ? ` · ${batch.product.batchNo}` : ''}
        {batch.demo ? (
          <>
            {' '}
            <span class="demo-mark">{say.demoInvented}</span>
          </>
        ) : null}
      </p>
      <p>{say.cameLinkStandsTabAloneNames}</p>
      <p class="worksheet-demo">
        <button type="button" disabled={copy.state === 'taken'} onClick={take}>
          {say.layItOnMyBench}
        </button>
      </p>
      <p role="status">
        {copy.state === 'taken' ? (
          <>
            {say.itLiesOnYourBenchAs(copy.beside ? say.besideOneSameOriginHere : '')}{' '}
            <a href={sheet}>{say.goOnWithItInThe}</a>
          </>
        ) : problem ? (
          say.deviceDidNotTakeBench(problem)
        ) : null}
      </p>
    </div>
  );
}
