import { createContext } from 'preact';
import { useContext, useState } from 'preact/hooks';
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
  if (copy.state === 'opening') return <p class="not-yet">Reading the link …</p>;
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
        <strong>Reader’s copy:</strong> {batch.product.name || 'Unnamed batch'}
        {batch.product.batchNo ? ` · ${batch.product.batchNo}` : ''}
        {batch.demo ? (
          <>
            {' '}
            <span class="demo-mark">DEMO, invented</span>
          </>
        ) : null}
      </p>
      <p>
        It came in a link and stands in this tab alone. Names, initials and signatures were left out, so it
        signs nothing off. What you change here is not kept.
      </p>
      <p class="worksheet-demo">
        <button type="button" disabled={copy.state === 'taken'} onClick={take}>
          Lay it on my bench
        </button>
      </p>
      <p role="status">
        {copy.state === 'taken' ? (
          <>
            It lies on your bench as it came
            {copy.beside ? ', beside the one of the same origin that was here' : ''}.{' '}
            <a href={sheet}>Go on with it in the batch sheet</a>
          </>
        ) : problem ? (
          `This device did not take it (${problem}). Your bench is as it was.`
        ) : null}
      </p>
    </div>
  );
}
