/** Addresses the site hands down. */
export interface DeskLinks {
  /** Page that opens a share link. */
  copy: string;
  /** Published JSON Schema of a file of batches. */
  schema: string;
  /** Where a batch on the bench is looked at. */
  sheet: string;
}
