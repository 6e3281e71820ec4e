/** Why the bench didn't save something of the content. */
export type NotSaved =
  | 'changed-meanwhile'
  | 'full'
  | 'read-only'
  | 'outside'
  | 'failed'
  | 'not-editable'
  | 'no-history'
  | 'gone'
  | 'name-taken';
