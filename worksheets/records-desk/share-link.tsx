import type { Batch } from '@larderwright/calc/batch';
import { MOST_SHARE_CHARACTERS, shareText } from '@larderwright/calc/exchange';
import { useId, useState } from 'preact/hooks';
import * as say from '#words/records-desk/share-link.ts';

/** Links beyond this are cut by some programs that carry messages. Common practice, no source. */
const CAREFUL_CHARACTERS = 2_000;

/** A batch as a link that holds it whole. */
export function ShareLink({ batch, copy }: { batch: Batch; copy: string }) {
  const id = useId();
  const [made, setMade] = useState<{ of: Batch; link: string; tooLong: boolean } | null>(null);
  const [said, setSaid] = useState('');
  const make = () => {
    const text = shareText(batch);
    const link = `${new URL(copy, location.href).href}#${text}`;
    setMade({ of: batch, link, tooLong: text.length > MOST_SHARE_CHARACTERS });
    setSaid('');
  };
  const take = async (link: string) => {
    try {
      await navigator.clipboard.writeText(link);
      setSaid(say.theLinkIsOnTheClipboard);
    } catch {
      setSaid(say.browserDoesNotLetPageCopy);
    }
  };
  const link = made?.of === batch ? made.link : '';
  return (
    <>
      <h3>{say.asALinkForAnotherPerson}</h3>
      <p class="say">{say.batchItselfStandsLinkAfterNo}</p>
      <p class="buttons">
        <button type="button" onClick={make}>
          {say.makeALink}
        </button>
      </p>
      {link && made?.tooLong ? (
        <p class="field-problem">{say.batchTooLargeLinkLettersSave(link.length.toLocaleString('en-GB'))}</p>
      ) : null}
      {link && !made?.tooLong ? (
        <div class="field">
          <label class="field-label" for={id}>
            {say.linkLetters(link.length.toLocaleString('en-GB'))}
          </label>
          <textarea
            id={id}
            class="field-input desk-link"
            rows={4}
            readOnly
            spellcheck={false}
            value={link}
            onFocus={(event) => event.currentTarget.select()}
          />
          {link.length > CAREFUL_CHARACTERS ? (
            <p class="field-hint">{say.someProgramsCutLinksLongLink}</p>
          ) : null}
          <p class="buttons">
            <button type="button" onClick={() => void take(link)}>
              {say.copyTheLink}
            </button>
          </p>
        </div>
      ) : null}
      <p role="status">{said}</p>
    </>
  );
}
