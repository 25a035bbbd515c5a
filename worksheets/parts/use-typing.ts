import { useState } from 'preact/hooks';
import * as say from '#words/parts/use-typing.ts';
import { keptText } from '../state/typed.ts';

type Typed = { currentTarget: HTMLInputElement | HTMLTextAreaElement };

/**
 * What a text box does with typing: everything is kept up to `longest` characters, and more than that is
 * said to have been cut.
 *
 * @param keep takes the text into the batch
 */
export function useTyping(longest: number, keep: (text: string) => void) {
  const [cut, setCut] = useState(false);
  const onInput = (event: Typed) => {
    const box = event.currentTarget;
    const kept = keptText(box.value, longest);
    const tooLong = kept !== box.value;
    if (tooLong) box.value = kept;
    setCut(tooLong);
    keep(kept);
  };
  return { onInput, cutNote: cut ? say.onlyTheFirstCharactersWereKept(longest) : undefined };
}
