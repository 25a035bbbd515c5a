export const usLetter = 'US Letter';
export const howTheBatchStands = 'How the batch stands';
export const noBatchBenchNothingJudged = 'No batch on the bench: nothing is judged';
export const finishTheRecord = 'Finish the record';
export const theseFieldsOpenWithABatch = 'These fields open with a batch';
export const stateReleaseAndWhereItWent = 'State, release and where it went';
export const noBatchOnTheBench = 'No batch on the bench';
export const onPaper = 'On paper';
export const benchCopyWorkRecordCopyFile =
  'A bench copy for the work and a record copy for the file, one page each, black only. Without a batch the forms print empty, to write on by hand.';
export const paper = 'Paper';
export const printTheSheet = 'Print the sheet';
export const stop = 'STOP';
export const sheetCouldNotComputedWhat = (detail: string) =>
  `The sheet could not be computed (${detail}). What follows is an empty form.`;
