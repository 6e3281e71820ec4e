/** A form that could not be done, shown again with what was typed. */
import type { ChangeProblem } from '#words/benchCodes.ts';

export type Attempt = { readonly form: URLSearchParams; readonly problem: ChangeProblem };

/** Which form of the page: its kind, and of several of a kind the id. */
export type FormName = { readonly kind: string; readonly id?: number };

/** True for the form that was sent. */
export function isAttempt(attempt: Attempt | null, { kind, id }: FormName): attempt is Attempt {
  return attempt?.form.get('kind') === kind && (id === undefined || attempt.form.get('id') === String(id));
}

/** What stands in a field: what was typed into it, else `usual`. */
export function typed(attempt: Attempt | null, form: FormName, field: string, usual: string): string {
  return isAttempt(attempt, form) ? (attempt.form.get(field) ?? usual) : usual;
}

/** True where the whole order has changed meanwhile, which is told at the head of its page. */
export function isOfPage({ problem }: Attempt): boolean {
  return problem.code === 'changed-meanwhile';
}
