import * as domain from './domain.ts';
import { makeStudio } from './studio.ts';

/** The two files’ text, as make.mjs writes it. */
export const { journal, pictures } = makeStudio(domain);
