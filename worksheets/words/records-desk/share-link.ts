export const theLinkIsOnTheClipboard = 'The link is on the clipboard.';
export const browserDoesNotLetPageCopy =
  'This browser does not let the page copy. Mark the link and copy it by hand.';
export const asALinkForAnotherPerson = 'As a link, for another person to read';
export const batchItselfStandsLinkAfterNo =
  'The batch itself stands in the link, after the #. No server ever gets it. Names of people, initials, signatures and the history of changes are left out. Free text goes along as it was written: look through the notes for names.';
export const makeALink = 'Make a link';
export const batchTooLargeLinkLettersSave = (length: string) =>
  `This batch is too large for a link (${length} letters). Save it as a file and hand that on.`;
export const linkLetters = (length: string) => `Link, ${length} letters`;
export const someProgramsCutLinksLongLink =
  'Some programs cut links this long. A link that was cut says so and opens nothing; a file is safer.';
export const copyTheLink = 'Copy the link';
