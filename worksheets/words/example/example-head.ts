import type { Slot } from '../slot.ts';

export const exampleOfThisPage = 'Example of this page:';
export const fetchingIt = 'Fetching it …';
export const changeAnythingNothingIsKept = (strong: Slot, name: string): Slot => [
  strong,
  ' change anything, nothing is kept. ',
  name,
];
export const demoInvented = 'DEMO, invented';
export const putTheExampleBack = 'Put the example back';
export const takeItToMyBench = 'Take it to my bench';
export const copyLiesBenchBatchOwnHere =
  'A copy lies on your bench as a batch of your own. Here you still have the example.';
export const goOnWithTheCopyIn = (title: string) => `Go on with the copy in ${title}`;
export const deviceDidNotTakeCopyBench = (detail: string) =>
  `This device did not take the copy (${detail}). Your bench is as it was.`;
