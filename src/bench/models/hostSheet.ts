/** What the page of a host elsewhere shows. */
import type { HostFormProblem, TypedHost } from '../publish/hostForm.ts';
import type { HostStanding } from '../publish/hostStanding.ts';
import type { Frame } from './frame.ts';

export type HostAttempt = { readonly typed: TypedHost; readonly problems: readonly HostFormProblem[] };

export type HostPage = {
  readonly frame: Frame;
  readonly standing: HostStanding;
  /** A form that could not be saved; null where none was sent. */
  readonly attempt: HostAttempt | null;
  /** 200, 409 where another window was quicker, 422 where something is to mend. */
  readonly status: number;
};
