import type { Batch } from '@larderwright/calc/batch';
import { MOST_SHARE_CHARACTERS, shareText } from '@larderwright/calc/exchange';
import { useId, useState } from 'preact/hooks';

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
      setSaid('The link is on the clipboard.');
    } catch {
      setSaid('This browser does not let the page copy. Mark the link and copy it by hand.');
    }
  };
  const link = made?.of === batch ? made.link : '';
  return (
    <>
      <h3>As a link, for another person to read</h3>
      <p class="say">
        The batch itself stands in the link, after the #. No server ever gets it. Names of people, initials,
        signatures and the history of changes are left out. Free text goes along as it was written: look
        through the notes for names.
      </p>
      <p class="buttons">
        <button type="button" onClick={make}>
          Make a link
        </button>
      </p>
      {link && made?.tooLong ? (
        <p class="field-problem">
          This batch is too large for a link ({link.length.toLocaleString('en-GB')} letters). Save it as a
          file and hand that on.
        </p>
      ) : null}
      {link && !made?.tooLong ? (
        <div class="field">
          <label class="field-label" for={id}>
            Link, {link.length.toLocaleString('en-GB')} letters
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
            <p class="field-hint">
              Some programs cut links this long. A link that was cut says so and opens nothing; a file is
              safer.
            </p>
          ) : null}
          <p class="buttons">
            <button type="button" onClick={() => void take(link)}>
              Copy the link
            </button>
          </p>
        </div>
      ) : null}
      <p role="status">{said}</p>
    </>
  );
}
