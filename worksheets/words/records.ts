import {
  type FileProblem,
  type FileRecord,
  MOST_FILE_BATCHES,
  MOST_FILE_CHARACTERS,
  type ShareProblem,
} from '@larderwright/calc/exchange';

/** The largest file, as a cook says it. */
export const MOST_FILE_WORDS = `${MOST_FILE_CHARACTERS / 1_000_000} million letters (about ${MOST_FILE_CHARACTERS / 1_000_000} MB), ${MOST_FILE_BATCHES.toLocaleString('en-GB')} batches`;

/** Why a file cannot be opened, and what to do. */
export function fileProblemWords(fault: FileProblem): string {
  switch (fault.problem) {
    case 'empty':
      return 'The file is empty. Nothing was taken in.';
    case 'not-ours':
      return 'This is no file of batches written by this site. Probe logs are loaded on the cook log.';
    case 'too-large':
      return `The file is too large to be read here. The most is ${MOST_FILE_WORDS}.`;
    case 'too-many':
      return `The file holds ${fault.found} batches. The most is ${fault.most}: write them in several files.`;
    case 'not-json':
      return `The file is damaged or cut short${fault.line === null ? '' : `, at line ${fault.line}${fault.column === null ? '' : `, letter ${fault.column}`}`}. Nothing was taken in. Fetch it again from where it was written.`;
    case 'too-deep':
      return 'The file is nested deeper than any batch. It was not written by this site, and nothing of it was taken in.';
    case 'forbidden-key':
      return `The file holds something that no batch holds (at "${fault.path.slice(0, 80)}"). It may be meant to do harm, and nothing of it was taken in.`;
    case 'damaged':
      return `The file is damaged (at "${fault.path.slice(0, 80)}"). Nothing was taken in.`;
    case 'newer-file':
      return `The file was written by a newer version of this site (file version ${fault.version}). Reload this page to get that version, then open the file again.`;
  }
}

/** What is wrong with one record of a file; blank when nothing is. */
export function recordProblemWords(read: FileRecord): string {
  if (read.ok) return '';
  return read.problem === 'newer-version'
    ? `Written by a newer version of this site (record version ${read.version}). Reload this page, then open the file again.`
    : `Damaged: "${read.path.slice(0, 80) || 'the record'}" holds ${read.found.slice(0, 40)}.`;
}

/** What is wrong with a link. */
export function shareProblemWords(fault: ShareProblem): string {
  switch (fault.problem) {
    case 'no-link':
      return 'This address holds no batch. Ask for the whole link again, or for a file.';
    case 'too-long':
      return 'This link is longer than any that is made here. It is not opened.';
    case 'cut-or-changed':
      return 'This link was cut short or changed on its way, so none of it is shown. Ask for it again: copied whole, or as a file.';
    case 'too-much-inside':
      return 'This link unfolds into far more than a batch. It was not made here and is not opened.';
    case 'forbidden':
      return 'This link holds something that no batch holds. It was not made here and is not opened.';
    case 'newer-link':
      return `This link was made by a newer version of this site (link version ${fault.version}). Reload the page, and ask for a file if that does not help.`;
  }
}
