import type { ComponentChildren } from 'preact';

/** A place in a sentence for something that is no text: emphasis, a link. A language sets it where it belongs. */
export type Slot = ComponentChildren;
