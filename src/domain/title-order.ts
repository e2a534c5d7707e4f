/** The order of titles and labels as one counts: Heron 2 before Heron 10. */
export const compareTitles = new Intl.Collator('en', { numeric: true, sensitivity: 'base' }).compare;
