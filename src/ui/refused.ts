import { useEffect } from 'preact/hooks';
import { type Problem, problem } from '../domain/problem.ts';

/** What stands in fields that hold their own words, by field, in the order in which it was refused. */
const refused = new Map<string, string>();

/** For a field that keeps what was typed to itself until it can be read: nothing is saved while it says something is wrong. */
export function useRefused(field: string, says: string | undefined): void {
  useEffect(() => {
    if (says === undefined) return;
    refused.set(field, says);
    return () => {
      refused.delete(field);
    };
  }, [field, says]);
}

/** Why nothing may be saved yet, with that field in view. */
export function refusal(): Problem | undefined {
  const [first] = refused;
  if (!first) return undefined;
  const [field, says] = first;
  document.getElementById(field)?.focus();
  return problem(says, 'Nothing has been written down yet; what you typed is still in the form.');
}
