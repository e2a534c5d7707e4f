import type { Noun } from '../domain/noun.ts';

/** What a figure is a figure of; it decides the unit it is typed in. */
export type Quantity = 'mass' | 'length' | 'temperature' | 'pressure' | 'seconds' | 'days' | 'plain';

/** How one field is typed or chosen. A dot in a name is a part of a grouped field. */
export type Editor = { readonly field: string; readonly word?: string } & (
  | { readonly as: 'text'; readonly max: number; readonly lines?: number; readonly hint?: string }
  | { readonly as: 'figure'; readonly quantity: Quantity }
  | { readonly as: 'one'; readonly options: readonly string[] }
  | { readonly as: 'many'; readonly options: readonly string[] }
  | { readonly as: 'ref'; readonly nouns: readonly Noun[] }
  | { readonly as: 'refs'; readonly nouns: readonly Noun[] }
  | { readonly as: 'day' }
  | { readonly as: 'year' }
  | { readonly as: 'yes' }
  | { readonly as: 'sizes' }
);

export const text = (field: string, max = 120): Editor => ({ field, as: 'text', max });
/** The name of a thing that is usually called by its design. */
export const nameIfAny: Editor = { field: 'name', as: 'text', max: 120, hint: 'Left empty, it goes by its design and size.' };
export const lines = (field: string, max = 4000): Editor => ({ field, as: 'text', max, lines: 3 });
export const figure = (field: string, quantity: Quantity = 'plain', word?: string): Editor => ({
  field,
  as: 'figure',
  quantity,
  ...(word ? { word } : {}),
});
export const one = (field: string, options: readonly string[]): Editor => ({ field, as: 'one', options });
export const many = (field: string, options: readonly string[]): Editor => ({ field, as: 'many', options });
export const ref = (field: string, ...nouns: readonly Noun[]): Editor => ({ field, as: 'ref', nouns });
export const refs = (field: string, ...nouns: readonly Noun[]): Editor => ({ field, as: 'refs', nouns });
export const day = (field: string): Editor => ({ field, as: 'day' });
export const year = (field: string): Editor => ({ field, as: 'year' });
export const yes = (field: string): Editor => ({ field, as: 'yes' });
export const sizes = (field: string): Editor => ({ field, as: 'sizes' });
